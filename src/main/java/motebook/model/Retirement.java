package motebook.model;

import java.time.LocalDate;

/**
 * That a thing of the shop is no longer used.
 *
 * @param on the day
 * @param why in a few words, such as changed, damaged, soiled, hard to breathe
 */
public record Retirement(LocalDate on, String why) {
  /** Why, where one was put in the place of the other. */
  public static final String CHANGED = "changed";

  public Retirement {
    Checks.believable(on);
    why = Checks.words("reason", why);
  }

  void requireFrom(String name, LocalDate first, String since) {
    if (on.isBefore(first)) {
      throw new Refusal(
          "\"%s\" was %s on %s, so it cannot be retired on %s. Give that day or a later one."
              .formatted(name, since, first, on));
    }
  }
}
