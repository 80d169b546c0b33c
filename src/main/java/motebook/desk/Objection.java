package motebook.desk;

import java.util.List;
import motebook.model.Action;

/**
 * One reason why a respirator is not credited.
 *
 * @param brief the same in two to four words, where there is little room
 * @param reason what is wrong, a sentence without its full stop
 * @param ways what would end it, each by itself; none where nothing in the book does. Whether it is
 *     worth saying is tried out first: see {@link Remedies}
 */
public record Objection(String brief, String reason, List<Action> ways) {
  public Objection {
    ways = List.copyOf(ways);
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
