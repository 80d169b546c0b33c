package motebook.screen.draw;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.desk.DayReport;
import motebook.desk.DayReport.Twa;
import motebook.desk.HeldLimit;
import motebook.model.Figures;
import motebook.reference.Limit;
import motebook.report.ProtectionWords;
import motebook.report.Wording;
import motebook.science.Estimate;

/** The day's dose outside and inside the mask, side by side, held against the limit. */
final class Gauge {
  private static final Scale SCALE = new Scale(0.01, 100);
  private static final int LABEL = 9;
  private static final int RANGE = 28;

  private final Canvas canvas;
  private final DayReport report;

  Gauge(Canvas canvas, DayReport report) {
    this.canvas = canvas;
    this.report = report;
  }

  /**
   * Four rows: what is held against what; then each side's figure, its bar, its range. With a row
   * more it says above them in words which side of the limit the day probably is.
   */
  void columns(int top, boolean verdict) {
    int end = canvas.columns() - 1;
    canvas.fitted(top, 1, end, heading(), Role.QUIET);
    if (verdict) {
      String said =
          Wording.verdict(report).orElse("")
              + ProtectionWords.brief(report).map(" "::concat).orElse("");
      canvas.fitted(top + 1, 1, end, said, Role.FIGURE);
    }
    int row = top + (verdict ? 1 : 0);
    int middle = canvas.columns() / 2;
    side(row + 1, 1, middle - 1, "outside the mask", report.outside());
    side(row + 1, middle + 1, end, "inside" + worn(), report.inside());
    Wording.uncredited(report).ifPresent(why -> uncredited(row + 2, middle + 1, end, why));
  }

  // Inside is then the same as outside: its bar and range would say nothing new.
  private void uncredited(int row, int from, int end, String why) {
    List<String> said = Fit.wrap("mask not credited: " + why + " (notes)", end - from, 2);
    for (int line = 0; line < 2; line++) {
      canvas.text(row + line, from, end, " ".repeat(end - from), Role.PLAIN);
      String text = line < said.size() ? said.get(line) : "";
      canvas.text(row + line, from, end, text, Role.WARNING);
    }
  }

  /** Three rows for a narrow terminal: what the figures are, then one row for each side. */
  void lines(int row) {
    String range = "estimated 8-hour mean, 90 % range";
    String heading =
        report
            .limit()
            .map(held -> held.other().isPresent() ? "the limits" : amount(held.limit()))
            .map(limit -> range + ", chance over " + limit)
            .or(() -> report.uncovered().map(dust -> "estimated; no limit here covers this dust"))
            .orElse(range);
    canvas.fitted(row, 1, canvas.columns() - 1, heading, Role.QUIET);
    line(row + 1, "outside", report.outside());
    line(row + 2, "inside", report.inside());
    Wording.uncredited(report).ifPresent(why -> uncredited(row + 2, why));
  }

  private void uncredited(int row, String why) {
    int end = canvas.columns() - 1;
    canvas.text(row, LABEL, end, " ".repeat(end - LABEL), Role.PLAIN);
    canvas.fitted(row, LABEL, end, "mask not credited: " + why + " (notes)", Role.WARNING);
  }

  private String heading() {
    String over = "8-hour means, estimated, not measured; ";
    return over
        + report
            .limit()
            .map(Gauge::limit)
            .or(() -> report.uncovered().map(dust -> "no limit here covers this dust"))
            .orElse("no limit applies");
  }

  private static String limit(HeldLimit held) {
    Limit limit = held.limit();
    String fraction = limit.fraction().name().toLowerCase(Locale.ROOT);
    return held.other()
            .map(other -> "limits " + Figures.plain(limit.mgPerM3()) + " and " + amount(other))
            .orElseGet(() -> "limit " + amount(limit) + " " + fraction)
        + " ("
        + limit.body()
        + ")";
  }

