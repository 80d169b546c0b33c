package motebook.science;

/** How long dust lingers once its source is off. */
public final class Clearing {
  private Clearing() {}

  /**
   * Minutes until a share of what is in the air is gone, {@code t = ln(C₁/C₂)/λ}.
   *
   * @param airChangesPerHour all losses together as air changes per hour, above 0
   * @param removalPercent above 0, below 100
   */
  public static double minutes(double airChangesPerHour, double removalPercent) {
    return -Math.log1p(-removalPercent / 100) / airChangesPerHour * 60;
  }
}
