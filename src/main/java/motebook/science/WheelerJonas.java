package motebook.science;

/**
 * Service life of a carbon bed to 10 % breakthrough at 22 °C after Wheeler and Jonas, with Wood's
 * estimates of capacity and rate. All constants are from memory, the bed term is fitted.
 *
 * <p>{@code t = We·W/(C₀·Q) − We·ρB/(kv·C₀)·ln((C₀−Cb)/Cb)} in g, cm³ and min, with {@code We =
 * W₀·dL·exp(−b'·W₀·Pe^−1.8·(RT·ln(psat/p))²)}, {@code Pe = (n²−1)/(n²+2)·M/dL} and {@code 1/kv =
 * B·(0.000825 + (0.063 − 0.0055·ln((C₀−Cb)/Cb))/Pe)}.
 */
public final class WheelerJonas {
  private static final double KELVIN = 295.15;
  private static final double KELVIN_20 = 293.15;
  private static final double KELVIN_25 = 298.15;
  private static final double CALORIES_PER_MOL_KELVIN = 1.987;
  private static final double CM3_PER_MOL = 82.05737 * KELVIN;
  private static final double ATMOSPHERE_KPA = 101.325;
  private static final double PER_MILLION = 1e-6;
  private static final double CM3_PER_LITRE = 1000;

  private static final double MICROPORES_CM3_PER_G = 0.454;
  private static final double AFFINITY = 3.56e-5;
  private static final double AFFINITY_POWER = -1.8;
  private static final double BED_G_PER_CM3 = 0.40;
  // One number, fitted to the OSHA table of 10 % breakthrough times.
  private static final double BED_TERM_MIN = 0.0855;
  // ln((C₀ − Cb)/Cb) at a breakthrough Cb of 10 % of C₀.
  private static final double LOG_BREAKTHROUGH = Math.log(9);

  private WheelerJonas() {}

  /**
   * What the estimate needs to know of a substance.
   *
   * @param molarMass g/mol
   * @param density of the liquid, g/cm³
   * @param refractiveIndex of the liquid, above 1
   * @param kPa20 vapour pressure at 20 °C, kPa
   * @param kPa25 vapour pressure at 25 °C, kPa
   */
  public record Vapour(
      double molarMass, double density, double refractiveIndex, double kPa20, double kPa25) {

    /** Molar polarisation Pe, cm³/mol. */
    public double polarisation() {
      double n2 = refractiveIndex * refractiveIndex;
      return (n2 - 1) / (n2 + 2) * molarMass / density;
    }

    /** Vapour pressure at 22 °C, kPa: ln p runs straight in 1/T. */
    public double kPa() {
      double share = (1 / KELVIN - 1 / KELVIN_20) / (1 / KELVIN_25 - 1 / KELVIN_20);
      return kPa20 * Math.pow(kPa25 / kPa20, share);
    }

    /** The most that air of 22 °C can hold, ppm. */
    public double saturationPpm() {
      return kPa() / ATMOSPHERE_KPA / PER_MILLION;
    }
  }

  /**
   * Minutes of life, 0 where the bed is too small for the flow.
   *
   * <p>The capacity's formula lets the life pass a peak far below any working concentration; below
   * the peak its life is kept, so that thinner air never shortens it.
   */
  public static double life(Vapour vapour, CartridgeUse use) {
    double ppm = Math.max(use.ppm(), peakPpm(vapour));
    double gPerCm3 = ppm * PER_MILLION * vapour.molarMass() / CM3_PER_MOL;
    double bed =
        use.carbonGrams() / (use.litresPerMin() * CM3_PER_LITRE)
            - BED_G_PER_CM3 / ratePerMin(vapour) * LOG_BREAKTHROUGH;
    return Math.max(0, capacity(vapour, ppm) / gPerCm3 * bed) * use.humidityFactor();
  }

  /** Equilibrium capacity We, g of vapour per g of carbon. */
  static double capacity(Vapour vapour, double ppm) {
    double log = Math.max(0, Math.log(vapour.saturationPpm() / ppm));
    return MICROPORES_CM3_PER_G * vapour.density() * Math.exp(-steepness(vapour) * log * log);
  }

  /** Overall rate kv, 1/min. */
  static double ratePerMin(Vapour vapour) {
    double spread = (0.063 - 0.0055 * LOG_BREAKTHROUGH) / vapour.polarisation();
    return 1 / (BED_TERM_MIN * (0.000825 + spread));
  }

  private static double steepness(Vapour vapour) {
    double energy = CALORIES_PER_MOL_KELVIN * KELVIN;
    return AFFINITY
        * MICROPORES_CM3_PER_G
        * Math.pow(vapour.polarisation(), AFFINITY_POWER)
        * energy
        * energy;
  }

  /** Where {@code We/C₀} is greatest: {@code 2k·ln(psat/p) = 1}, k the steepness. */
  private static double peakPpm(Vapour vapour) {
    return vapour.saturationPpm() * Math.exp(-1 / (2 * steepness(vapour)));
  }
}
