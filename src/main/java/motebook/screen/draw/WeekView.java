package motebook.screen.draw;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import motebook.desk.DayReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekVapour;
import motebook.model.Figures;
import motebook.reference.Operation;
import motebook.report.VapourWords;
import motebook.report.WearText;
import motebook.report.WeekWarnings;
import motebook.report.WeekWords;
import motebook.report.Wording;
import motebook.screen.state.State;
import motebook.screen.state.WeekPage;

/** The week: seven days as bars, what changed, the last weeks, and what it came from. */
final class WeekView {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
  private static final int DAYS = 7;
  private static final int ROOMY = 30;
  private static final int LABEL = 9;
  private static final int FIGURE = 6;
  private static final int HOURS = 8;

  private final Canvas canvas;
  private final State state;
  private final int edge;

  WeekView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.edge = canvas.columns() - 1;
  }

  void draw() {
    Optional<WeekPage> page = state.week().current(state.sheet().person());
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    if (page.isEmpty()) {
      canvas.text(2, 1, "Reading the book …", Role.QUIET);
    } else {
      week(page.get(), foot);
    }
    new Foot(canvas, state).draw(foot);
  }

  private void week(WeekPage page, int foot) {
    WeekReport week = page.weeks().last();
    boolean masked = week.days().stream().anyMatch(Wording::masked);
    boolean tall = canvas.rows() >= 20;
    int row = 1;
    heading(row++, masked);
    for (int day = 0; day < DAYS; day++) {
      day(row++, day, week.days().get(day), masked);
    }
    if (tall) {
      scales(row++, masked);
    }
    row = means(row, week, foot);
    row = vapour(row, week, foot);
    row = said(row, page, foot);
    below(row, page, foot);
  }

  private void heading(int row, boolean masked) {
    int middle = middle(masked);
    canvas.fitted(
        row, LABEL, middle, "outside the mask, mg/m³, 90 % range; limit " + bar(), Role.QUIET);
    if (masked) {
      canvas.fitted(row, middle + 1, edge - HOURS, "inside the mask", Role.QUIET);
    }
    canvas.ending(row, edge, "worked", Role.QUIET);
  }

  private String bar() {
    return canvas.glyph("┃", "|");
  }

  /** The column behind the bars of the outside. */
  private int middle(boolean masked) {
    return masked ? LABEL + (edge - HOURS - LABEL) / 2 : edge - HOURS;
  }

  private void day(int row, int index, DayReport day, boolean masked) {
    boolean chosen = index == state.week().chosen();
    String mark = chosen ? ">" : " ";
    canvas.text(row, 1, mark + DAY.format(day.date()), chosen ? Role.CHOSEN : Role.PLAIN);
    if (day.minutesLogged() == 0) {
      canvas.text(row, LABEL + FIGURE, canvas.glyph("·", "."), Role.QUIET);
      return;
    }
    int middle = middle(masked);
    side(row, LABEL, middle - 1, day, day.outside());
    if (masked) {
      side(row, middle + 1, edge - HOURS - 1, day, day.inside());
    }
    canvas.ending(row, edge, Figures.duration(day.minutesLogged()), Role.PLAIN);
  }

  private void side(int row, int from, int to, DayReport day, DayReport.Twa twa) {
    String figure = twa.estimate().central() == 0 ? "0" : Figures.cell(twa.estimate().central());
    canvas.ending(row, from + FIGURE - 1, figure, Role.FIGURE);
    new Gauge(canvas, day).bar(row, from + FIGURE, to, twa.estimate());
  }

  private void scales(int row, boolean masked) {
    int middle = middle(masked);
    Gauge.scale(canvas, row, LABEL + FIGURE, middle - 1);
    if (masked) {
      Gauge.scale(canvas, row, middle + 1 + FIGURE, edge - HOURS - 1);
    }
  }

  private int means(int row, WeekReport week, int foot) {
    if (week.minutesLogged() == 0) {
      return text(row, foot, "Nothing is logged in this week.", Role.PLAIN);
    }
    int below =
        WeekWarnings.brief(week).map(s -> text(row, foot, "! " + s, Role.WARNING)).orElse(row);
    int at = text(below, foot, "over the limit: " + WeekWords.daysOver(week), Role.FIGURE);
    return text(at, foot, "mean " + WeekWords.meanOfDays(week), Role.PLAIN);
  }

  private int vapour(int row, WeekReport week, int foot) {
    return WeekVapour.of(week)
        .map(vapour -> text(row, foot, "vapour, limit 1: " + VapourWords.week(vapour), Role.PLAIN))
        .orElse(row);
  }

  private int said(int row, WeekPage page, int foot) {
    int at =
        used(
            WeekWords.change(page.weeks()).map(s -> text(row, foot, s, Role.TITLE)).orElse(row),
            page,
            foot);
    return canvas.rows() < ROOMY
        ? at
        : WeekWords.help(page.review()).map(s -> text(at, foot, s, Role.PLAIN)).orElse(at);
  }

  // One line in all, and only where there are more than the trend needs.
  private int used(int row, WeekPage page, int foot) {
    String used = WearText.brief(page.review().wear());
    if (used.isEmpty() || row >= foot - 1) {
      return row;
    }
    canvas.fitted(row, 1, edge, "used up  " + used, Role.PLAIN);
    return row + 1;
  }

  // In a small window each takes one row.
  private int text(int row, int foot, String text, Role role) {
    int most = canvas.rows() >= 20 ? 2 : 1;
    int at = row;
    for (String line : Fit.wrap(text, edge - 1, most)) {
      if (at < foot) {
        canvas.text(at++, 1, line, role);
      }
    }
    return at;
  }

  private void below(int row, WeekPage page, int foot) {
    int free = foot - row;
    int worst = Math.min(Math.max(2, free / 3), 6);
    int trend = free - worst;
    if (trend >= WeekTrend.LEAST) {
      new WeekTrend(canvas, page).draw(row, Math.min(trend, WeekTrend.MOST));
      worst(row + Math.min(trend, WeekTrend.MOST), page.weeks().last(), foot);
    } else if (free > 0) {
      new WeekTrend(canvas, page).line(row);
      worst(row + 1, page.weeks().last(), foot);
    }
  }

  private void worst(int row, WeekReport week, int foot) {
    int middle = canvas.columns() / 2;
    int at = row;
    List<Map.Entry<String, String>> operations = parts(week.byOperation(), Operation::name);
    List<Map.Entry<String, String>> materials = parts(week.byMaterial(), Wording::material);
    if (foot - at > 1) {
      canvas.text(at, 1, operations.isEmpty() ? "" : "most of it from", Role.QUIET);
      canvas.text(at++, middle + 1, materials.isEmpty() ? "" : "of", Role.QUIET);
    }
    for (int rank = 0; at < foot; rank++, at++) {
      part(at, 1, middle, operations, rank);
      part(at, middle + 1, edge, materials, rank);
    }
  }

  private static <K> List<Map.Entry<String, String>> parts(
      List<Map.Entry<K, Double>> parts, Function<K, String> name) {
    List<String> shares = Figures.shares(parts.stream().map(Map.Entry::getValue).toList());
    return IntStream.range(0, parts.size())
        .mapToObj(i -> Map.entry(name.apply(parts.get(i).getKey()), shares.get(i)))
        .toList();
  }

  private void part(int row, int from, int to, List<Map.Entry<String, String>> parts, int rank) {
    if (rank < parts.size()) {
      canvas.ending(row, from + 5, parts.get(rank).getValue(), Role.FIGURE);
      canvas.fitted(row, from + 7, to, parts.get(rank).getKey(), Role.PLAIN);
    }
  }
}
