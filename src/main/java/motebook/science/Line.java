package motebook.science;

/**
 * A prediction as a straight line in the parts: a level and a share of each source's slope.
 *
 * @param level where all parts are 0
 * @param weights of the sources, in their order
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, written once
record Line(double level, double[] weights) {

  /** Middle of the line where the sources have some middles. */
  double mean(double[] means) {
    double sum = level;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * means[i];
    }
    return sum;
  }

  /** Covariance of the line with a source. */
  double covariance(double[][] covariance, int source) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * covariance[i][source];
    }
    return sum;
  }

  /** Variance of the line. */
  double variance(double[][] covariance) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * covariance(covariance, i);
    }
    return sum;
  }
}
