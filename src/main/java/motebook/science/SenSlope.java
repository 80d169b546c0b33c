package motebook.science;

import java.util.Arrays;

/**
 * Sen's slope: the median of the slopes of all pairs, with a 90 % interval.
 *
 * <p>The interval is the usual one from the variance of Mann and Kendall's S: of the n' slopes in
 * order, the (n' − c)/2-th and the (n' + c)/2 + 1-th with {@code c = 1.645·√variance} (Gilbert
 * 1987, Statistical Methods for Environmental Pollution Monitoring, section 16.5; from memory),
 * ranks rounded outwards. With few values it reaches to the ends.
 *
 * @param perStep the slope, in the unit of the values per unit of time
 * @param low90 lower end of the interval
 * @param high90 upper end of the interval
 */
public record SenSlope(double perStep, double low90, double high90) {
  private static final double NORMAL_95 = 1.645;

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
    double half = NORMAL_95 * Math.sqrt(MannKendall.of(values).variance()) / 2;
    double middle = slopes.length / 2.0;
    int low = (int) Math.floor(middle - half);
    int high = (int) Math.ceil(middle + half + 1);
    return new SenSlope(median(slopes), ranked(slopes, low), ranked(slopes, high));
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
