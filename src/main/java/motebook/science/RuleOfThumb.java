package motebook.science;

/**
 * Rule of thumb for organic vapours (OSHA, quoting AIHA).
 *
 * <p>Boiling above 70 °C and up to 200 ppm: about 8 h at a normal work rate, taken as 40 L/min
 * (judgement); life ∝ 1/flow; a tenth of the concentration, five times the life, so above 200 ppm
 * {@code 480·(200/C)^0.7}. Only beside another method, and never for light alcohols.
 */
public final class RuleOfThumb {
  /** It holds for what boils above this, °C. */
  public static final double BOILING_ABOVE_C = 70;

  private static final double MINUTES = 480;
  private static final double UP_TO_PPM = 200;
  private static final double LITRES_PER_MIN = 40;
  private static final double POWER = 0.7;

  private RuleOfThumb() {}

  /** Minutes of life. */
  public static double life(CartridgeUse use) {
    return MINUTES
        * Math.pow(UP_TO_PPM / Math.max(UP_TO_PPM, use.ppm()), POWER)
        * (LITRES_PER_MIN / use.litresPerMin())
        * use.humidityFactor();
  }
}
