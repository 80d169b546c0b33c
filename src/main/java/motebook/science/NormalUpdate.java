package motebook.science;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The exact update of standard normal parts by observations that are straight lines in them.
 *
 * <p>With {@code z = Hc·c + Ho·o + error}, the own parts of a group are first taken into its error,
 * {@code W = R + Ho·Hoᵀ}; the common parts then have the precision {@code I + Σ HcᵀW⁻¹Hc} and,
 * given them, the own ones the precision {@code I + HoᵀR⁻¹Ho}. So the cost grows with the number of
 * observations, not with its cube.
 */
final class NormalUpdate {
  private static final double SYMMETRY = 1e-9;

  private final RealVector mean;
  private final RealMatrix root;
  private final List<Own> own;

  /**
   * What one group's own parts became.
   *
   * @param mean their middles
   * @param onCommon loadings on the independent normals that the common parts rest on
   * @param alone loadings on independent normals of the group alone
   */
  private record Own(RealVector mean, RealMatrix onCommon, RealMatrix alone) {}

  /** A group's lines with every row divided by the deviation of its error. */
  private record Scaled(RealMatrix common, RealMatrix own, RealVector values) {}

  private NormalUpdate(RealVector mean, RealMatrix root, List<Own> own) {
    this.mean = mean;
    this.root = root;
    this.own = own;
  }

  /** No observation yet. */
  static NormalUpdate none(Parts common, List<ObservedGroup> groups) {
    int size = common.zero().getDimension();
    List<Own> own = new ArrayList<>();
    for (ObservedGroup group : groups) {
      RealVector zero = group.own().zero();
      int ownSize = zero.getDimension();
      own.add(new Own(zero, new Array2DRowRealMatrix(ownSize, size), identity(ownSize)));
    }
    return new NormalUpdate(common.zero(), identity(size), own);
  }

  /**
   * The update.
   *
   * @param lines of the observations of each group
   * @param targets what each observation of each group draws to
   */
  static NormalUpdate of(List<List<Line>> lines, List<List<Target>> targets) {
    int size = lines.get(0).get(0).slope().common().getDimension();
    RealMatrix precision = identity(size);
    RealVector pull = new ArrayRealVector(size);
    List<Scaled> groups = new ArrayList<>();
    for (int g = 0; g < lines.size(); g++) {
      Scaled group = scaled(lines.get(g), targets.get(g));
      groups.add(group);
      RealMatrix whitener = inverseRoot(plusIdentity(group.own.multiplyTransposed(group.own)));
      RealMatrix whitened = whitener.transposeMultiply(group.common);
      precision = precision.add(whitened.transposeMultiply(whitened));
      pull = pull.add(whitened.preMultiply(whitener.preMultiply(group.values)));
    }
    RealMatrix root = inverseRoot(precision);
    RealVector mean = root.operate(root.preMultiply(pull));
    return new NormalUpdate(
        mean, root, groups.stream().map(group -> own(group, mean, root)).toList());
  }

  private static Own own(Scaled group, RealVector mean, RealMatrix root) {
    RealMatrix alone = inverseRoot(plusIdentity(group.own.transposeMultiply(group.own)));
    RealVector left = group.values.subtract(group.common.operate(mean));
    RealMatrix drawn = group.own.transposeMultiply(group.common.multiply(root));
    return new Own(
        alone.operate(alone.preMultiply(group.own.preMultiply(left))),
        alone.multiply(alone.transposeMultiply(drawn)).scalarMultiply(-1),
        alone);
  }

  private static Scaled scaled(List<Line> lines, List<Target> targets) {
    int rows = lines.size();
    Slope first = lines.get(0).slope();
    RealMatrix common = new Array2DRowRealMatrix(rows, first.common().getDimension());
    RealMatrix own = new Array2DRowRealMatrix(rows, first.own().getDimension());
    RealVector values = new ArrayRealVector(rows);
    for (int i = 0; i < rows; i++) {
      double weight = 1 / Math.sqrt(targets.get(i).variance());
      Slope slope = lines.get(i).slope().times(weight);
      common.setRowVector(i, slope.common());
      own.setRowVector(i, slope.own());
      values.setEntry(i, weight * (targets.get(i).log() - lines.get(i).level()));
    }
    return new Scaled(common, own, values);
  }

  private static RealMatrix identity(int size) {
    return MatrixUtils.createRealIdentityMatrix(size);
  }

  private static RealMatrix plusIdentity(RealMatrix square) {
    return square.add(identity(square.getRowDimension()));
  }

  /** C with {@code C·Cᵀ} the inverse of a symmetric matrix not below the identity. */
  private static RealMatrix inverseRoot(RealMatrix symmetric) {
    RealMatrix lower = new CholeskyDecomposition(symmetric, SYMMETRY, 0).getL();
    int n = lower.getRowDimension();
    RealMatrix root = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      RealVector column = new ArrayRealVector(n);
      column.setEntry(i, 1);
      MatrixUtils.solveLowerTriangularSystem(lower, column);
      root.setRowVector(i, column);
    }
    return root;
  }

  /** Middle of something that changes with the common parts and a group's own. */
  double mean(int group, Slope slope) {
    return slope.dot(new Slope(mean, own.get(group).mean));
  }

  /** What it rests on: independent standard normals, common and of the group alone. */
  Slope loadings(int group, Slope slope) {
    Own of = own.get(group);
    RealVector rests = of.onCommon.preMultiply(slope.own());
    for (int i = 0; i < slope.common().getDimension(); i++) {
      double weight = slope.common().getEntry(i);
      if (weight != 0) { // a source has few of all parts
        rests.combineToSelf(1, weight, root.getRowVector(i));
      }
    }
    return new Slope(rests, of.alone.preMultiply(slope.own()));
  }
}
