package motebook.science;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The exact update of standard normal parts by sites that are normal in their sources.
 *
 * <p>A group's sources are {@code x = Hc·c + Ho·o}, its sites together {@code exp(−½xᵀQx + rᵀx)}.
 * Given the common parts c, its own parts o have the precision {@code I + HoᵀQHo} and the middle
 * {@code B·Hoᵀ(r − Q·Hc·c)}, B being its inverse. With the own parts integrated out, the group adds
 * {@code Hcᵀ(Q − Q·Ho·B·Hoᵀ·Q)Hc} to the precision of the common parts and {@code Hcᵀ(r −
 * Q·Ho·B·Hoᵀ·r)} to their pull. So the cost grows with the number of groups, not with its cube.
 */
final class NormalUpdate {
  private final double[] mean;
  private final double[][] root;
  private final List<Group> groups;

  /** A group's own parts once its sites have spoken. */
  private static final class Group {
    private final List<Slope> slopes;
    private final int ownParts;
    private final double[][] onCommon;
    private final double[][] root;
    private final double[][] byCommon;
    private final double[] level;
    private final double[][] precision;
    private final double[] pull;

    private Group(List<Slope> slopes, int commonParts, int ownParts, double[][] root, Site site) {
      this.slopes = slopes;
      this.ownParts = ownParts;
      this.root = root;
      onCommon = slopes.stream().map(slope -> slope.onCommon(commonParts)).toArray(double[][]::new);
      double[][] own = rows(slopes, ownParts);
      double[][] drawn =
          Matrices.product(Matrices.square(root), Matrices.transposed(own, ownParts));
      double[][] taken =
          ownParts == 0 ? new double[own.length][own.length] : Matrices.product(own, drawn);
      double[][] q = site.precision();
      double[][] back = Matrices.product(q, taken);
      precision = Matrices.product(back, q);
      pull = Matrices.product(back, site.pull());
      for (int i = 0; i < pull.length; i++) {
        pull[i] = site.pull()[i] - pull[i];
        for (int j = 0; j < pull.length; j++) {
          precision[i][j] = q[i][j] - precision[i][j];
        }
      }
      byCommon = Matrices.product(Matrices.product(drawn, q), onCommon);
      level = Matrices.product(drawn, site.pull());
    }

    static Optional<Group> of(List<Slope> slopes, int commonParts, int ownParts, Site site) {
      double[][] own = rows(slopes, ownParts);
      double[][] inner =
          Matrices.product(
              Matrices.transposed(own, ownParts), Matrices.product(site.precision(), own));
      for (int i = 0; i < ownParts; i++) {
        inner[i][i] += 1;
        for (int j = 0; j < i; j++) {
          inner[i][j] = (inner[i][j] + inner[j][i]) / 2;
          inner[j][i] = inner[i][j];
        }
      }
      return Matrices.lower(inner)
          .map(Matrices::inverseRoot)
          .map(root -> new Group(slopes, commonParts, ownParts, root, site));
    }

    private static double[][] rows(List<Slope> slopes, int ownParts) {
      return slopes.stream().map(slope -> slope.onOwn(ownParts)).toArray(double[][]::new);
    }

    void addTo(double[][] ofAll, double[] pullOfAll) {
      for (int i = 0; i < pull.length; i++) {
        Slope slope = slopes.get(i);
        for (int a = 0; a < slope.common().length; a++) {
          int row = slope.common()[a];
          pullOfAll[row] += slope.byCommon()[a] * pull[i];
          for (int j = 0; j < pull.length; j++) {
            add(slope.byCommon()[a] * precision[i][j], slopes.get(j), ofAll[row]);
          }
        }
      }
    }

    private static void add(double factor, Slope slope, double[] row) {
      for (int b = 0; b < slope.common().length; b++) {
        row[slope.common()[b]] += factor * slope.byCommon()[b];
      }
    }

