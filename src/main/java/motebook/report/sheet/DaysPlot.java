package motebook.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import motebook.desk.DayReport;
import motebook.model.Figures;
import motebook.report.Wording;
import motebook.science.Estimate;

/** Seven days: the headline figure and the 90 % range outside and inside, and each day's limit. */
final class DaysPlot implements Plot {
  private static final double LEFT = 26;
  private static final double TOP = 12;
  private static final double BOTTOM = 16;
  private static final double DOT = 2.6;

  private final List<DayReport> days;

  DaysPlot(List<DayReport> days) {
    this.days = days;
  }

  @Override
  public String title() {
    return "Each day: 8-hour mean in mg/m³, 90 % range, limit";
  }

  @Override
  public String description() {
    return days.stream()
        .filter(day -> day.minutesLogged() > 0)
        .map(
            day ->
                Wording.weekday(day.date())
                    + ": outside "
                    + Wording.estimate(day.outside().estimate())
                    + (Wording.masked(day)
                        ? ", inside " + Wording.estimate(day.inside().estimate())
                        : "")
                    + day.limit()
                        .map(held -> ", limit " + Figures.rounded(limit(day)) + " mg/m³")
                        .orElse(", no limit"))
        .collect(Collectors.joining("; ", "", "."));
  }

  @Override
  public void draw(Pen pen, double width, double height) {
    LogScale scale = new LogScale(values(), height - BOTTOM, TOP);
    scale.draw(pen, LEFT, width);
    double slot = (width - LEFT) / days.size();
    for (int i = 0; i < days.size(); i++) {
      draw(pen, days.get(i), scale, LEFT + i * slot, slot);
      pen.text(
          Pen.Tone.INK,
          7.5,
          Pen.Anchor.MIDDLE,
          LEFT + (i + 0.5) * slot,
          height - 4,
          Wording.weekday(days.get(i).date()).substring(0, 3));
    }
  }

  private DoubleStream values() {
    return days.stream()
        .flatMapToDouble(
            day ->
                DoubleStream.concat(
                    Stream.of(day.outside(), day.inside())
                        .map(DayReport.Twa::estimate)
                        .flatMapToDouble(e -> DoubleStream.of(e.low90(), e.high90())),
                    DoubleStream.of(limit(day))));
  }

  private static double limit(DayReport day) {
    return InhalableLimit.of(day).orElse(Double.NaN);
  }

  private static void draw(Pen pen, DayReport day, LogScale scale, double left, double slot) {
    if (day.outside().estimate().central() == 0) {
      pen.text(Pen.Tone.QUIET, 7.5, Pen.Anchor.MIDDLE, left + slot / 2, scale.at(0) - 4, "–");
      return;
    }
    boolean masked = Wording.masked(day);
    double x = left + slot / 2;
    range(pen, day.outside().estimate(), scale, masked ? x - 5 : x, true);
    if (masked) {
      range(pen, day.inside().estimate(), scale, x + 5, false);
    }
    double limit = limit(day);
    if (limit > 0) {
      pen.path(Pen.Stroke.LIMIT, left + 2, scale.at(limit), left + slot - 2, scale.at(limit));
    }
  }

  private static void range(Pen pen, Estimate e, LogScale scale, double x, boolean outside) {
    pen.path(
        outside ? Pen.Stroke.RANGE : Pen.Stroke.INSIDE,
        x,
        scale.at(e.low90()),
        x,
        scale.at(e.high90()));
    pen.disc(outside ? Pen.Tone.INK : Pen.Tone.PAPER, x, scale.at(e.central()), DOT);
    if (outside) {
      pen.text(
          Pen.Tone.INK,
          7,
          Pen.Anchor.MIDDLE,
          x,
          scale.at(e.high90()) - 2.5,
          Figures.cell(e.central()));
    }
  }
}
