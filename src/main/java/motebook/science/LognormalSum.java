package motebook.science;

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
   * @param doubts of its logarithm
   */
  public record Term(double typical, Doubts doubts) {
    /** A term of which nothing was learned. */
    public Term(double typical, Map<String, Double> variances) {
      this(typical, new Doubts(variances));
    }

    /** The term's mean, {@code typical·e^(σ²/2)}. */
    public double expected() {
      return typical * doubts.expected();
    }

    /** Variance of its logarithm. */
    public double variance() {
      return doubts.variance();
    }

    /** The same with another typical value. */
    public Term of(double otherTypical) {
      return new Term(otherTypical, doubts);
    }
  }

  /** The sum of the terms; nothing where they are none or all zero. */
  public static Estimate of(List<Term> terms) {
    return new SharedDoubts(terms.stream().map(Term::doubts).toList())
        .sum(terms.stream().mapToDouble(Term::typical).toArray());
  }

  /** The mean of the sum. */
  public static double expected(List<Term> terms) {
    return terms.stream().mapToDouble(Term::expected).sum();
  }
}
