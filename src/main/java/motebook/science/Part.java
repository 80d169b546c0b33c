package motebook.science;

import java.util.Map;

/**
 * What a named part of a doubt became once observations spoke.
 *
 * @param shift its likeliest value, natural logarithm; it was 0
 * @param loadings on independent standard normals by name; its variance is the sum of their squares
 */
public record Part(double shift, Map<String, Double> loadings) {
  public Part {
    loadings = Map.copyOf(loadings);
  }
}
