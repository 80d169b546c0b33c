package motebook.screen.state;

import java.util.Optional;
import motebook.desk.Evidence;

/**
 * The page of evidence.
 *
 * @param evidence what was read, if it has come already
 * @param top the first row that is shown
 */
public record EvidenceSheet(Optional<Evidence> evidence, int top) {
  private static final int ROWS_OF_GROUP = 4;

  static final EvidenceSheet OPENING = new EvidenceSheet(Optional.empty(), 0);

  /** How many rows there are to show about: operations, samples, and some rows for each group. */
  public int size() {
    return evidence
        .map(
            e ->
                e.operations().size()
                    + e.samples().size()
                    + e.groups().stream().mapToInt(g -> ROWS_OF_GROUP + g.days().size()).sum())
        .orElse(0);
  }

  EvidenceSheet with(Evidence fresh) {
    return new EvidenceSheet(Optional.of(fresh), 0);
  }

  EvidenceSheet from(int row) {
    return new EvidenceSheet(evidence, Math.max(0, Math.min(row, size() - 1)));
  }
}
