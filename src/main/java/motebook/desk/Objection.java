package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.model.Action;

/**
 * One reason why a respirator is not credited.
 *
 * @param brief the same in two to four words, where there is little room
 * @param reason what is wrong, a sentence without its full stop
 * @param check what may show that there is no such reason; it comes before the ways and cannot be
 *     tried out
 * @param ways what would end it, each by itself; none where nothing in the book does. Whether it is
 *     worth saying is tried out first: see {@link Remedies}
 */
public record Objection(String brief, String reason, Optional<Action> check, List<Action> ways) {
  public Objection {
    ways = List.copyOf(ways);
  }

  /** One that nothing could show to be none. */
  public Objection(String brief, String reason, List<Action> ways) {
    this(brief, reason, Optional.empty(), ways);
  }

  static Objection mendable(String brief, String reason, Action... ways) {
    return new Objection(brief, reason, List.of(ways));
  }

  static Objection lasting(String brief, String reason) {
    return new Objection(brief, reason, List.of());
  }

  /** Whether nothing that could be entered would end it. */
  boolean lasting() {
    return ways.isEmpty();
  }

  /** Whether only another respirator ends it. */
  boolean ofTheMask() {
    return ways.stream()
        .anyMatch(
            way -> way instanceof Action.WearInSession || way instanceof Action.AddRespirator);
  }
}
