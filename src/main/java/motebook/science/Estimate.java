package motebook.science;

import org.hipparchus.special.Erf;

/**
 * A sum of lognormal parts, itself taken as lognormal.
 *
 * @param typical the sum of the parts' typical values
 * @param central the median of the sum, the headline figure
 * @param sigma standard deviation of its natural logarithm
 */
public record Estimate(double typical, double central, double sigma) {
  /** Nothing at all. */
  public static final Estimate ZERO = new Estimate(0, 0, 0);

  private static final double NORMAL_95 = 1.645;

  /** Lower end of the 90 % range. */
  public double low90() {
    return central * Math.exp(-NORMAL_95 * sigma);
  }

  /** Upper end of the 90 % range. */
  public double high90() {
    return central * Math.exp(NORMAL_95 * sigma);
  }

  /**
   * The chance that the true value lies above a limit, 0 to 1.
   *
   * @param limit above 0
   */
  public double chanceOver(double limit) {
    if (central == 0 || sigma == 0) {
      return central > limit ? 1 : 0;
    }
    return Erf.erfc(Math.log(limit / central) / sigma / Math.sqrt(2)) / 2;
  }

  /** The same in other units: every value multiplied by a factor above 0. */
  public Estimate times(double factor) {
    return new Estimate(typical * factor, central * factor, sigma);
  }
}
