package motebook.science;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The sum of lognormal terms that share some of their doubts.
 *
 * <p>Lo 2013, as restated in the vignette of the R package lognorm: with {@code Eᵢ = e^(µᵢ+σᵢ²/2)},
 * {@code S = ΣEᵢ}, {@code σ_S² = S⁻² Σᵢⱼ cov(i,j) Eᵢ Eⱼ} and {@code µ_S = ln S − σ_S²/2}. Here the
 * covariance of two terms is the sum of the variances of the named parts that both have, so the
 * double sum is, part by part, {@code var(p)·(Σ Eᵢ over the terms that have p)²}; parts that were
 * learned hang together and are given as loadings ℓ on independent standard normals, each of which
 * adds {@code (Σ ℓᵢEᵢ)²}.
 */
public final class LognormalSum {
  private LognormalSum() {}

  /**
   * One term of the sum.
   *
   * @param typical its median, ≥ 0
   * @param variances of its logarithm, by the name of each part; equal names mean one shared part
   * @param loadings of its logarithm on independent standard normals, by their names
   */
  public record Term(double typical, Map<String, Double> variances, Map<String, Double> loadings) {
    /** A term of which nothing was learned. */
    public Term(double typical, Map<String, Double> variances) {
      this(typical, variances, Map.of());
    }

    /** The term's mean, {@code typical·e^(σ²/2)}. */
    public double expected() {
      return typical * Math.exp(variance() / 2);
    }

    /** Variance of its logarithm. */
    public double variance() {
      double variance = variances.values().stream().mapToDouble(Double::doubleValue).sum();
      return variance + loadings.values().stream().mapToDouble(ell -> ell * ell).sum();
    }

    /** The same with another typical value. */
    public Term of(double otherTypical) {
      return new Term(otherTypical, variances, loadings);
    }
  }

  /** The sum of the terms; nothing where they are none or all zero. */
  public static Estimate of(List<Term> terms) {
    double typical = terms.stream().mapToDouble(Term::typical).sum();
    double expected = expected(terms);
    if (expected == 0) {
      return Estimate.ZERO;
    }
    double variance = covariance(terms) / (expected * expected);
    return new Estimate(typical, expected * Math.exp(-variance / 2), Math.sqrt(variance));
  }

  /** The mean of the sum. */
  public static double expected(List<Term> terms) {
    return terms.stream().mapToDouble(Term::expected).sum();
  }

  private static double covariance(List<Term> terms) {
    Map<String, Double> variances = new HashMap<>();
    Map<String, Double> sums = new HashMap<>();
    Map<String, Double> loaded = new HashMap<>();
    for (Term term : terms) {
      variances.putAll(term.variances());
      double expected = term.expected();
      term.variances().keySet().forEach(part -> sums.merge(part, expected, Double::sum));
      term.loadings().forEach((normal, ell) -> loaded.merge(normal, ell * expected, Double::sum));
    }
    return sums.entrySet().stream()
            .mapToDouble(e -> variances.get(e.getKey()) * e.getValue() * e.getValue())
            .sum()
        + loaded.values().stream().mapToDouble(sum -> sum * sum).sum();
  }
}
