package motebook.science;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What a normal sample tells, with a stated confidence, about the far end of its distribution; both
 * from the exact {@link NonCentralT}.
 */
final class ToleranceFactor {
  private static final double Z95 = 1.6448536269514722;
  private static final double FIRST_STEP = 2;
  private static final int MANY = 1_000_000;

  private ToleranceFactor() {}

  /**
   * One-sided tolerance factor of the 95th percentile: with {@code δ = z√n} and T non-central t of
   * {@code ν = n − 1}, {@code K = T⁻¹(confidence)/√n}.
   *
   * @param n results, at least 2
   * @param confidence above 0, below 1
   */
  static double of95thPercentile(int n, double confidence) {
    double delta = Z95 * Math.sqrt(n);
    UnivariateFunction excess = t -> NonCentralT.below(t, n - 1, delta) - confidence;
    double high = 2 * delta;
    while (excess.value(high) < 0) {
      high *= 2;
    }
    return solve(excess, 0, high) / Math.sqrt(n);
  }

  /**
   * The z that the true distance of a limit exceeds with a stated confidence, the distance being
   * {@code (limit − mean)/sd} of the whole distribution: δ/√n, where {@code P(T ≤ U√n; δ) =
   * confidence} and U is the distance that the sample shows.
   *
   * @param shown U, in the sample's standard deviations
   * @param n results, at least 2
   * @param confidence above 0, below 1
   */
  static double leastDistance(double shown, int n, double confidence) {
    double root = Math.sqrt(n);
    UnivariateFunction excess = delta -> NonCentralT.below(shown * root, n - 1, delta) - confidence;
    double step = FIRST_STEP;
    while (excess.value(shown * root - step) < 0) {
      step *= 2;
    }
    double low = shown * root - step;
    step = FIRST_STEP;
    while (excess.value(shown * root + step) > 0) {
      step *= 2;
    }
    return solve(excess, low, shown * root + step) / root;
  }

  private static double solve(UnivariateFunction f, double low, double high) {
    return new BracketingNthOrderBrentSolver(1e-10, 1e-10, 5).solve(MANY, f, low, high);
  }
}
