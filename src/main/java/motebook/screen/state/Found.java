package motebook.screen.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Session;

/**
 * Sessions that were looked for: the newest that fit, and further ones as they are asked for.
 *
 * @param words what was looked for
 * @param hits newest first, as far as they have been read
 * @param more whether there may be further ones
 * @param chosen index of the one that is pointed at
 */
public record Found(String words, List<Session> hits, boolean more, int chosen) {
  /** How many are read at once. */
  public static final int AT_ONCE = 200;

  static final Found NOTHING = new Found("", List.of(), false, 0);

  public Found {
    hits = List.copyOf(hits);
  }

  static Found of(String words, List<Session> hits) {
    return new Found(words, hits, hits.size() == AT_ONCE, 0);
  }

  Found and(List<Session> further) {
    List<Session> all = new ArrayList<>(hits);
    all.addAll(further);
    return new Found(words, all, further.size() == AT_ONCE, chosen);
  }

  Found pointing(int index) {
    return new Found(words, hits, more, Math.max(0, Math.min(index, hits.size() - 1)));
  }

  /** Whether the end of what was read has come near. */
  boolean wantsMore() {
    return more && chosen > hits.size() - AT_ONCE / 4;
  }

  /** The last that was read, from which further ones follow. */
  Optional<Session> last() {
    return hits.isEmpty() ? Optional.empty() : Optional.of(hits.get(hits.size() - 1));
  }

  /** The one that is pointed at. */
  public Optional<Session> pointedAt() {
    return hits.isEmpty() ? Optional.empty() : Optional.of(hits.get(chosen));
  }
}
