package motebook.science;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hipparchus.special.Erf;

/**
 * Mann and Kendall's test for a trend of evenly spaced values, with ties, and Sen's slope.
 *
 * @param s {@code Σ sign(later − earlier)} over all pairs
 * @param variance of s without a trend, {@code [n(n−1)(2n+5) − Σt(t−1)(2t+5)]/18} over groups of t
 *     equal values
 * @param slopes of all pairs, per step, lowest first
 */
public record MannKendall(long s, double variance, List<Double> slopes) {
  private static final int SLOPES_OF_FIVE = 10;
  private static final double Z975 = 1.959963984540054;

  /**
   * The test of some values.
   *
   * @param values in the order of time, two or more
   * @throws IllegalArgumentException if there are fewer
   */
  public static MannKendall of(double... values) {
    if (values.length < 2) {
      throw new IllegalArgumentException("needs two values or more");
    }
    double[] slopes = slopes(values);
    long s = Arrays.stream(slopes).mapToLong(slope -> (long) Math.signum(slope)).sum();
    List<Double> sorted = Arrays.stream(slopes).sorted().boxed().toList();
    return new MannKendall(s, variance(values), sorted);
  }

  /** Distance from no trend with the correction for continuity, {@code (s ∓ 1)/√variance}. */
  public double z() {
    return s == 0 ? 0 : (s - Long.signum(s)) / Math.sqrt(variance);
  }

  /** Chance of a |z| at least as large without a trend; the normal approximation. */
  public double pTwoSided() {
    return Erf.erfc(Math.abs(z()) / Math.sqrt(2));
  }

  /** Sen's slope: the median of the slopes of all pairs, per step. */
  public double senSlope() {
    return atRank((slopes.size() + 1) / 2.0);
  }

  /** Lower end of the 95 % confidence interval of {@link #senSlope}; empty below five values. */
  public OptionalDouble senLow95() {
    return interval(atRank((slopes.size() - reach()) / 2));
  }

  /** Upper end of the 95 % confidence interval of {@link #senSlope}; empty below five values. */
  public OptionalDouble senHigh95() {
    return interval(atRank((slopes.size() + reach()) / 2 + 1));
  }

  // Of four values even the one order in which all rise comes by chance once in 24: no interval
  // of their six slopes has 95 % confidence. Of five it comes once in 120.
  private OptionalDouble interval(double end) {
    return slopes.size() < SLOPES_OF_FIVE ? OptionalDouble.empty() : OptionalDouble.of(end);
  }

  // Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, 16.4.2 (memory):
  // with C = 1.96 √variance the ends are the slopes of rank (N − C)/2 and (N + C)/2 + 1.
  private double reach() {
    return Z975 * Math.sqrt(variance);
  }

  // A rank between two slopes lies between them; one beyond all is the last.
  private double atRank(double rank) {
    double place = Math.max(0, Math.min(rank - 1, slopes.size() - 1));
    int before = (int) Math.floor(place);
    double share = place - before;
    return share == 0
        ? slopes.get(before)
        : slopes.get(before) + share * (slopes.get(before + 1) - slopes.get(before));
  }

  private static double[] slopes(double[] values) {
    int n = values.length;
    double[] slopes = new double[n * (n - 1) / 2];
    int next = 0;
    for (int later = 1; later < n; later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        slopes[next++] = (values[later] - values[earlier]) / (later - earlier);
      }
    }
    return slopes;
  }

  private static double variance(double[] values) {
    Map<Double, Long> ties =
        Arrays.stream(values)
            .map(value -> value + 0.0) // −0 equals 0
            .boxed()
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    double tied = ties.values().stream().mapToDouble(MannKendall::term).sum();
    return (term(values.length) - tied) / 18;
  }

  private static double term(long t) {
    return (double) t * (t - 1) * (2 * t + 5);
  }
}
