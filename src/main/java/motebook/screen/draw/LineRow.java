package motebook.screen.draw;

import motebook.screen.state.Fault;
import motebook.screen.state.Line;

/** The row in which the line is typed; a line longer than the row slides under the caret. */
final class LineRow {
  /** The column in which the line begins. */
  static final int FROM = 3;

  private static final int SHORTEST_OFFER = 14;
  private static final String CLOSED =
      "closed: letters go to the page; Esc or a digit opens the line";

  private final Canvas canvas;
  private final int row;
  private final Line line;
  private final int skipped;

  LineRow(Canvas canvas, int row, Line line) {
    this.canvas = canvas;
    this.row = row;
    this.line = line;
    this.skipped = skipped();
  }

  // Characters that have slid out on the left.
  private int skipped() {
    int room = canvas.columns() - FROM - 2;
    int from = 0;
    while (Width.of(line.text().substring(from, line.caret())) > room) {
      from += Character.charCount(line.text().codePointAt(from));
    }
    return from;
  }

  void typed() {
    canvas.text(row, 1, skipped > 0 ? "<" : ">", Role.KEY);
    canvas.text(row, FROM, canvas.columns() - 1, line.text().substring(skipped), Role.TYPED);
    canvas.caret(column(line.caret()), row);
  }

  /** The line while letters go to the page: its sign is barred, and there is no caret. */
  void closed() {
    canvas.text(row, 1, canvas.glyph("╳", "x"), Role.QUIET);
    String text = line.text().isEmpty() ? CLOSED : line.text();
    canvas.fitted(row, FROM, canvas.columns() - 1, text, Role.QUIET);
  }

  private int column(int index) {
    int from = Math.max(skipped, Math.min(index, line.text().length()));
    String before = line.text().substring(skipped, from);
    return FROM + Width.of(canvas.ascii() ? Plainly.of(before) : before);
  }

  /** What the line would become, told behind its end. */
  void offered(String whole) {
    int end = column(line.text().length());
    if (line.caret() == line.text().length() && end < canvas.columns() - SHORTEST_OFFER) {
      String offer = "  [Tab: " + whole.substring(common(whole)).strip();
      int behind = canvas.fitted(row, end, canvas.columns() - 2, offer, Role.OFFERED);
      canvas.text(row, behind, "]", Role.OFFERED);
    }
  }

  // Where the word begins in which both part, or the end of the line if it only goes on.
  private int common(String whole) {
    String text = line.text();
    int same = 0;
    while (same < Math.min(text.length(), whole.length())
        && Character.toLowerCase(text.charAt(same)) == Character.toLowerCase(whole.charAt(same))) {
      same++;
    }
    boolean between = same == whole.length() || whole.charAt(same) == ' ';
    return between && same == text.length() ? same : whole.lastIndexOf(' ', same - 1) + 1;
  }

  /** Marks what is at fault, in the row above the line. */
  void mark(int above, Fault fault) {
    if (fault.from() < 0) {
      return;
    }
    int from = column(fault.from());
    int to = Math.max(from + 1, column(fault.to()));
    for (int column = from; column < Math.min(to, canvas.columns() - 1); column++) {
      canvas.put(above, column, canvas.glyph("▾", "v"), Role.WRONG);
    }
  }
}
