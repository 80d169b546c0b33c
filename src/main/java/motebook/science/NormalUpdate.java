package motebook.science;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The exact update of standard normal parts by observations that are straight lines in them.
 *
 * <p>With {@code z = Hc·c + Ho·o + error}, each row divided by the deviation of its error, the own
 * parts of a group are first taken into its error, {@code W = I + Ho·Hoᵀ}; the common parts then
 * have the precision {@code I + Σ HcᵀW⁻¹Hc}. Given them, what rests on the own parts as o has the
 * middle {@code qᵀW⁻¹(z − Hc·c)} and the variance {@code oᵀo − qᵀW⁻¹q} with {@code q = Ho·o}. So
 * the cost grows with the number of observations, not with its cube, and a group's few rows are all
 * that is ever inverted.
 */
final class NormalUpdate {
  private static final double SYMMETRY = 1e-9;

  private final double[] mean;
  private final double[][] root;
  private final List<Rows> groups;

  /** A group's lines with every row divided by the deviation of its error. */
  private static final class Rows {
    private final double[][] common;
    private final double[][] own;
    private final double[][] whitener;
    private final double[][] whitened;
    private final double[] whitenedValues;

    Rows(ObservedGroup group, int commonParts, List<Line> lines, List<Target> targets) {
      int rows = lines.size();
      common = new double[rows][commonParts];
      own = new double[rows][group.own().size()];
      double[] values = new double[rows];
      for (int i = 0; i < rows; i++) {
        double weight = 1 / Math.sqrt(targets.get(i).variance());
        List<Slope> slopes = group.slopes(i);
        for (int s = 0; s < slopes.size(); s++) {
          slopes.get(s).addTo(common[i], own[i], weight * lines.get(i).weights()[s]);
        }
        values[i] = weight * (targets.get(i).log() - lines.get(i).level());
      }
      whitener = rows == 0 ? new double[0][0] : inverseLower(outer());
      whitened = new double[rows][commonParts];
      whitenedValues = new double[rows];
      for (int i = 0; i < rows; i++) {
        for (int j = 0; j <= i; j++) {
          axpy(whitener[i][j], common[j], whitened[i]);
          whitenedValues[i] += whitener[i][j] * values[j];
        }
      }
    }

    /** {@code I + Ho·Hoᵀ}. */
    private double[][] outer() {
      double[][] outer = new double[own.length][own.length];
      for (int i = 0; i < own.length; i++) {
        for (int j = 0; j < own.length; j++) {
          outer[i][j] = dot(own[i], own[j]) + (i == j ? 1 : 0);
        }
      }
      return outer;
    }

    /** {@code L⁻¹·q} with {@code L·Lᵀ = W}: what the rows have of a slope's own parts. */
    double[] drawn(Slope slope) {
      double[] drawn = new double[whitener.length];
      for (int row = 0; row < drawn.length; row++) {
        double q = 0;
        for (int i = 0; i < slope.own().length; i++) {
          q += own[row][slope.own()[i]] * slope.byOwn()[i];
        }
        for (int i = row; i < drawn.length; i++) {
          drawn[i] += whitener[i][row] * q;
        }
      }
      return drawn;
    }
  }

  private NormalUpdate(double[] mean, double[][] root, List<Rows> groups) {
    this.mean = mean;
    this.root = root;
    this.groups = groups;
  }

  /** No observation yet. */
  static NormalUpdate none(Parts common, List<ObservedGroup> groups) {
    double[][] identity = new double[common.size()][common.size()];
    for (int i = 0; i < identity.length; i++) {
      identity[i][i] = 1;
    }
    return new NormalUpdate(
        new double[identity.length],
        identity,
        groups.stream()
            .map(group -> new Rows(group, common.size(), List.of(), List.of()))
            .toList());
  }

