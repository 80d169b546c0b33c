package motebook.command;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * How much a person lost since a fit test. From 20 lb on, 24 % no longer fitted (Zhuang 2016); the
 * regulation itself names no weight.
 */
final class WeightLost {
  private static final Pattern SAID =
      Pattern.compile("-?(\\d+(?:[.,]\\d+)?) ?(lb|lbs|pounds?|kg)\\.?");
  private static final double POUNDS = 20;
  private static final double KILOGRAMS = 9;

  private WeightLost() {}

  /** Whether a text is a weight with its unit. */
  static boolean says(String text) {
    return matched(text).matches();
  }

  private static Matcher matched(String text) {
    return SAID.matcher(Text.clean(text).toLowerCase(Locale.ROOT));
  }

  /**
   * Sees to it that it is enough to ask for a new fit test.
   *
   * @throws Refusal if it is not
   */
  static void requireMuch(String text) {
    Matcher match = matched(text);
    if (match.matches()) {
      double lost = Double.parseDouble(match.group(1).replace(',', '.'));
      if (lost < (match.group(2).equals("kg") ? KILOGRAMS : POUNDS)) {
        throw new Refusal(
            ("%s is less than the 20 lb (9 kg) that ask for a new fit test. If the mask sits"
                    + " otherwise than before, enter it with --what face.")
                .formatted(Text.clean(text)));
      }
    }
  }
}
