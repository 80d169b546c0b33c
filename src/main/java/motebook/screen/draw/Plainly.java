package motebook.screen.draw;

import java.text.Normalizer;
import java.util.Map;

/** Text for terminals that show the printable characters of ASCII alone. */
final class Plainly {
  private static final Map<Integer, String> SPELT =
      Map.ofEntries(
          Map.entry((int) '³', "3"),
          Map.entry((int) 'µ', "u"),
          Map.entry((int) '…', "~"),
          Map.entry((int) '·', "-"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '’', "'"),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '←', "Left"),
          Map.entry((int) '→', "Right"),
          Map.entry((int) '↑', "Up"),
          Map.entry((int) '↓', "Down"),
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'ł', "l"));

  private Plainly() {}

  /** The text with every other character spelt, without its accents, or as a question mark. */
  static String of(String text) {
    if (text.codePoints().allMatch(c -> c < 128)) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    text.codePoints().forEach(c -> plain.append(c < 128 ? Character.toString(c) : spelt(c)));
    return plain.toString();
  }

  private static String spelt(int codePoint) {
    if (Width.of(codePoint) == 0) {
      return "";
    }
    String bare = Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFKD);
    return SPELT.getOrDefault(
        codePoint,
        bare.codePointAt(0) < 128 ? bare.substring(0, 1) : "?".repeat(Width.of(codePoint)));
  }
}
