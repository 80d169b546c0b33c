package motebook.science;

/**
 * The sum of an observation's sources as a lognormal, by {@link LognormalSum}'s formula: {@code Eᵢ
 * = e^(µᵢ+σᵢ²/2)}, {@code σ² = Σ wᵢwⱼ cov(i,j)} with each source's share {@code wᵢ = Eᵢ/ΣE} of the
 * expected sum, and {@code µ = ln ΣE − σ²/2}.
 *
 * @param log logarithm of the sum's median
 * @param variance of the sum's logarithm
 */
record Forecast(double log, double variance) {
  /**
   * A sum.
   *
   * @param logs middle of each source's logarithm
   * @param covariance of the logarithms
   */
  static Forecast of(double[] logs, double[][] covariance) {
    double[] expected = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      expected[i] = logs[i] + covariance[i][i] / 2;
    }
    double whole = logSum(expected);
    double variance = 0;
    for (int i = 0; i < logs.length; i++) {
      for (int j = 0; j < logs.length; j++) {
        variance += Math.exp(expected[i] + expected[j] - 2 * whole) * covariance[i][j];
      }
    }
    return new Forecast(whole - variance / 2, variance);
  }

  /** {@code ln Σ eˣ}. */
  static double logSum(double[] logs) {
    double highest = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      highest = Math.max(highest, log);
    }
    double sum = 0;
    for (double log : logs) {
      sum += Math.exp(log - highest);
    }
    return highest + Math.log(sum);
  }
}
