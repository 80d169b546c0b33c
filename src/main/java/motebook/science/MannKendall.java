package motebook.science;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hipparchus.special.Erf;

/**
 * Mann and Kendall's test for a trend of evenly spaced values, with ties, and Sen's slope.
 *
 * @param s {@code Σ sign(later − earlier)} over all pairs
 * @param variance of s without a trend, {@code [n(n−1)(2n+5) − Σt(t−1)(2t+5)]/18} over groups of t
 *     equal values
 * @param senSlope median of the slopes of all pairs, per step
 */
public record MannKendall(long s, double variance, double senSlope) {

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
    return new MannKendall(s, variance(values), median(slopes));
  }

  /** Distance from no trend with the correction for continuity, {@code (s ∓ 1)/√variance}. */
  public double z() {
    return s == 0 ? 0 : (s - Long.signum(s)) / Math.sqrt(variance);
  }

  /** Chance of a |z| at least as large without a trend; the normal approximation. */
  public double pTwoSided() {
    return Erf.erfc(Math.abs(z()) / Math.sqrt(2));
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

  private static double median(double[] slopes) {
    double[] sorted = slopes.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
