package motebook.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;

/** Times of day given to an option. */
final class Times {
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.](\\d{2})");
  private static final int DAY = 24 * 60;

  private Times() {}

  /**
   * A minute of the day from {@code 9:15}; {@code 24:00} is its end.
   *
   * @param what the option, for the message
   * @throws Refusal if it is no time of day
   */
  static int minute(String what, String text) {
    Matcher match = CLOCK.matcher(text.strip());
    if (match.matches()) {
      int hour = Integer.parseInt(match.group(1));
      int minute = Integer.parseInt(match.group(2));
      if (minute < 60 && 60 * hour + minute <= DAY) {
        return 60 * hour + minute;
      }
    }
    throw new Refusal(what + " needs a time of day like 9:15: got \"" + Text.clean(text) + "\".");
  }
}
