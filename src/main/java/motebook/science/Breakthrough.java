package motebook.science;

import java.util.List;

/**
 * Printed times to 10 % breakthrough, read between their concentrations log–log.
 *
 * <p>Below the least printed concentration its time is kept; above the greatest there is none.
 * Elsewhere than at the printed flow and carbon the life is in proportion to {@code carbon/flow}.
 *
 * @param ppm the printed concentrations, rising
 * @param minutes the printed times, falling, one for each
 */
public record Breakthrough(List<Double> ppm, List<Double> minutes) {
  public Breakthrough {
    ppm = List.copyOf(ppm);
    minutes = List.copyOf(minutes);
    if (ppm.isEmpty() || ppm.size() != minutes.size()) {
      throw new IllegalArgumentException("a time for each concentration");
    }
  }

  /** Minutes of life at most 1000 ppm, which is where the table and the elements end. */
  public double life(CartridgeUse use) {
    return printed(use.ppm())
        * (CartridgeUse.TABLE_LITRES_PER_MIN / use.litresPerMin())
        * (use.carbonGrams() / CartridgeUse.TABLE_CARBON_GRAMS)
        * use.humidityFactor();
  }

  private double printed(double at) {
    int next = 0;
    while (next < ppm.size() && ppm.get(next) <= at) {
      next++;
    }
    if (next == 0 || next == ppm.size()) {
      return minutes.get(Math.max(0, next - 1));
    }
    double from = ppm.get(next - 1);
    double share = Math.log(at / from) / Math.log(ppm.get(next) / from);
    double time = minutes.get(next - 1);
    return time * Math.pow(minutes.get(next) / time, share);
  }
}
