package motebook.science;

import java.util.List;

/** Vapour in air at 25 °C and one atmosphere. */
public final class Vapour {
  /** Volume of a mole of gas at 25 °C and one atmosphere, L. */
  public static final double LITRES_PER_MOL = 24.45;

  private static final double PPM_PER_PERCENT = 1e4;
  private static final double PPM_PER_WHOLE = 1e6;
  private static final double ATMOSPHERE_KPA = 101.325;

  private Vapour() {}

  /**
   * A concentration as parts per million by volume.
   *
   * @param mgPerM3 ≥ 0
   * @param molarMass g/mol, above 0
   */
  public static double ppm(double mgPerM3, double molarMass) {
    return mgPerM3 * LITRES_PER_MOL / molarMass;
  }

  /**
   * The most of a vapour that air at 25 °C holds above a liquid, ppm, by Raoult's law: {@code
   * x·p/P}. What does not evaporate is left out of the mole fractions, which makes it more.
   *
   * @param moleFraction of the vapour's own liquid in the liquid, 0 to 1
   * @param vapourKPa25 vapour pressure of its own liquid at 25 °C, kPa
   */
  public static double saturatedPpm(double moleFraction, double vapourKPa25) {
    return moleFraction * vapourKPa25 / ATMOSPHERE_KPA * PPM_PER_WHOLE;
  }

  /**
   * A vapour and where its mixture with air begins to burn.
   *
   * @param ppm concentration, ≥ 0
   * @param lowerLimitPercent lower flammable limit, % by volume, above 0
   */
  public record Flammable(double ppm, double lowerLimitPercent) {}

  /**
   * Share of the lower flammable limit of a mixture, 1 at the limit: {@code ΣCᵢ/LFLᵢ} (Le
   * Chatelier).
   */
  public static double flammableShare(List<Flammable> mixture) {
    return mixture.stream()
        .mapToDouble(one -> one.ppm() / (one.lowerLimitPercent() * PPM_PER_PERCENT))
        .sum();
  }
}
