package motebook.science;

/**
 * What a respirator leaves of the concentration outside it.
 *
 * <p>{@code inside = C·(w/APF + 1 − w)}: the rule for lead in 29 CFR 1910.1025(c)(3); its use for
 * wood dust is an analogy.
 */
public final class Protection {
  private Protection() {}

  /**
   * The share that reaches the wearer, above 0 to 1.
   *
   * @param apf assigned protection factor, at least 1
   * @param wornShare share of the time it was on the face, 0 to 1
   */
  public static double insideShare(double apf, double wornShare) {
    return 1 - wornShare * (1 - 1 / apf);
  }

  /** The factor that part-time wear leaves, 1 to {@code 1/(1−w)}; arguments as above. */
  public static double effectiveFactor(double apf, double wornShare) {
    return 1 / insideShare(apf, wornShare);
  }
}
