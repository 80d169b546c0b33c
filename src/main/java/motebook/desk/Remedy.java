package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.model.Action;

/**
 * What would make a respirator count for more in a session, tried out before it is said.
 *
 * @param steps all that is to be done, in that order; at least one
 * @param then what it counts for after the last of them, everything in the air taken together
 */
public record Remedy(List<Step> steps, Credit then) {
  /**
   * One thing to do.
   *
   * @param against the reason that it ends
   * @param action what is done
   */
  public record Step(Objection against, Action action) {}

  public Remedy {
    steps = List.copyOf(steps);
  }

  /** The action that ends an objection; empty where another step makes an end of it. */
  public Optional<Action> against(Objection objection) {
    return steps.stream()
        .filter(step -> step.against().equals(objection))
        .map(Step::action)
        .findFirst();
  }
}
