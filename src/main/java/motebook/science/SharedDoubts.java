package motebook.science;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The doubts of several lognormal things, made ready for sums of them by {@link LognormalSum}'s
 * formula: which parts they share is looked up once, however many sums are asked for.
 */
public final class SharedDoubts {
  private final double[] factors;
  private final int[][] parts;
  private final double[] variances;
  private final List<Row> rows = new ArrayList<>();

  /** Loadings on the same independent standard normals, of each thing that has any. */
  private record Row(List<Integer> things, List<double[]> loadings) {
    Row() {
      this(new ArrayList<>(), new ArrayList<>());
    }

    double variance(double[] expected) {
      double[] sums = new double[loadings.get(0).length];
      for (int i = 0; i < things.size(); i++) {
        add(expected[things.get(i)], loadings.get(i), sums);
      }
      double sum = 0;
      for (double normal : sums) {
        sum += normal * normal;
      }
      return sum;
    }

    private static void add(double factor, double[] of, double[] to) {
      if (factor > 0) {
        for (int i = 0; i < to.length; i++) {
          to[i] += factor * of[i];
        }
      }
    }
  }

  /** Things of these doubts, in their order; parts of equal names are one part. */
  public SharedDoubts(List<Doubts> things) {
    factors = new double[things.size()];
    parts = new int[things.size()][];
    Map<String, Integer> places = new HashMap<>();
    Map<String, Row> byName = new HashMap<>();
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < factors.length; i++) {
      Doubts doubts = things.get(i);
      factors[i] = doubts.expected();
      parts[i] = places(doubts, places, found);
      gather(i, doubts, byName);
    }
    variances = found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static int[] places(Doubts doubts, Map<String, Integer> places, List<Double> found) {
    int[] at = new int[doubts.names.length];
    for (int i = 0; i < at.length; i++) {
      Integer known = places.putIfAbsent(doubts.names[i], found.size());
      at[i] = known == null ? found.size() : known;
      if (known == null) {
        found.add(doubts.parts[i]);
      }
    }
    return at;
  }

  private void gather(int thing, Doubts doubts, Map<String, Row> byName) {
    doubts
        .rows()
        .forEach(
            (name, loadings) -> {
              Row row = byName.get(name);
              if (row == null) {
                row = new Row();
                byName.put(name, row);
                rows.add(row);
              }
              row.things.add(thing);
              row.loadings.add(loadings);
            });
  }

  /**
   * The sum of the things; nothing where they are none or all zero.
   *
   * @param typical the median of each, ≥ 0, in the order of the things
   */
  public Estimate sum(double[] typical) {
    double[] expected = new double[typical.length];
    double sum = 0;
    double all = 0;
    for (int i = 0; i < typical.length; i++) {
      expected[i] = typical[i] * factors[i];
      sum += typical[i];
      all += expected[i];
    }
    if (all == 0) {
      return Estimate.ZERO;
    }
    double variance = covariance(expected) / (all * all);
    return new Estimate(sum, all * Math.exp(-variance / 2), Math.sqrt(variance));
  }

  /** Covariance of the logarithms of the things. */
  double[][] covariance() {
    int n = factors.length;
    double[][] covariance = new double[n][n];
    for (int part = 0; part < variances.length; part++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          covariance[i][j] += has(i, part) && has(j, part) ? variances[part] : 0;
        }
      }
    }
    for (Row row : rows) {
      for (int i = 0; i < row.things.size(); i++) {
        for (int j = 0; j < row.things.size(); j++) {
          covariance[row.things.get(i)][row.things.get(j)] +=
              Matrices.dot(row.loadings.get(i), row.loadings.get(j));
        }
      }
    }
    return covariance;
  }

  private boolean has(int thing, int part) {
    for (int at : parts[thing]) {
      if (at == part) {
        return true;
      }
    }
    return false;
  }

  private double covariance(double[] expected) {
    double[] sums = new double[variances.length];
    for (int i = 0; i < expected.length; i++) {
      for (int part : parts[i]) {
        sums[part] += expected[i];
      }
    }
    double sum = 0;
    for (int part = 0; part < sums.length; part++) {
      sum += variances[part] * sums[part] * sums[part];
    }
    for (Row row : rows) {
      sum += row.variance(expected);
    }
    return sum;
  }
}
