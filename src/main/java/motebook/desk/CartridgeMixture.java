package motebook.desk;

import java.util.Map;
import java.util.OptionalDouble;
import motebook.reference.Solvent;
import motebook.science.CartridgeUse;

/**
 * How much of a cartridge's life a mixture of vapours uses.
 *
 * <p>The mixture is taken as if all of it were the compound that breaks through first: OSHA's
 * respirator change schedules, on mixtures (from memory). That never gives more than the time of
 * any part alone. The tables end at 1000 ppm, where the elements end; thicker air uses a life up in
 * proportion, which is more than any estimator says.
 */
public final class CartridgeMixture {
  private CartridgeMixture() {}

  /**
   * The life against a mixture, min, before any safety fraction; empty where there is no cartridge
   * time: something in it that no organic-vapour element holds, or no estimator.
   *
   * @param ppm of each solvent, above 0; at least one
   */
  public static OptionalDouble minutes(
      Map<Solvent, Double> ppm, double litresPerMin, double humidityPercent, double carbonGrams) {
    double all = ppm.values().stream().mapToDouble(Double::doubleValue).sum();
    double within = Math.min(all, CartridgeUse.MOST_PPM);
    CartridgeUse use = new CartridgeUse(within, litresPerMin, humidityPercent, carbonGrams);
    double least = Double.POSITIVE_INFINITY;
    for (Solvent solvent : ppm.keySet()) {
      var shortest = CartridgeLife.of(solvent, use).shortest();
      if (shortest.isEmpty()) {
        return OptionalDouble.empty();
      }
      least = Math.min(least, shortest.get().minutes());
    }
    return OptionalDouble.of(least * within / all);
  }

  /**
   * The share of a life that some minutes use, 0 or more; 1 where there is no cartridge time.
   *
   * @param minutes worn
   * @param safetyFraction share of the estimated life that counts, above 0 to 1
   */
  public static double share(OptionalDouble life, double minutes, double safetyFraction) {
    return life.isPresent() ? minutes / (life.getAsDouble() * safetyFraction) : 1;
  }
}