    /** What a source rests on of the common parts, once the own ones follow them. */
    double[] onCommon(Slope slope, int commonParts) {
      double[] row = slope.onCommon(commonParts);
      for (int i = 0; i < slope.own().length; i++) {
        Matrices.axpy(-slope.byOwn()[i], byCommon[slope.own()[i]], row);
      }
      return row;
    }

    double level(Slope slope) {
      double sum = 0;
      for (int i = 0; i < slope.own().length; i++) {
        sum += slope.byOwn()[i] * level[slope.own()[i]];
      }
      return sum;
    }

    /** What it rests on of independent standard normals of the group alone. */
    double[] onOwn(Slope slope) {
      double[] loadings = new double[ownParts];
      for (int i = 0; i < slope.own().length; i++) {
        Matrices.axpy(slope.byOwn()[i], root[slope.own()[i]], loadings);
      }
      return loadings;
    }
  }

  private NormalUpdate(double[] mean, double[][] root, List<Group> groups) {
    this.mean = mean;
    this.root = root;
    this.groups = groups;
  }

  /**
   * The update.
   *
   * @param sites what the observations of each group say of its sources together
   * @return nothing where the sites leave no distribution
   */
  static Optional<NormalUpdate> of(Parts common, List<ObservedGroup> groups, List<Site> sites) {
    int size = common.size();
    double[][] precision = new double[size][size];
    double[] pull = new double[size];
    List<Group> updated = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      ObservedGroup group = groups.get(g);
      Optional<Group> next = Group.of(group.slopes(), size, group.own().size(), sites.get(g));
      if (next.isEmpty()) {
        return Optional.empty();
      }
      next.get().addTo(precision, pull);
      updated.add(next.get());
    }
    for (int i = 0; i < size; i++) {
      precision[i][i] += 1;
      for (int j = 0; j < i; j++) {
        precision[i][j] = (precision[i][j] + precision[j][i]) / 2;
        precision[j][i] = precision[i][j];
      }
    }
    return Matrices.lower(precision)
        .map(Matrices::inverseRoot)
        .map(root -> new NormalUpdate(mean(root, pull), root, updated));
  }

  private static double[] mean(double[][] root, double[] pull) {
    double[] turned = new double[pull.length];
    for (int i = 0; i < pull.length; i++) {
      Matrices.axpy(pull[i], root[i], turned);
    }
    return Matrices.product(root, turned);
  }

  /** What is thought of all sources of a group. */
  Outlook outlook(int group) {
    List<Slope> slopes = groups.get(group).slopes;
    double[][] common = new double[slopes.size()][];
    double[][] own = new double[slopes.size()][];
    double[] means = new double[slopes.size()];
    for (int i = 0; i < common.length; i++) {
      common[i] = onCommon(group, slopes.get(i));
      own[i] = onOwn(group, slopes.get(i));
      means[i] = mean(group, slopes.get(i));
    }
    double[][] covariance = Matrices.square(common);
    double[][] more = Matrices.square(own);
    for (int i = 0; i < common.length; i++) {
      Matrices.axpy(1, more[i], covariance[i]);
    }
    return new Outlook(means, covariance);
  }

  /** Middle of something that changes with the common parts and a group's own. */
  double mean(int group, Slope slope) {
    Group own = groups.get(group);
    return own.level(slope) + Matrices.dot(own.onCommon(slope, mean.length), mean);
  }

  /** What it rests on of the independent standard normals of all groups. */
  double[] onCommon(int group, Slope slope) {
    double[] row = groups.get(group).onCommon(slope, mean.length);
    double[] loadings = new double[mean.length];
    for (int i = 0; i < row.length; i++) {
      if (row[i] != 0) { // a source rests on few of all parts
        Matrices.axpy(row[i], root[i], loadings);
      }
    }
    return loadings;
  }

  /** What it rests on of independent standard normals of the group alone. */
  double[] onOwn(int group, Slope slope) {
    return groups.get(group).onOwn(slope);
  }
}
