package motebook.science;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * One-sided tolerance factor of a normal sample from the exact non-central t.
 *
 * <p>With {@code δ = z√n} and T non-central t of {@code ν = n − 1} degrees of freedom, the factor
 * is {@code K = T⁻¹(confidence)/√n}. {@code P(T ≤ t) = ∫ Φ(t·r − δ) f(r) dr}, where r is the ratio
 * of the sample's standard deviation to the true one, {@code f(r) = 2(ν/2)^(ν/2)/Γ(ν/2) r^(ν−1)
 * e^(−νr²/2)}: the definition of the distribution, integrated numerically.
 */
final class ToleranceFactor {
  private static final double Z95 = 1.6448536269514722;
  // Beyond this many standard deviations the ratio has no weight that a double could hold.
  private static final double REACH = 9;
  private static final int MANY = 1_000_000;

  private ToleranceFactor() {}

  /**
   * K for the 95th percentile.
   *
   * @param n results, at least 2
   * @param confidence above 0, below 1
   */
  static double of95thPercentile(int n, double confidence) {
    double delta = Z95 * Math.sqrt(n);
    UnivariateFunction excess = t -> below(t, n - 1, delta) - confidence;
    double high = 2 * delta;
    while (excess.value(high) < 0) {
      high *= 2;
    }
    return new BracketingNthOrderBrentSolver(1e-10, 1e-10, 5).solve(MANY, excess, 0, high)
        / Math.sqrt(n);
  }

  private static double below(double t, int nu, double delta) {
    double half = nu / 2.0;
    double logScale = Math.log(2) + half * Math.log(half) - Gamma.logGamma(half);
    UnivariateFunction weighted =
        r -> phi(t * r - delta) * Math.exp(logScale + (nu - 1) * Math.log(r) - half * r * r);
    double reach = REACH / Math.sqrt(2.0 * nu);
    return integral(weighted, Math.max(0, 1 - reach), 1 + reach);
  }

  private static double integral(UnivariateFunction f, double from, double to) {
    return new IterativeLegendreGaussIntegrator(20, 1e-11, 1e-13).integrate(MANY, f, from, to);
  }

  private static double phi(double z) {
    return 0.5 * Erf.erfc(-z / Math.sqrt(2));
  }
}
