package motebook.desk;

import java.util.Map;
import java.util.Set;
import motebook.reference.Solvent;

/**
 * A stretch of time over which a gas element was breathed through.
 *
 * @param ppm concentration of each vapour outside the mask, at the upper end of its 90 % range
 * @param unmeasured what was in the air besides and has no figure, such as isocyanate mist
 * @param minutes with the mask on the face, ≥ 0
 * @param litresPerMin what the wearer breathed, above 0
 * @param humidityPercent relative humidity, 0 to 100
 */
public record Worn(
    Map<Solvent, Double> ppm,
    Set<Solvent> unmeasured,
    double minutes,
    double litresPerMin,
    double humidityPercent) {
  public Worn {
    ppm = Map.copyOf(ppm);
    unmeasured = Set.copyOf(unmeasured);
    if (!(minutes >= 0)) {
      throw new IllegalArgumentException("worn for " + minutes + " min");
    }
  }
}
