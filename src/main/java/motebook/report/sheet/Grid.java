package motebook.report.sheet;

import java.util.List;

/**
 * A table as words.
 *
 * @param title what it is of
 * @param heads the heads of its columns
 * @param rows its cells; the first of a row heads the row
 * @param widths share of the width of each column, adding to 1; below 0 for one set to the right
 */
record Grid(String title, List<String> heads, List<List<String>> rows, List<Double> widths) {
  Grid {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
    widths = List.copyOf(widths);
  }

  /** Whether the cells of a column are set to the right. */
  boolean right(int column) {
    return widths.get(column) < 0;
  }

  /** Share of the width of a column. */
  double width(int column) {
    return Math.abs(widths.get(column));
  }
}
