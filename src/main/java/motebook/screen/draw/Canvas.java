package motebook.screen.draw;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.screen.state.Look;
import motebook.screen.state.Size;

/** Cells while they are drawn; what would lie outside is left out. */
final class Canvas {
  private static final char SOFT_HYPHEN = 0xAD;

  private final Size size;
  private final Look look;
  private final String[] graphemes;
  private final Role[] roles;
  private Optional<Cells.Caret> caret = Optional.empty();

  Canvas(Size size, Look look) {
    this.size = size;
    this.look = look;
    graphemes = new String[size.columns() * size.rows()];
    roles = new Role[graphemes.length];
    Arrays.fill(graphemes, " ");
    Arrays.fill(roles, Role.PLAIN);
  }

  int columns() {
    return size.columns();
  }

  int rows() {
    return size.rows();
  }

  boolean ascii() {
    return look == Look.ASCII;
  }

  /** One of two characters, whichever the terminal can show. */
  String glyph(String unicode, String ascii) {
    return ascii() ? ascii : unicode;
  }

  /** Writes text up to a column that it may not reach; gives the column behind it. */
  int text(int row, int column, int end, String text, Role role) {
    String shown = ascii() ? Plainly.of(text) : text;
    int at = column;
    for (String letter : letters(shown)) {
      int width = Math.max(1, Math.min(2, Width.of(letter)));
      if (at + width > Math.min(end, columns())) {
        break;
      }
      put(row, at, letter, role);
      if (width == 2) {
        put(row, at + 1, Cells.TAIL, role);
      }
      at += width;
    }
    return at;
  }

  /** Writes text up to the right edge. */
  int text(int row, int column, String text, Role role) {
    return text(row, column, columns(), text, role);
  }

  /** Writes text that is cut with a mark where it would reach the end. */
  int fitted(int row, int column, int end, String text, Role role) {
    String shown = ascii() ? Plainly.of(text) : text;
    return text(row, column, end, Fit.into(shown, end - column), role);
  }

  /** Writes text so that it ends before a column. */
  void ending(int row, int end, String text, Role role) {
    String shown = ascii() ? Plainly.of(text) : text;
    text(row, Math.max(0, end - Width.of(shown)), end, shown, role);
  }

  private static List<String> letters(String text) {
    List<String> all = new ArrayList<>(text.length());
    if (standsAlone(text)) {
      for (int at = 0; at < text.length(); at++) {
        all.add(text.substring(at, at + 1));
      }
      return all;
    }
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(text);
    int from = letters.first();
    for (int to = letters.next(); to != BreakIterator.DONE; to = letters.next()) {
      all.add(text.substring(from, to));
      from = to;
    }
    return all;
  }

  // What the rules of Unicode for joining letters need not be read for: no mark is among them that
  // joins another one, and none that stands on it.
  private static boolean standsAlone(String text) {
    for (int at = 0; at < text.length(); at++) {
      char letter = text.charAt(at);
      boolean latin = letter >= ' ' && letter < 0x300 && letter != SOFT_HYPHEN;
      boolean punctuation = letter >= 0x2010 && letter <= 0x2027;
      boolean drawn = letter >= 0x2190 && letter <= 0x28FF;
      if (!latin && !punctuation && !drawn) {
        return false;
      }
    }
    return true;
  }

  /** Sets one cell. */
  void put(int row, int column, String grapheme, Role role) {
    if (row >= 0 && row < rows() && column >= 0 && column < columns()) {
      graphemes[row * columns() + column] = grapheme;
      roles[row * columns() + column] = role;
    }
  }

  /** Gives a part of a row another role. */
  void role(int row, int from, int to, Role role) {
    if (row >= 0 && row < rows()) {
      Arrays.fill(
          roles,
          row * columns() + Math.max(0, from),
          row * columns() + Math.min(to, columns()),
          role);
    }
  }

  void caret(int column, int row) {
    caret = Optional.of(new Cells.Caret(Math.min(column, columns() - 1), row));
  }

  Cells done() {
    return new Cells(columns(), rows(), graphemes, roles, caret);
  }
}
