package motebook.science;

import java.util.Arrays;

/**
 * Measured results taken as draws from a lognormal distribution.
 *
 * @param n how many speak for the spread, at least 2
 * @param mean plain mean
 * @param logMean mean of the natural logarithms
 * @param logSd standard deviation of the natural logarithms (divisor n − 1)
 */
public record LognormalSample(int n, double mean, double logMean, double logSd) {
  private static final double Z95 = 1.645;
  // Logarithms of one figure differ in their last digits only.
  private static final double EQUAL = 1e-12;

  /**
   * The sample of some results.
   *
   * @param results each above 0, two or more
   * @throws IllegalArgumentException otherwise
   */
  public static LognormalSample of(double... results) {
    if (results.length < 2 || Arrays.stream(results).anyMatch(x -> !(x > 0))) {
      throw new IllegalArgumentException("needs two results or more, each above 0");
    }
    int n = results.length;
    double mean = Arrays.stream(results).average().orElseThrow();
    double logMean = Arrays.stream(results).map(Math::log).average().orElseThrow();
    double squares = Arrays.stream(results).map(x -> square(Math.log(x) - logMean)).sum();
    return new LognormalSample(n, mean, logMean, Math.sqrt(squares / (n - 1)));
  }

  /** Whether the results differ at all; equal ones say nothing of how others scatter. */
  public boolean spreads() {
    return logSd > EQUAL;
  }

  /** Geometric mean. */
  public double gm() {
    return Math.exp(logMean);
  }

  /** Geometric standard deviation, ≥ 1. */
  public double gsd() {
    return Math.exp(logSd);
  }

  /** Mean of the lognormal distribution that has the sample's figures, {@code GM·e^(ln²GSD/2)}. */
  public double lognormalMean() {
    return Math.exp(logMean + square(logSd) / 2);
  }

  /**
   * The minimum-variance unbiased estimate of the mean, {@code GM·ψ(ln²GSD/2)} with {@code ψ(t) = 1
   * + (n−1)t/n + (n−1)³t²/(n²(n+1)·2!) + (n−1)⁵t³/(n³(n+1)(n+3)·3!) + …} (Finney 1941, from
   * memory).
   */
  public double unbiasedMean() {
    double t = square(logSd) / 2;
    double term = (n - 1) * t / n;
    double sum = 1 + term;
    for (int i = 2; term > 1e-17 * sum; i++) {
      term *= square(n - 1.0) * t / (n * (n + 2.0 * i - 3) * i);
      sum += term;
    }
    return gm() * sum;
  }

  /** 95th percentile, {@code GM·GSD^1.645}. */
  public double p95() {
    return Math.exp(logMean + Z95 * logSd);
  }

  /** Share over a limit above 0, {@code 1 − Φ((ln L − ln GM)/ln GSD)}, 0 to 1. */
  public double shareOver(double limit) {
    double distance = Math.log(limit) - logMean;
    return logSd == 0 ? (distance < 0 ? 1 : 0) : Normal.above(distance / logSd);
  }

  /**
   * The share over a limit that the true share does not exceed with some confidence, 0 to 1: exact,
   * from the non-central t.
   *
   * @param limit above 0
   * @param confidence above 0, below 1
   */
  public double shareOver(double limit, double confidence) {
    return logSd == 0
        ? shareOver(limit)
        : Normal.above(
            ToleranceFactor.leastDistance((Math.log(limit) - logMean) / logSd, n, confidence));
  }

  /**
   * Upper limit for the 95th percentile, {@code exp(ȳ + K·s)}.
   *
   * @param confidence above 0, below 1
   */
  public double upperToleranceLimit(double confidence) {
    return logSd == 0
        ? gm()
        : Math.exp(logMean + ToleranceFactor.of95thPercentile(n, confidence) * logSd);
  }

  private static double square(double x) {
    return x * x;
  }
}
