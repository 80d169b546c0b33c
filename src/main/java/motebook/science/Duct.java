package motebook.science;

/** Round ducts, in the units that their tables are printed in. */
public final class Duct {
  /** Lower end of the transport velocities for wood dust, ft/min. From memory (ACGIH). */
  public static final double LEAST_TRANSPORT_FPM = 3500;

  /** Upper end of the transport velocities for wood dust, ft/min. From memory (ACGIH). */
  public static final double USUAL_TRANSPORT_FPM = 4500;

  private static final double INCHES_PER_FOOT = 12;

  private Duct() {}

  /**
   * Cross-section, ft².
   *
   * @param diameterInches above 0
   */
  public static double areaFt2(double diameterInches) {
    double radius = diameterInches / INCHES_PER_FOOT / 2;
    return Math.PI * radius * radius;
  }
}