  private static String amount(Limit limit) {
    return Figures.plain(limit.mgPerM3()) + " mg/m³";
  }

  private String worn() {
    return Wording.masked(report) ? "" : ": no mask worn";
  }

  private void side(int row, int from, int to, String name, Twa twa) {
    int at = canvas.text(row, from, to, name + "  ", Role.PLAIN);
    canvas.fitted(row, at, to, headline(twa.estimate()), Role.FIGURE);
    bar(row + 1, from, to - 1, twa.estimate());
    canvas.fitted(row + 2, from, to, range(twa, to - from), Role.PLAIN);
  }

  private void line(int row, String name, Twa twa) {
    canvas.text(row, 1, name, Role.PLAIN);
    canvas.text(row, LABEL, headline(twa.estimate()), Role.FIGURE);
    canvas.text(row, RANGE, spread(twa.estimate()), Role.PLAIN);
    canvas.ending(row, canvas.columns() - 1, chance(twa).orElse(""), Role.PLAIN);
  }

  private static String headline(Estimate estimate) {
    return estimate.central() == 0 ? "none" : Figures.about(estimate.central()) + " mg/m³";
  }

  private static String range(Twa twa, int columns) {
    String range = spread(twa.estimate());
    if (range.isEmpty()) {
      return "";
    }
    String chance = chance(twa).map(value -> "; chance over: " + value).orElse("");
    String full = range + " (90 %)" + chance;
    String brief = range + chance;
    return full.length() <= columns
        ? full
        : brief.length() <= columns ? brief : brief.replace("chance over", "over");
  }

  private static String spread(Estimate estimate) {
    return estimate.central() == 0
        ? ""
        : Figures.cell(estimate.low90()) + " to " + Figures.cell(estimate.high90());
  }

  private static Optional<String> chance(Twa twa) {
    return twa.chanceOverLimit().isPresent()
        ? Optional.of(Figures.chance(twa.chanceOverLimit().getAsDouble()))
        : Optional.empty();
  }

  /** The bar of one side: its range, its middle, and the limit. */
  void bar(int row, int from, int to, Estimate estimate) {
    int width = to - from;
    for (int column = 0; column < width; column++) {
      canvas.put(row, from + column, canvas.glyph("·", "."), Role.QUIET);
    }
    Optional<Integer> limit = report.limit().map(this::inhalable).map(v -> column(v, width));
    if (estimate.central() > 0) {
      span(row, from, width, estimate, limit.orElse(width));
    }
    limit.ifPresent(at -> canvas.put(row, from + at, canvas.glyph("┃", "|"), Role.LIMIT));
  }

  // The limit in the fraction of the bar, inhalable: through the ratio that the day was held at.
  private double inhalable(HeldLimit held) {
    return held.ratio() > 0
        ? report.outside().estimate().central() / held.ratio()
        : held.limit().mgPerM3();
  }

  private void span(int row, int from, int width, Estimate estimate, int limit) {
    int low = column(estimate.low90(), width);
    int high = column(estimate.high90(), width);
    for (int column = low; column <= high; column++) {
      boolean over = column > limit;
      String glyph = over ? canvas.glyph("═", "=") : canvas.glyph("─", "-");
      canvas.put(row, from + column, glyph, over ? Role.WARNING : Role.FIGURE);
    }
    int centre = column(estimate.central(), width);
    canvas.put(row, from + centre, canvas.glyph("◆", "*"), Role.FIGURE);
  }

  /** The row of figures under such bars. */
  static void scale(Canvas canvas, int row, int from, int to) {
    for (double value = 0.01; value <= 10; value *= 10) {
      canvas.text(row, from + column(value * 1.001, to - from), Figures.plain(value), Role.QUIET);
    }
    canvas.ending(row, to, "100", Role.QUIET);
  }

  private static int column(double value, int width) {
    return (int) Math.min(width - 1, Math.floor(SCALE.place(value) * width));
  }
}
