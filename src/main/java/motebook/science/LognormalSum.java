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

  /** A part that terms share, and the expected values of those that have it. */
  private static final class Shared {
    private final double variance;
    private double sum;

    Shared(double variance) {
      this.variance = variance;
    }
  }

  private static double covariance(List<Term> terms) {
    Map<String, Shared> parts = new HashMap<>();
    Map<String, double[]> loaded = new HashMap<>();
    for (Term term : terms) {
      double expected = term.expected();
      if (expected > 0) {
        add(term.doubts(), expected, parts);
        term.doubts().rows().forEach((name, row) -> add(row, expected, name, loaded));
      }
    }
    double sum = 0;
    for (Shared part : parts.values()) {
      sum += part.variance * part.sum * part.sum;
    }
    for (double[] row : loaded.values()) {
      for (double normal : row) {
        sum += normal * normal;
      }
    }
    return sum;
  }

  private static void add(Doubts doubts, double expected, Map<String, Shared> parts) {
    for (int i = 0; i < doubts.names.length; i++) {
      Shared part = parts.get(doubts.names[i]);
      if (part == null) {
        part = new Shared(doubts.parts[i]);
        parts.put(doubts.names[i], part);
      }
      part.sum += expected;
    }
  }

  private static void add(double[] row, double expected, String name, Map<String, double[]> to) {
    double[] sums = to.computeIfAbsent(name, any -> new double[row.length]);
    for (int i = 0; i < row.length; i++) {
      sums[i] += expected * row[i];
    }
  }
}
