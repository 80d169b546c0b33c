package motebook.science;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Whether a limit is kept, by the tests of EN 689:2018 (from memory). */
public enum LimitVerdict {
  KEPT,
  NOT_KEPT,
  MORE_RESULTS_NEEDED;

  /** Results that the group test takes. */
  public static final int GROUP = 6;

  private static final int FEWEST = 3;
  private static final double[] SHARES = {0.10, 0.15, 0.20};

  /**
   * The group test with six results or more that differ: the upper limit of the 95th percentile at
   * 70 % confidence must not lie above the limit. The preliminary test otherwise: kept where three,
   * four, or five and more all lie below 10, 15 or 20 % of the limit, those below detection by
   * their limit of detection; not kept where a figure lies above the limit.
   *
   * @param told results of a figure, each above 0
   * @param below limits of detection that the others lie below, each above 0
   * @param fitted all of them as a sample, where they have a fit
   * @param limit above 0
   */
  public static LimitVerdict of(
      double[] told, double[] below, Optional<LognormalSample> fitted, double limit) {
    int n = told.length + below.length;
    Optional<LognormalSample> group = fitted.filter(sample -> n >= GROUP && sample.spreads());
    if (group.isPresent()) {
      return group.get().upperToleranceLimit(0.70) <= limit ? KEPT : NOT_KEPT;
    }
    if (Arrays.stream(told).anyMatch(result -> result > limit)) {
      return NOT_KEPT;
    }
    double highest = DoubleStream.concat(Arrays.stream(told), Arrays.stream(below)).max().orElse(0);
    boolean low = n >= FEWEST && highest < SHARES[Math.min(n - FEWEST, SHARES.length - 1)] * limit;
    return low ? KEPT : MORE_RESULTS_NEEDED;
  }

  /** The verdict as a key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
