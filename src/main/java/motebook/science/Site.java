package motebook.science;

import java.util.Optional;

/**
 * The normal that stands for an observation in the logarithms of its sources, {@code exp(−½xᵀQx +
 * rᵀx)}.
 *
 * @param precision Q; it need not be positive
 * @param pull r
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, written once
record Site(double[][] precision, double[] pull) {
  private static final double LEAST = 1e-7;

  /** One that says nothing. */
  static Site none(int sources) {
    return new Site(new double[sources][sources], new double[sources]);
  }

  /** Of a figure for one source alone, which is exact. */
  static Site exact(double value, double variance) {
    return new Site(new double[][] {{1 / variance}}, new double[] {value / variance});
  }

  /** What leads from one to the other; empty where either is no distribution. */
  static Optional<Site> between(Outlook without, Outlook with) {
    return precision(with)
        .flatMap(after -> precision(without).map(before -> minus(after, with, before, without)));
  }

  // Two sources may hang together wholly: what is left between them then must not be noise.
  private static Optional<double[][]> precision(Outlook outlook) {
    double[][] raised = new double[outlook.means().length][];
    for (int i = 0; i < raised.length; i++) {
      raised[i] = outlook.covariance()[i].clone();
      raised[i][i] += LEAST;
    }
    return Matrices.lower(raised).map(lower -> Matrices.square(Matrices.inverseRoot(lower)));
  }

  private static Site minus(double[][] after, Outlook with, double[][] before, Outlook without) {
    int n = after.length;
    double[] pull = Matrices.product(after, with.means());
    Matrices.axpy(-1, Matrices.product(before, without.means()), pull);
    double[][] precision = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        precision[i][j] = after[i][j] - before[i][j];
      }
    }
    return new Site(precision, pull);
  }

  /** A share of the way to another. */
  Site towards(Site goal, double share) {
    int n = pull.length;
    Site mixed = none(n);
    for (int i = 0; i < n; i++) {
      mixed.pull[i] = pull[i] + share * (goal.pull[i] - pull[i]);
      for (int j = 0; j < n; j++) {
        mixed.precision[i][j] = precision[i][j] + share * (goal.precision[i][j] - precision[i][j]);
      }
    }
    return mixed;
  }

  /** Logarithm of what it says of some logarithms, but for a constant. */
  double log(double[] x) {
    double sum = Matrices.dot(pull, x);
    for (int i = 0; i < x.length; i++) {
      sum -= x[i] * Matrices.dot(precision[i], x) / 2;
    }
    return sum;
  }
}
