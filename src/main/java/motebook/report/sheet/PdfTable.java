package motebook.report.sheet;

import java.util.List;

/** Draws a table with a heading, column heads and hair lines. */
final class PdfTable {
  private static final double SIZE = 8;
  private static final double HEAD = 7;
  private static final double ROW = 10.7;

  private final PdfPen pen;
  private final double width;

  PdfTable(PdfPen pen, double width) {
    this.pen = pen;
    this.width = width;
  }

  /** Draws it from a base line on; the base line after it. */
  double draw(Grid grid, double y) {
    pen.heading(SIZE + 0.5, 0, y, grid.title());
    double line = y + ROW + 1;
    row(grid, grid.heads(), HEAD, Pen.Tone.QUIET, line);
    for (List<String> cells : grid.rows()) {
      pen.path(Pen.Stroke.GRID, 0, line + 3, width, line + 3);
      line += ROW;
      row(grid, cells, SIZE, Pen.Tone.INK, line);
    }
    return line + ROW;
  }

  private void row(Grid grid, List<String> cells, double size, Pen.Tone tone, double y) {
    double left = 0;
    for (int column = 0; column < cells.size(); column++) {
      double wide = grid.width(column) * width;
      String text = pen.font().fitted(cells.get(column), size, wide - 2);
      if (grid.right(column)) {
        pen.text(tone, size, Pen.Anchor.END, left + wide, y, text);
      } else {
        pen.text(tone, size, Pen.Anchor.START, left, y, text);
      }
      left += wide;
    }
  }
}
