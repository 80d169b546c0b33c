package motebook.science;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The named parts of the log variance of something lognormal. Parts of equal names are one part,
 * which two things share; what was learned of parts hangs together and is given as loadings on
 * independent standard normals, in rows that are named likewise.
 */
public final class Doubts {
  /** None at all. */
  public static final Doubts NONE = new Doubts(Map.of());

  final String[] names;
  final double[] parts;
  private final SortedMap<String, double[]> rows;
  private final double variance;
  private final double expected;

  /** Parts by their names, of which nothing was learned; variances ≥ 0. */
  public Doubts(Map<String, Double> variances) {
    this(inOrder(variances), new TreeMap<>());
  }

  /**
   * Parts of both kinds.
   *
   * @param variances by the name of each part
   * @param loadings rows of loadings by the name of each row of normals
   */
  Doubts(Map<String, Double> variances, Map<String, double[]> loadings) {
    this(inOrder(variances), new TreeMap<>(loadings));
  }

  // In the order of the names, so that sums come out the same to the last digit each time.
  private static SortedMap<String, Double> inOrder(Map<String, Double> variances) {
    return new TreeMap<>(variances);
  }

  private Doubts(SortedMap<String, Double> variances, SortedMap<String, double[]> rows) {
    this(
        variances.keySet().toArray(String[]::new),
        variances.values().stream().mapToDouble(Double::doubleValue).toArray(),
        rows);
  }

  private Doubts(String[] names, double[] parts, SortedMap<String, double[]> rows) {
    this.names = names;
    this.parts = parts;
    this.rows = rows;
    double sum = 0;
    for (double part : parts) {
      sum += part;
    }
    for (double[] row : rows.values()) {
      for (double ell : row) {
        sum += ell * ell;
      }
    }
    variance = sum;
    expected = Math.exp(sum / 2);
  }

  /** The same and one more part. */
  public Doubts and(String name, double ofPart) {
    String[] moreNames = Arrays.copyOf(names, names.length + 1);
    double[] moreParts = Arrays.copyOf(parts, parts.length + 1);
    moreNames[names.length] = name;
    moreParts[parts.length] = ofPart;
    return new Doubts(moreNames, moreParts, rows);
  }

  /** The same without a part of which nothing was learned. */
  public Doubts without(String name) {
    Map<String, Double> left = variances();
    left.remove(name);
    return new Doubts(left, rows);
  }

  /** The same with what became of one part in the place of the part. */
  public Doubts and(Part learned) {
    SortedMap<String, double[]> more = new TreeMap<>(rows);
    learned.rows().forEach((name, row) -> more.merge(name, row, Doubts::sum));
    return new Doubts(names, parts, more);
  }

  static double[] sum(double[] one, double[] other) {
    double[] sum = one.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other[i];
    }
    return sum;
  }

  /** Log variance in all. */
  public double variance() {
    return variance;
  }

  /** The mean of what has these doubts as a multiple of its median, {@code e^(σ²/2)}. */
  public double expected() {
    return expected;
  }

  /** The variances of the parts of which nothing was learned, by their names. */
  public Map<String, Double> variances() {
    Map<String, Double> map = new HashMap<>();
    for (int i = 0; i < names.length; i++) {
      map.put(names[i], parts[i]);
    }
    return map;
  }

  /** Rows of loadings on independent standard normals, by the name of each row. */
  SortedMap<String, double[]> rows() {
    return rows;
  }
}
