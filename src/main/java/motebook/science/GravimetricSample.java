package motebook.science;

/**
 * A filter weighed before and after, {@code C = [(W₂−W₁) − (B₂−B₁)]·1000/V}.
 *
 * <p>A gain below the limit of detection is kept as "below": the concentration is then the one at
 * that limit, an upper bound, never zero and never the meaningless difference itself.
 *
 * @param netMg gain of the filter less the gain of the blank, mg; may be negative
 * @param litres air drawn, above 0
 * @param detectionLimitMg least mass that can be told, mg; 0: none known
 */
public record GravimetricSample(double netMg, double litres, double detectionLimitMg) {
  private static final double LITRES_PER_M3 = 1000;

  public GravimetricSample {
    if (!(litres > 0) || !(detectionLimitMg >= 0) || Double.isNaN(netMg)) {
      throw new IllegalArgumentException(netMg + " mg in " + litres + " L");
    }
  }

  /** Whether the gain is below the limit of detection. */
  public boolean belowDetection() {
    return netMg < detectionLimitMg;
  }

  /** The concentration; where it is below detection, the one that it is below. */
  public double mgPerM3() {
    return Math.max(netMg, detectionLimitMg) * LITRES_PER_M3 / litres;
  }
}
