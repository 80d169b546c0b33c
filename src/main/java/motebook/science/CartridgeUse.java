package motebook.science;

/**
 * How an organic-vapour cartridge is used.
 *
 * @param ppm concentration outside the mask, above 0
 * @param litresPerMin what the wearer breathes, above 0
 * @param humidityPercent relative humidity, 0 to 100
 * @param carbonGrams carbon of all cartridges that share the flow, above 0
 */
public record CartridgeUse(
    double ppm, double litresPerMin, double humidityPercent, double carbonGrams) {
  /** Where organic-vapour elements end, 42 CFR 84.190. */
  public static final double MOST_PPM = 1000;

  /** Flow that the printed breakthrough times hold for, L/min. */
  public static final double TABLE_LITRES_PER_MIN = 53.3;

  /** Carbon that the printed breakthrough times hold for, g: two cartridges of 26. */
  public static final double TABLE_CARBON_GRAMS = 52;

  private static final double HUMID_PERCENT = 85;

  public CartridgeUse {
    if (!(ppm > 0 && litresPerMin > 0 && carbonGrams > 0)
        || !(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException("no use of a cartridge");
    }
  }

  /** Whether an organic-vapour element may be used at all. */
  public boolean allowed() {
    return ppm <= MOST_PPM;
  }

  /** Humidity above 85 % halves the life by every estimate (OSHA, quoting AIHA). */
  double humidityFactor() {
    return humidityPercent > HUMID_PERCENT ? 0.5 : 1;
  }
}
