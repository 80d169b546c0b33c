package motebook.entry;

import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import motebook.model.Text;

/** Small turns of phrase that the messages of this package share. */
final class Wording {
  private static final int LONGEST_QUOTED = 60;

  private Wording() {}

  /** The words as a list: {@code a}, {@code a or b}, {@code a, b or c}. */
  static String list(List<String> words, String last) {
    int size = words.size();
    if (size < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, size - 1)) + " " + last + " " + words.get(size - 1);
  }

  /** A text that a message quotes, not longer than one line of it. */
  static String shortened(String text) {
    return Text.length(text) <= LONGEST_QUOTED
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTED)) + "…";
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The time as the line writes it: two digits each. */
  static String time(LocalTime time) {
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }
}
