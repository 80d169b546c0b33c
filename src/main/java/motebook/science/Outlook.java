package motebook.science;

import java.util.Optional;

/**
 * What is thought of some sources at once, as joint normals.
 *
 * @param means middle of what the parts add to the logarithm of each
 * @param covariance of the logarithms
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, written once
record Outlook(double[] means, double[][] covariance) {
  private static final double ROUNDING = 1e-9;

  /** Of the sources at some places, in the order of the places. */
  Outlook at(int[] places) {
    double[] some = new double[places.length];
    double[][] block = new double[places.length][places.length];
    for (int i = 0; i < places.length; i++) {
      some[i] = means[places[i]];
      for (int j = 0; j < places.length; j++) {
        block[i][j] = covariance[places[i]][places[j]];
      }
    }
    return new Outlook(some, block);
  }

  /**
   * The same without what one site says: {@code V = (I − ΣQ)⁻¹Σ}, {@code (I − ΣQ)⁻¹(µ − Σr)}; empty
   * where that is no distribution.
   */
  Optional<Outlook> without(Site site) {
    int n = means.length;
    double[][] right = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      System.arraycopy(covariance[i], 0, right[i], 0, n);
      right[i][n] = means[i] - Matrices.dot(covariance[i], site.pull());
    }
    return Matrices.solveIdentityMinus(covariance, site.precision(), right)
        .map(solved -> split(solved, n))
        .filter(Outlook::holds);
  }

  /** Whether its covariance is one, but for rounding. */
  private boolean holds() {
    double[][] raised = new double[means.length][];
    for (int i = 0; i < raised.length; i++) {
      raised[i] = covariance[i].clone();
      raised[i][i] += ROUNDING;
    }
    return Matrices.lower(raised).isPresent();
  }

  private static Outlook split(double[][] solved, int n) {
    double[] middle = new double[n];
    double[][] spread = new double[n][n];
    for (int i = 0; i < n; i++) {
      middle[i] = solved[i][n];
      for (int j = 0; j < n; j++) {
        spread[i][j] = (solved[i][j] + solved[j][i]) / 2;
      }
    }
    return new Outlook(middle, spread);
  }
}
