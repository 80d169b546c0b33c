package motebook.science;

/**
 * How an observation agrees with all the rest, on the log scale.
 *
 * @param predicted by everything, the observation included
 * @param variance of that
 * @param without predicted by everything but the observation itself
 * @param withoutVariance of that
 */
public record Fit(double predicted, double variance, double without, double withoutVariance) {

  /**
   * How many standard deviations the observation lies above what was predicted without it; for a
   * result below detection 0 unless its limit of detection lies below the prediction.
   */
  public double z(Observation observation) {
    double z = (observation.log() - without) / Math.sqrt(withoutVariance + observation.variance());
    return observation.below() ? Math.min(0, z) : z;
  }
}
