package motebook.science;

/** Doubts about an emission, as variances of its natural logarithm. */
public final class Spread {
  /** Doubt about the air model itself, one for all sessions: a factor of two. */
  public static final double MODEL = square(Math.log(2));

  /** Doubt about the air at the face outdoors, one for all sessions there: a factor of two. */
  public static final double OUTDOORS = square(Math.log(2));

  /** What a sampled session has of its own within the day: a factor of 1.6. A judgement. */
  public static final double STRETCH = square(Math.log(1.6));

  // 90 % of a normal distribution lie within ±1.645 standard deviations.
  private static final double NINETY_PERCENT_WIDTH = 3.29;
  private static final double LEAST_OWN_GSD = 1.67;

  private Spread() {}

  /**
   * The variance that a 90 % range stands for.
   *
   * @param low above 0
   * @param high not below low
   */
  public static double ofRange(double low, double high) {
    return square(Math.log(high / low) / NINETY_PERCENT_WIDTH);
  }

  /**
   * What is left of the spread among workers and days once the doubt about the operation's own
   * figure is taken out, never below a factor of 1.67.
   *
   * @param gsd geometric standard deviation of the operation, ≥ 1
   * @param ofOperation variance of the operation's figure
   */
  public static double own(double gsd, double ofOperation) {
    return Math.max(square(Math.log(gsd)) - ofOperation, square(Math.log(LEAST_OWN_GSD)));
  }

  private static double square(double x) {
    return x * x;
  }
}
