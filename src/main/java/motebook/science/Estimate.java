package motebook.science;

import org.hipparchus.special.Erf;

/**
 * A sum of lognormal parts, itself taken as lognormal; where measured results shaped it, with a
 * spread of its own on each side of the middle.
 *
 * @param typical the sum of the parts' typical values
 * @param central the median of the sum, the headline figure
 * @param below standard deviation of its natural logarithm below the median
 * @param above the same above it
 */
public record Estimate(double typical, double central, double below, double above) {
  /** Nothing at all. */
  public static final Estimate ZERO = new Estimate(0, 0, 0);

  private static final double NORMAL_95 = 1.645;

  /**
   * A lognormal one.
   *
   * @param sigma standard deviation of its natural logarithm
   */
  public Estimate(double typical, double central, double sigma) {
    this(typical, central, sigma, sigma);
  }

  /** One whose median and 90 % range are known, all above 0. */
  static Estimate ofRange(double typical, double low90, double central, double high90) {
    return new Estimate(
        typical,
        central,
        Math.log(central / low90) / NORMAL_95,
        Math.log(high90 / central) / NORMAL_95);
  }

  /** Standard deviation of the natural logarithm, the mean of both sides. */
  public double sigma() {
    return (below + above) / 2;
  }

  /** Lower end of the 90 % range. */
  public double low90() {
    return central * Math.exp(-NORMAL_95 * below);
  }

  /** Upper end of the 90 % range. */
  public double high90() {
    return central * Math.exp(NORMAL_95 * above);
  }

  /**
   * The chance that the true value lies above a limit, 0 to 1.
   *
   * @param limit above 0
   */
  public double chanceOver(double limit) {
    double sigma = limit < central ? below : above;
    if (central == 0 || sigma == 0) {
      return central > limit ? 1 : 0;
    }
    return Erf.erfc(Math.log(limit / central) / sigma / Math.sqrt(2)) / 2;
  }

  /**
   * The same where no true value lies above a most, above 0: the middle and both ends end there.
   */
  public Estimate atMost(double most) {
    return high90() <= most
        ? this
        : ofRange(Math.min(typical, most), Math.min(low90(), most), Math.min(central, most), most);
  }

  /** The same in other units: every value multiplied by a factor above 0. */
  public Estimate times(double factor) {
    return new Estimate(typical * factor, central * factor, below, above);
  }
}
