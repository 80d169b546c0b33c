package motebook.science;

import java.util.Arrays;
import java.util.Locale;

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
   * The group test with six results or more: the upper limit of the 95th percentile at 70 %
   * confidence must not lie above the limit. The preliminary test with three to five: kept where
   * all lie below 10, 15 or 20 % of the limit, not kept where any lies above it.
   *
   * @param results one or more, each above 0; for one below detection its limit of detection
   * @param fitted the same as a sample
   * @param limit above 0
   */
  public static LimitVerdict of(double[] results, LognormalSample fitted, double limit) {
    if (results.length >= GROUP) {
      return fitted.upperToleranceLimit(0.70) <= limit ? KEPT : NOT_KEPT;
    }
    double highest = Arrays.stream(results).max().orElseThrow();
    if (highest > limit) {
      return NOT_KEPT;
    }
    boolean below = results.length >= FEWEST && highest < SHARES[results.length - FEWEST] * limit;
    return below ? KEPT : MORE_RESULTS_NEEDED;
  }

  /** The verdict as a key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
