package motebook.model;

import java.time.LocalDate;

/** The guards that the records of this package check themselves with. */
final class Checks {
  private static final int WORDS_LENGTH = 60;

  private Checks() {}

  /**
   * @throws Refusal unless {@code low <= value <= high}; NaN never is
   */
  static void within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw new Refusal(
          "The "
              + what
              + " must lie between "
              + Figures.exact(low)
              + " and "
              + Figures.exact(high)
              + " "
              + unit
              + ": got "
              + Figures.exact(value)
              + ".");
    }
  }

  /**
   * @throws Refusal unless {@code 0 < value <= high}
   */
  static void aboveZero(String what, double value, double high, String unit) {
    if (!(value > 0 && value <= high)) {
      throw new Refusal(
          "The %s must be above 0 and at most %s: got %s."
              .formatted(what, (Figures.exact(high) + " " + unit).strip(), Figures.exact(value)));
    }
  }

  /**
   * @throws Refusal unless the year is 1900 to 2199
   */
  static void believable(LocalDate day) {
    if (day.getYear() < 1900 || day.getYear() > 2199) {
      throw new Refusal("The date " + day + " is outside 1900 to 2199.");
    }
  }

  /**
   * @throws Refusal unless it is a minute of a day, 0 to 1440
   */
  static void minute(int minute) {
    within("minute of the day", minute, 0, 1440, "min");
  }

  /**
   * A few words, cleaned.
   *
   * @throws Refusal if there is none, or they are too long
   */
  static String words(String what, String raw) {
    String words = Text.clean(raw);
    if (words.isEmpty() || Text.length(words) > WORDS_LENGTH) {
      throw new Refusal(
          "The %s holds 1 to %d characters: got %d."
              .formatted(what, WORDS_LENGTH, Text.length(words)));
    }
    return words;
  }

  /** The key of a table's row from how a person writes it; refuses as {@link #words}. */
  static String key(String what, String raw) {
    return Text.folded(words(what, raw)).replace(' ', '-');
  }
}
