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
  static final EvidenceSheet OPENING = new EvidenceSheet(Optional.empty(), 0);

  /** How many things there are to show: operations and samples. */
  public int size() {
    return evidence.map(e -> e.operations().size() + e.samples().size()).orElse(0);
  }

  EvidenceSheet with(Evidence fresh) {
    return new EvidenceSheet(Optional.of(fresh), 0);
  }

  EvidenceSheet from(int row) {
    return new EvidenceSheet(evidence, Math.max(0, Math.min(row, size() - 1)));
  }
}
