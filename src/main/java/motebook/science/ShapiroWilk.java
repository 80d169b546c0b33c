package motebook.science;

import java.util.Arrays;

/**
 * Shapiro and Wilk's test of whether values are drawn from a normal distribution, by Royston's
 * approximation (algorithm AS R94, Applied Statistics 44:547, 1995, from memory).
 *
 * @param w the statistic, above 0, at most 1; small speaks against normal
 * @param p chance of a w as small from a normal distribution
 */
public record ShapiroWilk(double w, double p) {
  /** Fewest values that can be tested. */
  public static final int FEWEST = 3;

  /** Most values that the approximation was made for. */
  public static final int MOST = 5000;

  private static final double[] FIRST = {0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056};
  private static final double[] SECOND = {0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633};
  private static final double[] SMALL_GAMMA = {-2.273, 0.459};
  private static final double[] SMALL_MEAN = {0.544, -0.39978, 0.025054, -6.714e-4};
  private static final double[] SMALL_SD = {1.3822, -0.77857, 0.062767, -0.0020322};
  private static final double[] LARGE_MEAN = {-1.5861, -0.31082, -0.083751, 0.0038915};
  private static final double[] LARGE_SD = {-0.4803, -0.082676, 0.0030302};
  private static final int SMALL = 11;

  /**
   * Tests some values.
   *
   * @param values 3 to 5000 that are not all equal
   * @throws IllegalArgumentException otherwise
   */
  public static ShapiroWilk of(double... values) {
    double[] x = values.clone();
    Arrays.sort(x);
    int n = x.length;
    if (n < FEWEST || n > MOST || !(x[n - 1] > x[0])) {
      throw new IllegalArgumentException("needs 3 to 5000 values that are not all equal");
    }
    double w = statistic(x, weights(n));
    return new ShapiroWilk(w, n == FEWEST ? ofThree(w) : probability(w, n));
  }

  private static double statistic(double[] x, double[] weights) {
    double mean = Arrays.stream(x).average().orElseThrow();
    double squares = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
    double spread = 0;
    for (int i = 0; i < weights.length; i++) {
      spread += weights[i] * (x[x.length - 1 - i] - x[i]);
    }
    return Math.min(1, spread * spread / squares);
  }

  /** Weights of the differences between largest and smallest, second largest and smallest … */
  private static double[] weights(int n) {
    double[] scores = new double[n / 2];
    Arrays.setAll(scores, i -> -Normal.quantile((i + 1 - 0.375) / (n + 0.25)));
    if (n == FEWEST) {
      return new double[] {Math.sqrt(0.5)};
    }
    double squares = 2 * Arrays.stream(scores).map(m -> m * m).sum();
    double rootN = 1 / Math.sqrt(n);
    int own = n > 5 ? 2 : 1;
    double[] weights = new double[scores.length];
    weights[0] = polynomial(FIRST, rootN) + scores[0] / Math.sqrt(squares);
    if (own == 2) {
      weights[1] = polynomial(SECOND, rootN) + scores[1] / Math.sqrt(squares);
    }
    double rest = 1;
    for (int i = 0; i < own; i++) {
      squares -= 2 * scores[i] * scores[i];
      rest -= 2 * weights[i] * weights[i];
    }
    for (int i = own; i < weights.length; i++) {
      weights[i] = scores[i] / Math.sqrt(squares / rest);
    }
    return weights;
  }

  private static double ofThree(double w) {
    return Math.max(0, 6 / Math.PI * (Math.asin(Math.sqrt(w)) - Math.asin(Math.sqrt(0.75))));
  }

  private static double probability(double w, int n) {
    double far = Math.log1p(-w);
    if (n > SMALL) {
      double logN = Math.log(n);
      return Normal.above((far - polynomial(LARGE_MEAN, logN)) / sd(LARGE_SD, logN));
    }
    double gamma = polynomial(SMALL_GAMMA, n);
    return far >= gamma
        ? 0
        : Normal.above((-Math.log(gamma - far) - polynomial(SMALL_MEAN, n)) / sd(SMALL_SD, n));
  }

  private static double sd(double[] coefficients, double x) {
    return Math.exp(polynomial(coefficients, x));
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }
}
