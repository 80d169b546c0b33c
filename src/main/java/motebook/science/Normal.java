package motebook.science;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
final class Normal {
  private static final double ROOT_TWO = Math.sqrt(2);
  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
  // Below this the share underflows towards zero; the ratio's own series is exact to 1e-5 there.
  private static final double FAR_BELOW = -30;

  private Normal() {}

  /** Share below z. */
  static double below(double z) {
    return 0.5 * Erf.erfc(-z / ROOT_TWO);
  }

  /** Share above z. */
  static double above(double z) {
    return 0.5 * Erf.erfc(z / ROOT_TWO);
  }

  /** The value that a share lies below, for a share above 0 and below 1. */
  static double quantile(double share) {
    return -ROOT_TWO * Erf.erfcInv(2 * share);
  }

  /** Density at z. */
  static double density(double z) {
    return Math.exp(-z * z / 2) / ROOT_TWO_PI;
  }

  /** Density at z over the share below z, the inverse of Mills' ratio; above −z everywhere. */
  static double ratioBelow(double z) {
    return z < FAR_BELOW ? -z - 1 / z : density(z) / below(z);
  }

  /** Logarithm of the share below z, also where the share itself underflows. */
  static double logBelow(double z) {
    return z < FAR_BELOW ? -z * z / 2 - Math.log(ratioBelow(z) * ROOT_TWO_PI) : Math.log(below(z));
  }
}
