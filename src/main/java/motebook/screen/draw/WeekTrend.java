package motebook.screen.draw;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import motebook.desk.WeekReport;
import motebook.model.Figures;
import motebook.report.WeekWords;
import motebook.report.Wording;
import motebook.screen.state.WeekPage;

/** The last weeks side by side: the headline figure outside as a column, inside as a mark. */
final class WeekTrend {
  /** Fewest rows in which it is drawn as columns. */
  static final int LEAST = 5;

  /** Most rows that it takes. */
  static final int MOST = 10;

  private static final String[] EIGHTHS = {" ", "▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
  private static final String[] ASCII = {" ", ".", ".", ":", ":", "+", "+", "#", "#"};
  private static final DateTimeFormatter MONDAY =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final int MARGIN = 8;
  private static final int WIDEST = 8;

  private final Canvas canvas;
  private final List<WeekReport> weeks;
  private final double highest;
  private final String trend;

  WeekTrend(Canvas canvas, WeekPage page) {
    this.canvas = canvas;
    this.weeks = page.weeks().weeks();
    this.trend = WeekWords.trend(page.review().quarter());
    this.highest = this.weeks.stream().mapToDouble(WeekReport::meanOfDays).max().orElse(0);
  }

  /** One row for a small window. */
  void line(int row) {
    int at = canvas.text(row, 1, weeks.size() + " weeks ", Role.QUIET);
    for (WeekReport week : weeks) {
      at = canvas.text(row, at, cell(eighths(week, 8, 0)), Role.FINE);
    }
    canvas.fitted(
        row, at + 1, canvas.columns() - 1, "highest " + Figures.about(highest), Role.QUIET);
  }

  /** A heading, the columns, and the Mondays under them. */
  void draw(int top, int rows) {
    String inside = masked() ? ", " + canvas.glyph("•", "o") + " inside" : "";
    String heading = weeks.size() + " weeks, mean of the days outside" + inside + ": " + trend;
    canvas.fitted(top, 1, canvas.columns() - 1, heading, Role.QUIET);
    int height = rows - 2;
    canvas.ending(top + 1, MARGIN - 1, highest == 0 ? "" : Figures.cell(highest), Role.QUIET);
    canvas.ending(top + height, MARGIN - 1, "0", Role.QUIET);
    for (int index = 0; index < weeks.size(); index++) {
      column(index, top + 1, height);
    }
    mondays(top + rows - 1);
  }

  private boolean masked() {
    return weeks.stream().flatMap(week -> week.days().stream()).anyMatch(Wording::masked);
  }

  private int width() {
    return Math.min(WIDEST, (canvas.columns() - MARGIN - 1) / weeks.size());
  }

  private void column(int index, int top, int height) {
    WeekReport week = weeks.get(index);
    int from = MARGIN + index * width();
    int eighths = eighths(week, 8 * height, 0);
    for (int level = 0; level < height; level++) {
      String cell = cell(Math.max(0, Math.min(8, eighths - 8 * level)));
      int row = top + height - 1 - level;
      if (!cell.equals(" ")) {
        canvas.text(row, from, cell.repeat(width() - 2), Role.FINE);
      } else if (level == 0) {
        canvas.text(row, from, canvas.glyph("·", "."), Role.QUIET);
      }
    }
    inside(week)
        .ifPresent(
            value ->
                canvas.put(
                    top + height - 1 - level(value, height),
                    from + width() - 2,
                    canvas.glyph("•", "o"),
                    Role.BREATHED));
  }

  private static OptionalDouble inside(WeekReport week) {
    boolean masked = week.days().stream().anyMatch(Wording::masked);
    return masked ? OptionalDouble.of(week.meanOfDaysInside()) : OptionalDouble.empty();
  }

  private int level(double value, int height) {
    return highest == 0 ? 0 : (int) Math.min(height - 1, Math.floor(value / highest * height));
  }

  // What is there at all is never drawn as nothing.
  private int eighths(WeekReport week, int most, int least) {
    double value = week.meanOfDays();
    return value == 0 ? least : (int) Math.max(1, Math.round(value / highest * most));
  }

  private String cell(int eighths) {
    return canvas.ascii() ? ASCII[eighths] : EIGHTHS[eighths];
  }

  private void mondays(int row) {
    int step = width() >= 7 ? 1 : 2;
    int last = weeks.size() - 1;
    for (int index = last; index >= 0; index -= step) {
      String monday = MONDAY.format(weeks.get(index).monday());
      canvas.text(row, MARGIN + index * width(), monday, index == last ? Role.TITLE : Role.QUIET);
    }
  }
}
