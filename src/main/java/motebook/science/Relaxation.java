package motebook.science;

/**
 * The exponential relaxation {@code C' = r − λC} in closed form, with its limits at {@code λ = 0}.
 *
 * <p>{@code C(t) = C₀e^(−λt) + r·t·φ₁(λt)} and {@code ∫C = C₀·t·φ₁(λt) + r·t²·φ₂(λt)}, where {@code
 * φ₁(x) = (1 − e^(−x))/x} and {@code φ₂(x) = (1 − φ₁(x))/x} are smooth at 0. Written so, no
 * quotient by λ arises and a sealed room needs no case of its own.
 *
 * <p>Where the source itself dies away, {@code C' = r·e^(−kt) − λC}, the part of the source is
 * {@code r·t·e^(−at)·φ₁((c−a)t)} and its integral {@code r·t²·ψ(at, ct)}, with a the lesser and c
 * the greater of k and λ and ψ the divided difference {@code (φ₁(x) − φ₁(y))/(y − x)}: one form for
 * k above, below and at λ, and for either at 0. Derived.
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
   * {@code (φ₁(x) − φ₁(y))/(y − x)}, its limit where they are equal, ½ where both are 0; for x and
   * y ≥ 0, in any order.
   */
  public static double psi(double x, double y) {
    double low = Math.min(x, y);
    double high = Math.max(x, y);
    if (high < SMALL) {
      return smallPsi(low, high);
    }
    // What has left a tank that loses at rate y what flows in as e^(−x·t), over a time of 1.
    return (phi1(low) - Math.exp(-low) * phi1(high - low)) / high;
  }

  // The complete homogeneous polynomials h₀ to h₄ of x and y over 2!, 3! … 6!.
  private static double smallPsi(double x, double y) {
    double h1 = x + y;
    double h2 = x * h1 + y * y;
    double h3 = x * h2 + y * y * y;
    double h4 = x * h3 + y * y * y * y;
    return 1 / 2.0 - h1 / 6 + h2 / 24 - h3 / 120 + h4 / 720;
  }

  /**
   * The value after a time of a steady source.
   *
   * @param start value at time 0
   * @param risePerMinute source term r
   * @param lossPerMinute λ ≥ 0
   * @param minutes ≥ 0
   */
  public static double value(
      double start, double risePerMinute, double lossPerMinute, double minutes) {
    return value(start, risePerMinute, 0, lossPerMinute, minutes);
  }

  /** The integral of the value over the time, in value·minutes; arguments as for the value. */
  public static double integral(
      double start, double risePerMinute, double lossPerMinute, double minutes) {
    return integral(start, risePerMinute, 0, lossPerMinute, minutes);
  }

  /**
   * The value after a time of a source that dies away.
   *
   * @param start value at time 0
   * @param risePerMinute source term r at time 0
   * @param decayPerMinute k ≥ 0 of the source
   * @param lossPerMinute λ ≥ 0
   * @param minutes ≥ 0
   */
  public static double value(
      double start,
      double risePerMinute,
      double decayPerMinute,
      double lossPerMinute,
      double minutes) {
    double slower = Math.min(decayPerMinute, lossPerMinute) * minutes;
    double apart = Math.abs(decayPerMinute - lossPerMinute) * minutes;
    return start * Math.exp(-lossPerMinute * minutes)
        + risePerMinute * minutes * Math.exp(-slower) * phi1(apart);
  }

  /** The integral of that value over the time, in value·minutes; arguments as for the value. */
  public static double integral(
      double start,
      double risePerMinute,
      double decayPerMinute,
      double lossPerMinute,
      double minutes) {
    double lost = lossPerMinute * minutes;
    return start * minutes * phi1(lost)
        + risePerMinute * minutes * minutes * psi(decayPerMinute * minutes, lost);
  }
}
