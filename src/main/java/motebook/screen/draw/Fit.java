package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;

/** Makes text fit into columns. */
final class Fit {
  private static final String MORE = "…";

  private Fit() {}

  /** The text, cut with a mark of omission where it is wider than the columns. */
  static String into(String text, int columns) {
    return Width.of(text) <= columns ? text : head(text, columns - 1) + (columns > 0 ? MORE : "");
  }

  /** As much of the beginning as the columns hold. */
  static String head(String text, int columns) {
    int used = 0;
    int index = 0;
    while (index < text.length()) {
      int codePoint = text.codePointAt(index);
      used += Width.of(codePoint);
      if (used > columns) {
        break;
      }
      index += Character.charCount(codePoint);
    }
    return text.substring(0, index);
  }

  /** The text broken into lines between its words; a word wider than the columns is broken, too. */
  static List<String> wrap(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && Width.of(line + " " + word) > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
      spill(line, columns, lines);
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static void spill(StringBuilder line, int columns, List<String> lines) {
    while (Width.of(line.toString()) > columns) {
      String head = head(line.toString(), Math.max(2, columns));
      lines.add(head);
      line.delete(0, head.length());
    }
  }

  /** The wrapped text in at most so many lines; the last one is cut if there is more. */
  static List<String> wrap(String text, int columns, int most) {
    List<String> lines = wrap(text, columns);
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, Math.max(0, most)));
    if (most > 0) {
      kept.set(most - 1, into(kept.get(most - 1) + " " + lines.get(most), columns));
    }
    return kept;
  }

  /** The text followed by spaces up to a width. */
  static String left(String text, int columns) {
    String fit = into(text, columns);
    return fit + " ".repeat(columns - Width.of(fit));
  }

  /** The text after spaces up to a width. */
  static String right(String text, int columns) {
    String fit = into(text, columns);
    return " ".repeat(columns - Width.of(fit)) + fit;
  }
}
