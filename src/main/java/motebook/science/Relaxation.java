package motebook.science;

/**
 * The exponential relaxation {@code C' = r − λC} in closed form, with its limits at {@code λ = 0}.
 *
 * <p>{@code C(t) = C₀e^(−λt) + r·t·φ₁(λt)} and {@code ∫C = C₀·t·φ₁(λt) + r·t²·φ₂(λt)}, where {@code
 * φ₁(x) = (1 − e^(−x))/x} and {@code φ₂(x) = (1 − φ₁(x))/x} are smooth at 0. Written so, no
 * quotient by λ arises and a sealed room needs no case of its own.
 */
public final class Relaxation {
  // Below this the quotient in φ₂ loses digits; the series' first left-out term is then < 2e-14.
  private static final double SMALL = 1e-2;

  private Relaxation() {}

  /** {@code (1 − e^(−x))/x}, 1 at 0; for x ≥ 0. */
  public static double phi1(double x) {
    return x == 0 ? 1 : -Math.expm1(-x) / x;
  }

  /** {@code (1 − φ₁(x))/x}, ½ at 0; for x ≥ 0. */
  public static double phi2(double x) {
    if (x < SMALL) {
      return 1 / 2.0 - x * (1 / 6.0 - x * (1 / 24.0 - x * (1 / 120.0 - x / 720.0)));
    }
    return (1 - phi1(x)) / x;
  }

  /**
   * The value after a time.
   *
   * @param start value at time 0
   * @param risePerMinute source term r
   * @param lossPerMinute λ ≥ 0
   * @param minutes ≥ 0
   */
  public static double value(
      double start, double risePerMinute, double lossPerMinute, double minutes) {
    double x = lossPerMinute * minutes;
    return start * Math.exp(-x) + risePerMinute * minutes * phi1(x);
  }

  /** The integral of the value over the time, in value·minutes; arguments as for the value. */
  public static double integral(
      double start, double risePerMinute, double lossPerMinute, double minutes) {
    double x = lossPerMinute * minutes;
    return start * minutes * phi1(x) + risePerMinute * minutes * minutes * phi2(x);
  }
}