  /**
   * The update.
   *
   * @param lines of the observations of each group
   * @param targets what each observation of each group draws to
   */
  static NormalUpdate of(
      Parts common,
      List<ObservedGroup> groups,
      List<List<Line>> lines,
      List<List<Target>> targets) {
    int size = common.size();
    double[][] precision = new double[size][size];
    double[] pull = new double[size];
    List<Rows> rows = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Rows group = new Rows(groups.get(g), size, lines.get(g), targets.get(g));
      rows.add(group);
      for (int row = 0; row < group.whitenedValues.length; row++) {
        add(group.whitened[row], group.whitenedValues[row], precision, pull);
      }
    }
    for (int i = 0; i < size; i++) {
      precision[i][i] += 1;
    }
    double[][] root = size == 0 ? precision : transposed(inverseLower(precision));
    double[] turned = new double[size];
    for (int i = 0; i < size; i++) {
      axpy(pull[i], root[i], turned);
    }
    double[] mean = new double[size];
    for (int i = 0; i < size; i++) {
      mean[i] = dot(root[i], turned);
    }
    return new NormalUpdate(mean, root, rows);
  }

  private static void add(double[] row, double value, double[][] precision, double[] pull) {
    for (int i = 0; i < row.length; i++) {
      if (row[i] != 0) { // a sample has few of all parts
        axpy(row[i], row, precision[i]);
      }
    }
    axpy(value, row, pull);
  }

  /** {@code L⁻¹} with {@code L·Lᵀ} a symmetric matrix not below the identity. */
  private static double[][] inverseLower(double[][] symmetric) {
    int n = symmetric.length;
    if (n == 1) {
      return new double[][] {{1 / Math.sqrt(symmetric[0][0])}};
    }
    RealMatrix matrix = new Array2DRowRealMatrix(symmetric, false);
    double[][] lower = new CholeskyDecomposition(matrix, SYMMETRY, 0).getL().getData();
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

  private static double[][] transposed(double[][] square) {
    return new Array2DRowRealMatrix(square, false).transpose().getData();
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static void axpy(double factor, double[] of, double[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * of[i];
    }
  }

  /** What is thought of some sources of a group. */
  Outlook outlook(int group, List<Slope> slopes) {
    Rows rows = groups.get(group);
    double[][] turned = turned(rows);
    int n = slopes.size();
    double[][] drawn = new double[n][];
    double[][] onCommon = new double[n][];
    double[] means = new double[n];
    for (int s = 0; s < n; s++) {
      drawn[s] = rows.drawn(slopes.get(s));
      onCommon[s] = onCommon(slopes.get(s), drawn[s], turned);
      means[s] = mean(rows, slopes.get(s), drawn[s]);
    }
    double[][] covariance = new double[n][n];
    for (int s = 0; s < n; s++) {
      for (int t = 0; t <= s; t++) {
        covariance[s][t] =
            dot(onCommon[s], onCommon[t])
                + slopes.get(s).ownDot(slopes.get(t))
                - dot(drawn[s], drawn[t]);
        covariance[t][s] = covariance[s][t];
      }
    }
    return new Outlook(means, covariance);
  }

  /** What each row of a group rests on of the independent normals under the common parts. */
  private double[][] turned(Rows rows) {
    double[][] turned = new double[rows.whitened.length][mean.length];
    for (int row = 0; row < turned.length; row++) {
      for (int i = 0; i < mean.length; i++) {
        if (rows.whitened[row][i] != 0) { // a sample has few of all parts
          axpy(rows.whitened[row][i], root[i], turned[row]);
        }
      }
    }
    return turned;
  }

  /** What a source rests on of them, once its own parts follow the common ones. */
  private double[] onCommon(Slope slope, double[] drawn, double[][] turned) {
    double[] onCommon = new double[mean.length];
    for (int i = 0; i < slope.common().length; i++) {
      axpy(slope.byCommon()[i], root[slope.common()[i]], onCommon);
    }
    for (int row = 0; row < drawn.length; row++) {
      if (drawn[row] != 0) {
        axpy(-drawn[row], turned[row], onCommon);
      }
    }
    return onCommon;
  }

  private double mean(Rows rows, Slope slope, double[] drawn) {
    double sum = 0;
    for (int i = 0; i < slope.common().length; i++) {
      sum += slope.byCommon()[i] * mean[slope.common()[i]];
    }
    for (int row = 0; row < drawn.length; row++) {
      if (drawn[row] != 0) {
        sum += drawn[row] * (rows.whitenedValues[row] - dot(rows.whitened[row], mean));
      }
    }
    return sum;
  }

  /** Middle of something that changes with the common parts and a group's own. */
  double mean(int group, Slope slope) {
    Rows rows = groups.get(group);
    return mean(rows, slope, rows.drawn(slope));
  }

  /** What it rests on of the independent standard normals of all groups. */
  double[] onCommon(int group, Slope slope) {
    Rows rows = groups.get(group);
    return onCommon(slope, rows.drawn(slope), turned(rows));
  }

  /**
   * What it rests on of independent standard normals of the group alone: by a root of {@code I −
   * HoᵀW⁻¹Ho}, which is the inverse of {@code I + HoᵀHo}.
   */
  double[] onOwn(int group, Slope slope) {
    Rows rows = groups.get(group);
    int size = rows.own.length == 0 ? 0 : rows.own[0].length;
    double[][] precision = new double[size][size];
    for (double[] row : rows.own) {
      add(row, 0, precision, new double[size]);
    }
    for (int i = 0; i < size; i++) {
      precision[i][i] += 1;
    }
    double[] loadings = new double[size];
    double[][] inverse = size == 0 ? precision : inverseLower(precision);
    for (int i = 0; i < slope.own().length; i++) {
      for (int j = 0; j < size; j++) {
        loadings[j] += slope.byOwn()[i] * inverse[j][slope.own()[i]];
      }
    }
    return loadings;
  }
}
