package motebook.science;

import java.util.Arrays;

/**
 * Sen's slope: the median of the slopes of all pairs, with a 90 % interval.
 *
 * <p>The interval holds the slopes that Mann and Kendall's test, with its correction for
 * continuity, does not reject at a two-sided 10 % once they are taken out of the values: of the n'
 * slopes in order, from the one of rank {@code (n' − c)/2}, rounded to the nearest, to the one as
 * far from the top, with {@code c = 1.645·√variance} (Gilbert 1987, Statistical Methods for
 * Environmental Pollution Monitoring, section 16.5, from memory; the rounding is derived). So an
 * interval without 0 and a test below 10 % are one and the same where no values are equal. With few
 * values it reaches to the ends.
 *
 * @param perStep the slope, in the unit of the values per unit of time
 * @param low90 lower end of the interval
 * @param high90 upper end of the interval
 */
public record SenSlope(double perStep, double low90, double high90) {
  private static final double NORMAL_95 = 1.6448536269514722;

  /**
   * The slope of some values.
   *
   * @param times when, rising, as many as there are values
   * @param values two or more
   * @throws IllegalArgumentException if there are fewer, or not as many of the one as of the other
   */
  public static SenSlope of(double[] times, double[] values) {
    if (values.length < 2 || times.length != values.length) {
      throw new IllegalArgumentException("needs two values or more and a time for each");
    }
    double[] slopes = slopes(times, values);
    double c = NORMAL_95 * Math.sqrt(MannKendall.of(values).variance());
    int low = (int) Math.floor((slopes.length - c + 1) / 2);
    int high = slopes.length + 1 - low;
    return new SenSlope(median(slopes), ranked(slopes, low), ranked(slopes, high));
  }

  /** Whether the interval leaves out 0: -1 all below it, 1 all above it, 0 where it does not. */
  public int direction() {
    return low90 > 0 ? 1 : high90 < 0 ? -1 : 0;
  }

  private static double[] slopes(double[] times, double[] values) {
    int n = values.length;
    double[] slopes = new double[n * (n - 1) / 2];
    int next = 0;
    for (int later = 1; later < n; later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        slopes[next++] = (values[later] - values[earlier]) / (times[later] - times[earlier]);
      }
    }
    Arrays.sort(slopes);
    return slopes;
  }

  private static double ranked(double[] sorted, int rank) {
    return sorted[Math.min(Math.max(rank, 1), sorted.length) - 1];
  }

  private static double median(double[] sorted) {
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
