package motebook.report.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import motebook.desk.Trend;
import motebook.desk.WeekReview;
import motebook.model.Figures;
import motebook.report.WeekWords;

/** The weeks up to this one: the headline figure of each with work, and Sen's slope if clear. */
final class TrendPlot implements Plot {
  private static final double LEFT = 26;
  private static final double TOP = 12;
  private static final double BOTTOM = 16;
  private static final int STEPS = 4;
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private final Trend trend;

  /** The year's trend, or the quarter's where there is no work from before it. */
  TrendPlot(WeekReview review) {
    trend =
        review.year().points().size() > review.quarter().points().size()
            ? review.year()
            : review.quarter();
  }

  @Override
  public String title() {
    return "The last " + trend.weeks() + " weeks: mean of the days over 40 h outside, mg/m³";
  }

  @Override
  public String description() {
    return WeekWords.trend(trend) + ".";
  }

  @Override
  public void draw(Pen pen, double width, double height) {
    double bottom = height - BOTTOM;
    double most = nice(highest());
    for (int i = 0; i <= STEPS; i++) {
      double y = bottom + (TOP - bottom) * i / STEPS;
      pen.path(Pen.Stroke.GRID, LEFT, y, width, y);
      pen.text(
          Pen.Tone.QUIET, 7, Pen.Anchor.END, LEFT - 4, y + 2.5, Figures.plain(most * i / STEPS));
    }
    Axes axes = new Axes(width, bottom, most);
    slope(pen, axes);
    points().forEach(p -> pen.disc(Pen.Tone.INK, axes.x(p.monday()), axes.y(p.mgPerM3()), 2.2));
    dates(pen, axes, width, height);
  }

  private List<Trend.Point> points() {
    return trend.points();
  }

  private LocalDate lastMonday() {
    return points().get(points().size() - 1).monday();
  }

  private double highest() {
    return points().stream().mapToDouble(Trend.Point::mgPerM3).max().orElse(1);
  }

  // Four steps of these have short labels.
  private static double nice(double value) {
    double ten = Math.pow(10, Math.floor(Math.log10(Math.max(value, 1e-6))));
    for (double first : new double[] {1, 1.2, 1.6, 2, 2.4, 3.2, 4, 6, 8}) {
      if (value <= first * ten) {
        return first * ten;
      }
    }
    return 10 * ten;
  }

  private void slope(Pen pen, Axes axes) {
    trend
        .found()
        .filter(found -> found.direction() != 0)
        .ifPresent(
            found -> {
              double step = found.slope().perStep();
              double start = intercept(step);
              int last = trend.weeks() - 1;
              pen.path(
                  Pen.Stroke.LINE,
                  axes.x(0),
                  axes.y(Math.max(0, start)),
                  axes.x(last),
                  axes.y(Math.max(0, start + step * last)));
            });
  }

  // The median of what each week leaves when the slope is taken out (Conover's choice, from
  // memory).
  private double intercept(double step) {
    double[] left =
        points().stream()
            .mapToDouble(p -> p.mgPerM3() - step * week(p.monday()))
            .sorted()
            .toArray();
    int middle = left.length / 2;
    return left.length % 2 == 1 ? left[middle] : (left[middle - 1] + left[middle]) / 2;
  }

  private long week(LocalDate monday) {
    long back = (lastMonday().toEpochDay() - monday.toEpochDay()) / 7;
    return trend.weeks() - 1 - back;
  }

  private void dates(Pen pen, Axes axes, double width, double height) {
    LocalDate last = lastMonday();
    LocalDate first = last.minusWeeks(trend.weeks() - 1L);
    LocalDate middle = last.minusWeeks(trend.weeks() / 2);
    pen.text(Pen.Tone.INK, 7.5, Pen.Anchor.START, LEFT, height - 4, SHORT.format(first));
    pen.text(
        Pen.Tone.INK, 7.5, Pen.Anchor.MIDDLE, axes.x(middle), height - 4, SHORT.format(middle));
    pen.text(Pen.Tone.INK, 7.5, Pen.Anchor.END, width, height - 4, SHORT.format(last));
  }

  private final class Axes {
    private final double width;
    private final double bottom;
    private final double most;

    Axes(double width, double bottom, double most) {
      this.width = width;
      this.bottom = bottom;
      this.most = most;
    }

    double x(LocalDate monday) {
      return x(week(monday));
    }

    double x(long week) {
      return LEFT + 6 + (width - LEFT - 12) * week / (trend.weeks() - 1);
    }

    double y(double value) {
      return bottom + (TOP - bottom) * Math.min(1, value / most);
    }
  }
}
