package motebook.science;

import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;

/** What small dense matrices need, as rows of numbers. */
final class Matrices {
  private static final double SYMMETRY = 1e-6;

  private Matrices() {}

  /** The lower root L of a symmetric matrix, {@code L·Lᵀ}; empty where it is not positive. */
  static Optional<double[][]> lower(double[][] symmetric) {
    if (symmetric.length == 0) {
      return Optional.of(symmetric);
    }
    if (symmetric.length == 1) {
      return symmetric[0][0] > 0
          ? Optional.of(new double[][] {{Math.sqrt(symmetric[0][0])}})
          : Optional.empty();
    }
    try {
      return Optional.of(
          new CholeskyDecomposition(new Array2DRowRealMatrix(symmetric, false), SYMMETRY, 0)
              .getL()
              .getData());
    } catch (MathIllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The lower root of a covariance that rounding may have left just short of one. */
  static double[][] lowerOfNearly(double[][] covariance) {
    double[][] raised = new double[covariance.length][];
    for (double more = 1e-10; ; more *= 100) {
      for (int i = 0; i < raised.length; i++) {
        raised[i] = covariance[i].clone();
        raised[i][i] += more;
      }
      Optional<double[][]> lower = lower(raised);
      if (lower.isPresent()) {
        return lower.get();
      }
    }
  }

  /** The inverse of a lower root. */
  static double[][] inverseLower(double[][] lower) {
    int n = lower.length;
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      inverse[i][i] = 1;
      for (int j = 0; j < i; j++) {
        axpy(-lower[i][j], inverse[j], inverse[i]);
      }
      for (int j = 0; j <= i; j++) {
        inverse[i][j] /= lower[i][i];
      }
    }
    return inverse;
  }

  /** {@code L⁻ᵀ} of a lower root L: a root of the inverse of {@code L·Lᵀ}. */
  static double[][] inverseRoot(double[][] lower) {
    double[][] inverse = inverseLower(lower);
    double[][] turned = new double[inverse.length][inverse.length];
    for (int i = 0; i < inverse.length; i++) {
      for (int j = 0; j <= i; j++) {
        turned[j][i] = inverse[i][j];
      }
    }
    return turned;
  }

  /** {@code A·Aᵀ}. */
  static double[][] square(double[][] a) {
    double[][] square = new double[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        square[i][j] = dot(a[i], a[j]);
        square[j][i] = square[i][j];
      }
    }
    return square;
  }

  /** {@code (I − A·B)⁻¹·C}; empty where that has no inverse. */
  static Optional<double[][]> solveIdentityMinus(double[][] a, double[][] b, double[][] c) {
    double[][] left = product(a, b);
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < left.length; j++) {
        left[i][j] = (i == j ? 1 : 0) - left[i][j];
      }
    }
    LUDecomposition parts = new LUDecomposition(new Array2DRowRealMatrix(left, false), 1e-14);
    return parts.getSolver().isNonSingular()
        ? Optional.of(parts.getSolver().solve(new Array2DRowRealMatrix(c, false)).getData())
        : Optional.empty();
  }

  static double[][] product(double[][] a, double[][] b) {
    double[][] product = new double[a.length][b.length == 0 ? 0 : b[0].length];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        if (a[i][k] != 0) { // a source rests on few of all parts
          axpy(a[i][k], b[k], product[i]);
        }
      }
    }
    return product;
  }

  static double[][] transposed(double[][] a, int columns) {
    double[][] turned = new double[columns][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < columns; j++) {
        turned[j][i] = a[i][j];
      }
    }
    return turned;
  }

  static double[] product(double[][] a, double[] x) {
    double[] product = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      product[i] = dot(a[i], x);
    }
    return product;
  }

  static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  static void axpy(double factor, double[] of, double[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * of[i];
    }
  }
}
