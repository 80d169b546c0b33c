package motebook.science;

/** Dust that a particulate filter gathers while it is worn, {@code mass = C·Q·t·0.06}. */
public final class FilterLoading {
  // (min/h) / (L/m³)
  private static final double M3_PER_HOUR_PER_LITRE_PER_MIN = 0.06;

  private FilterLoading() {}

  /**
   * Load, mg.
   *
   * @param mgPerM3 mean outside the mask while it is worn, ≥ 0
   * @param litresPerMin what the wearer breathes, ≥ 0
   * @param hours worn, ≥ 0
   */
  public static double mg(double mgPerM3, double litresPerMin, double hours) {
    return mgPerM3 * litresPerMin * hours * M3_PER_HOUR_PER_LITRE_PER_MIN;
  }

  /** Hours worn until the load is {@code mg}; concentration and flow above 0. */
  public static double hours(double mg, double mgPerM3, double litresPerMin) {
    return mg / mg(mgPerM3, litresPerMin, 1);
  }
}
