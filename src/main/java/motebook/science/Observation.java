package motebook.science;

import java.util.List;
import java.util.Map;

/**
 * A measured mean concentration beside what the sources in it were thought to give.
 *
 * @param group observations that share an own part of a source bear the same name here
 * @param log natural logarithm of the result, or of the figure that it lies below
 * @param variance of the logarithm of the result about the truth, above 0
 * @param below whether the result is only known to lie below
 * @param shares what each source was thought to add to the mean; at least one
 */
public record Observation(
    String group, double log, double variance, boolean below, List<Share> shares) {
  public Observation {
    if (!(variance > 0) || !Double.isFinite(log) || shares.isEmpty()) {
      throw new IllegalArgumentException(log + " with variance " + variance + " of " + shares);
    }
    shares = List.copyOf(shares);
  }

  /**
   * One source's share of the mean.
   *
   * @param typical in the unit of the result, above 0
   * @param common log variances of its doubts by name; equal names are one part, in every group
   * @param own the same for parts that no other group has
   */
  public record Share(double typical, Map<String, Double> common, Map<String, Double> own) {
    public Share {
      if (!(typical > 0)) {
        throw new IllegalArgumentException("a share of " + typical);
      }
    }
  }

  /** Error of a result as the variance of its logarithm, from its coefficient of variation. */
  public static double variance(double coefficientOfVariation) {
    return Math.log1p(coefficientOfVariation * coefficientOfVariation);
  }
}
