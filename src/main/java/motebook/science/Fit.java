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
  private static final double FAR = 3;

  /** Whether it lies so far off, beyond three deviations, that one of the two must be wrong. */
  public boolean disagrees(Observation observation) {
    return Math.abs(z(observation)) > FAR;
  }

  /**
   * How many standard deviations the observation lies above what was predicted without it; for a
   * result below detection 0 unless its limit of detection lies below the prediction.
   */
  public double z(Observation observation) {
    double z = (observation.log() - without) / Math.sqrt(withoutVariance + observation.variance());
    return observation.below() ? Math.min(0, z) : z;
  }
}
