package motebook.science;

/**
 * What an observation draws its prediction to, as a normal on the log scale.
 *
 * @param log middle
 * @param variance above 0
 */
record Target(double log, double variance) {
  /** A draw of this variance is none, and keeps the equations finite. */
  static final double WEAKEST = 1e12;

  /**
   * The normal that stands for "the result lies below": expectation propagation (Minka 2001, from
   * memory). Together with what is known without the observation it gives the moments of the exact,
   * truncated distribution.
   *
   * @param observation of a result below detection
   * @param log prediction without this observation
   * @param variance of that prediction
   */
  static Target below(Observation observation, double log, double variance) {
    double whole = observation.variance() + variance;
    double z = (observation.log() - log) / Math.sqrt(whole);
    double ratio = Normal.ratioBelow(z);
    double bend = ratio * (ratio + z) / whole;
    double drawn = (1 - bend * variance) / bend;
    return drawn < WEAKEST
        ? new Target(log - Math.sqrt(whole) / (ratio + z), drawn)
        : new Target(log, WEAKEST);
  }

  /** A prediction with this target's draw taken out of it. */
  Target without(double predicted, double itsVariance) {
    double left = itsVariance * variance / (variance - itsVariance);
    return new Target(predicted + (predicted - log) * itsVariance / (variance - itsVariance), left);
  }
}
