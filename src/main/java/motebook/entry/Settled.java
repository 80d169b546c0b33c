package motebook.entry;

import java.util.Arrays;
import motebook.model.Text;

/**
 * A text with every gap as one plain space and what cannot be drawn left out, which still knows
 * where each of its characters stood.
 */
final class Settled {
  private final String text;
  private final int[] origins;

  private Settled(String text, int[] origins) {
    this.text = text;
    this.origins = origins;
  }

  static Settled of(String original) {
    StringBuilder kept = new StringBuilder(original.length());
    int[] origins = new int[original.length()];
    for (int at = 0; at < original.length(); ) {
      int c = original.codePointAt(at);
      int before = kept.length();
      if (isGap(c)) {
        kept.append(' ');
      } else if (isDrawable(c)) {
        kept.appendCodePoint(c);
      }
      for (int i = before; i < kept.length(); i++) {
        origins[i] = at + i - before;
      }
      at += Character.charCount(c);
    }
    return new Settled(kept.toString(), Arrays.copyOf(origins, kept.length()));
  }

  private static boolean isGap(int c) {
    return c == '\t' || c == '\n' || c == '\r' || Character.isSpaceChar(c);
  }

  private static boolean isDrawable(int c) {
    return (c > ' ' && c < 0x7f) || !Text.clean(Character.toString(c)).isEmpty();
  }

  String text() {
    return text;
  }

  /** Where the character stood in the original. */
  int originOf(int index) {
    return origins[index];
  }

  /** Where the character before this index ended in the original; 0 for the start. */
  int originAfter(int index) {
    return index == 0 ? 0 : origins[index - 1] + 1;
  }
}
