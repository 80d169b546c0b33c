package motebook.command;

import motebook.entry.Durations;
import motebook.model.Decimal;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.model.Text;

/** Figures given on the command line, each checked and told by the option that it stands for. */
final class Numbers {
  private Numbers() {}

  /**
   * A number within bounds.
   *
   * @param what the option or argument, for the message
   * @throws Refusal if it is none, or outside the bounds
   */
  static double within(String what, String text, double low, double high) {
    double value = parse(what, text);
    if (!(value >= low && value <= high)) {
      throw new Refusal(
          what + " must lie between " + plain(low) + " and " + plain(high) + ": got " + text + ".");
    }
    return value;
  }

  /** A finite number, 0 or more. */
  static double notNegative(String what, String text) {
    return within(what, text, 0, 1e12);
  }

  /** A finite number above 0. */
  static double positive(String what, String text) {
    double value = notNegative(what, text);
    if (value == 0) {
      throw new Refusal(what + " must be above 0.");
    }
    return value;
  }

  private static double parse(String what, String text) {
    return Decimal.parse(text)
        .orElseThrow(
            () -> new Refusal(what + " needs a number: got \"" + Text.clean(text) + "\"."));
  }

  /** Minutes from {@code 120m} or {@code 2h}. */
  static int minutes(String what, String text) {
    return Durations.parse(text)
        .orElseThrow(
            () ->
                new Refusal(
                    what + " needs a duration like 120m or 2h: got \"" + Text.clean(text) + "\"."));
  }

  private static String plain(double value) {
    return Figures.plain(value);
  }
}
