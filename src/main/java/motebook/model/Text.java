package motebook.model;

import java.text.Normalizer;
import java.util.Locale;

/**
 * The one place where text from outside is made fit to store and to draw.
 *
 * <p>Unicode's own categories decide: control (Cc), format (Cf: bidi marks, zero-width characters),
 * surrogate halves, private use and unassigned code points go; line and paragraph separators and
 * every kind of space become one plain space. The rest is kept, composed to NFC.
 */
public final class Text {
  /** Longest name of a person or a place, in code points; fits one column of every list. */
  public static final int NAME_LENGTH = 40;

  /** Longest note of a session, in code points. */
  public static final int NOTE_LENGTH = 1000;

  private Text() {}

  /** The text in NFC, without control and format characters, spaces single, ends trimmed. */
  public static String clean(String raw) {
    if (isClean(raw)) {
      return raw;
    }
    StringBuilder kept = new StringBuilder(raw.length());
    raw.codePoints().forEach(c -> append(kept, c));
    // composed last: what is left out may have stood between a letter and its accent
    return Normalizer.normalize(kept.toString().strip(), Normalizer.Form.NFC);
  }

  // Most texts are plain words of the keyboard, and a long book holds many.
  private static boolean isClean(String raw) {
    char before = ' ';
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c < ' ' || c > '~' || (c == ' ' && before == ' ')) {
        return false;
      }
      before = c;
    }
    return before != ' ' || raw.isEmpty();
  }

  private static void append(StringBuilder kept, int c) {
    if (isGap(c)) {
      if (kept.length() > 0 && kept.charAt(kept.length() - 1) != ' ') {
        kept.append(' ');
      }
    } else if (isDrawable(c)) {
      kept.appendCodePoint(c);
    }
  }

  private static boolean isGap(int c) {
    return c == '\t' || c == '\n' || c == '\r' || Character.isSpaceChar(c);
  }

  private static boolean isDrawable(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }

  /** The text as names are compared: cleaned, lower case, hyphens, slashes and commas as spaces. */
  public static String folded(String raw) {
    return clean(raw.replace('-', ' ').replace(',', ' ').replace('/', ' '))
        .toLowerCase(Locale.ROOT);
  }

  /** The number of code points, which is what lengths are told in. */
  public static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /**
   * A cleaned note.
   *
   * @throws Refusal if it is longer than {@link #NOTE_LENGTH}
   */
  public static String note(String raw) {
    String note = clean(raw);
    if (length(note) > NOTE_LENGTH) {
      throw new Refusal(
          "The note has "
              + length(note)
              + " characters; a note holds up to "
              + NOTE_LENGTH
              + ". Shorten it.");
    }
    return note;
  }
}
