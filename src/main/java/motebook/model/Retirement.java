package motebook.model;

import java.time.LocalDate;

/**
 * That a thing of the shop is no longer used.
 *
 * @param on the day
 * @param minute of that day from which on it counts no more; 0 where the whole day belongs to what
 *     came in its place
 * @param why in a few words, such as changed, damaged, soiled, hard to breathe
 */
public record Retirement(LocalDate on, int minute, String why) {
  /** Why, where one was put in the place of the other. */
  public static final String CHANGED = "changed";

  private static final String WITH_ITS_RESPIRATOR = "with its respirator";
  private static final int DAY_ENDS = 24 * 60;

  public Retirement {
    Checks.believable(on);
    Checks.minute(minute);
    why = Checks.words("reason", why);
  }

  /** One that the whole day belongs to. */
  public Retirement(LocalDate on, String why) {
    this(on, 0, why);
  }

  /** That of what goes with it, as its last day ends. */
  public Retirement withIt() {
    return new Retirement(on, DAY_ENDS, WITH_ITS_RESPIRATOR);
  }

  void requireFrom(String name, LocalDate first, String since) {
    if (on.isBefore(first)) {
      throw new Refusal(
          "\"%s\" was %s on %s, so it cannot be retired on %s. Give that day or a later one."
              .formatted(name, since, first, on));
    }
  }
}
