package motebook.science;

import java.util.HashMap;
import java.util.Map;

/**
 * What a named part of a doubt became once observations spoke.
 *
 * @param shift its likeliest value, natural logarithm; it was 0
 * @param rows its loadings on independent standard normals, in named rows
 */
public record Part(double shift, Map<String, double[]> rows) {
  public Part {
    rows = Map.copyOf(rows);
  }

  /** Its loadings by the name of each normal; its variance is the sum of their squares. */
  public Map<String, Double> loadings() {
    Map<String, Double> loadings = new HashMap<>();
    rows.forEach(
        (name, row) -> {
          for (int i = 0; i < row.length; i++) {
            loadings.put(name + "/" + i, row[i]);
          }
        });
    return loadings;
  }

  /** Its variance. */
  public double variance() {
    double sum = 0;
    for (double[] row : rows.values()) {
      sum += Matrices.dot(row, row);
    }
    return sum;
  }
}
