package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import motebook.science.MannKendall;
import motebook.science.SenSlope;

/**
 * How the mean of a week's days outside went over some weeks.
 *
 * @param weeks how many were looked at, those without work among them
 * @param points the weeks with work, oldest first; the others are left out, not taken as clean
 * @param found the test and the slope; empty below {@link #LEAST} weeks with work
 */
public record Trend(int weeks, List<Point> points, Optional<Found> found) {
  /** The short look back. */
  public static final int QUARTER = 12;

  /** The long look back. */
  public static final int YEAR = 52;

  /** Weeks with work that a trend takes: with fewer, no order of the values would be telling. */
  public static final int LEAST = 4;

  /** The chance of such an order without a trend below which it is called clear. */
  public static final double CLEAR_BELOW = 0.1;

  public Trend {
    points = List.copyOf(points);
  }

  /**
   * A week with work.
   *
   * @param monday its first day
   * @param mgPerM3 the mean of its days outside
   */
  public record Point(LocalDate monday, double mgPerM3) {}

  /**
   * What the weeks tell.
   *
   * @param test Mann and Kendall's, on the weeks with work in their order
   * @param slope Sen's, mg/m³ a week, weeks off counted in the distance
   */
  public record Found(MannKendall test, SenSlope slope) {
    /**
     * Whether there is a trend to speak of: -1 falling, 1 rising, 0 none that is clear. The test
     * and the 90 % interval of the slope must both say so.
     */
    public int direction() {
      return test.pTwoSided() < CLEAR_BELOW ? slope.direction() : 0;
    }
  }

  /**
   * The trend of the weeks up to one.
   *
   * @param mean the figure of a week, empty for one without work
   */
  static Trend of(LocalDate lastMonday, int weeks, Function<LocalDate, OptionalDouble> mean) {
    List<Point> points =
        IntStream.range(0, weeks)
            .mapToObj(i -> lastMonday.minusWeeks(weeks - 1L - i))
            .flatMap(monday -> mean.apply(monday).stream().mapToObj(m -> new Point(monday, m)))
            .toList();
    return new Trend(
        weeks, points, points.size() < LEAST ? Optional.empty() : Optional.of(found(points)));
  }

  private static Found found(List<Point> points) {
    double[] values = points.stream().mapToDouble(Point::mgPerM3).toArray();
    double[] times = points.stream().mapToDouble(p -> p.monday().toEpochDay() / 7.0).toArray();
    return new Found(MannKendall.of(values), SenSlope.of(times, values));
  }
}
