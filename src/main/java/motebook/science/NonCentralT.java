package motebook.science;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.special.Gamma;

/**
 * The non-central t distribution, exact.
 *
 * <p>{@code P(T ≤ t) = ∫ Φ(t·r − δ) f(r) dr}, where r is the ratio of a normal sample's standard
 * deviation to the true one, {@code f(r) = 2(ν/2)^(ν/2)/Γ(ν/2) r^(ν−1) e^(−νr²/2)}: the definition
 * of the distribution, integrated numerically.
 */
final class NonCentralT {
  // Beyond this many standard deviations the ratio has no weight that a double could hold.
  private static final double REACH = 9;
  private static final int MANY = 1_000_000;

  private NonCentralT() {}

  /**
   * Share below t.
   *
   * @param t any
   * @param nu degrees of freedom, at least 1
   * @param delta non-centrality
   */
  static double below(double t, int nu, double delta) {
    double half = nu / 2.0;
    double logScale = Math.log(2) + half * Math.log(half) - Gamma.logGamma(half);
    UnivariateFunction weighted =
        r ->
            Normal.below(t * r - delta)
                * Math.exp(logScale + (nu - 1) * Math.log(r) - half * r * r);
    double reach = REACH / Math.sqrt(2.0 * nu);
    return new IterativeLegendreGaussIntegrator(20, 1e-11, 1e-13)
        .integrate(MANY, weighted, Math.max(0, 1 - reach), 1 + reach);
  }
}
