package motebook.science;

/**
 * The sum of an observation's sources as a lognormal, by {@link LognormalSum}'s formula: {@code Eᵢ
 * = e^(µᵢ+σᵢ²/2)}, {@code σ² = Σ wᵢwⱼ cov(i,j)} with each source's share {@code wᵢ = Eᵢ/ΣE} of the
 * expected sum, and {@code µ = ln ΣE − σ²/2}.
 */
final class Forecast {
  private final double[] weights;
  private final double log;
  private final double variance;

  /**
   * A sum.
   *
   * @param logs middle of each source's logarithm
   * @param covariance of the logarithms
   */
  Forecast(double[] logs, double[][] covariance) {
    weights = new double[logs.length];
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logs.length; i++) {
      weights[i] = logs[i] + covariance[i][i] / 2;
      highest = Math.max(highest, weights[i]);
    }
    double sum = 0;
    for (int i = 0; i < logs.length; i++) {
      weights[i] = Math.exp(weights[i] - highest);
      sum += weights[i];
    }
    for (int i = 0; i < logs.length; i++) {
      weights[i] /= sum;
    }
    variance = quadratic(covariance);
    log = highest + Math.log(sum) - variance / 2;
  }

  private double quadratic(double[][] covariance) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < weights.length; j++) {
        sum += weights[i] * weights[j] * covariance[i][j];
      }
    }
    return sum;
  }

  /** A source's share of the expected sum. */
  double weight(int source) {
    return weights[source];
  }

  /** Logarithm of the sum's median. */
  double log() {
    return log;
  }

  /** Variance of the sum's logarithm. */
  double variance() {
    return variance;
  }
}
