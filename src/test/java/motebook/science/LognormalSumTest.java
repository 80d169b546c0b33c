package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import motebook.science.LognormalSum.Term;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LognormalSumTest {

  @Test
  void one_term_is_itself() {
    Estimate sum = LognormalSum.of(List.of(new Term(3.125, Map.of("a", 1.0, "b", 0.7))));
    assertThat(sum.central()).isCloseTo(3.125, within(1e-12));
    assertThat(sum.sigma()).isCloseTo(Math.sqrt(1.7), within(1e-12));
  }

  @Test
  void terms_that_share_every_doubt_add_as_if_they_were_one() {
    Map<String, Double> doubts = Map.of("a", 0.4, "b", 0.9);
    Estimate two = LognormalSum.of(List.of(new Term(1, doubts), new Term(2, doubts)));
    assertThat(two.central()).isCloseTo(3, within(1e-12));
    assertThat(two.sigma()).isCloseTo(Math.sqrt(1.3), within(1e-12));
  }

  @Test
  void the_moments_are_those_of_the_sum_itself() {
    // Lo 2013: S = sum of means; variance of the sum from the covariances, here for two terms with
    // one shared part: sigma_S^2 = (c11 E1^2 + 2 c12 E1 E2 + c22 E2^2)/S^2, mu = ln S -
    // sigma_S^2/2.
    double e1 = Math.exp((0.3 + 0.2) / 2);
    double e2 = 2 * Math.exp((0.3 + 0.1) / 2);
    double s = e1 + e2;
    double v = (0.5 * e1 * e1 + 2 * 0.3 * e1 * e2 + 0.4 * e2 * e2) / (s * s);
    Estimate sum =
        LognormalSum.of(
            List.of(
                new Term(1, Map.of("shared", 0.3, "x", 0.2)),
                new Term(2, Map.of("shared", 0.3, "y", 0.1))));
    assertThat(sum.sigma()).isCloseTo(Math.sqrt(v), within(1e-12));
    assertThat(sum.central()).isCloseTo(s * Math.exp(-v / 2), within(1e-12));
  }

  @Test
  void the_median_and_the_range_are_near_those_of_a_drawn_sum() {
    Random random = new Random(1);
    int n = 200_000;
    double[] drawn = new double[n];
    for (int i = 0; i < n; i++) {
      double shared = Math.sqrt(0.3) * random.nextGaussian();
      drawn[i] =
          Math.exp(shared + Math.sqrt(0.2) * random.nextGaussian())
              + 2 * Math.exp(shared + Math.sqrt(0.1) * random.nextGaussian());
    }
    Arrays.sort(drawn);
    Estimate sum =
        LognormalSum.of(
            List.of(
                new Term(1, Map.of("shared", 0.3, "x", 0.2)),
                new Term(2, Map.of("shared", 0.3, "y", 0.1))));
    assertThat(sum.central() / drawn[n / 2]).isBetween(0.98, 1.02);
    assertThat(sum.low90() / drawn[n / 20]).isBetween(0.95, 1.05);
    assertThat(sum.high90() / drawn[n - n / 20]).isBetween(0.95, 1.05);
  }

  /**
   * The chance that shares of two limits add to more than 1, against the integral over one of two
   * normal logarithms of the chance that the other fills up the rest. Lo's sum lies within a point
   * where the doubts are as small as most rows of the tables leave them, and within three and a
   * half points where they are as large as any, on the side of more where the shares are alike.
   */
  @ParameterizedTest
  @CsvSource({
    // own variance of each, operation's variance of each, shares, whether the operation is one,
    // points that the chance may be off by
    "0.263, 0.1, 0.05, 0.05, true,  1", "0.263, 0.1, 0.2,  0.2, false, 1",
    "0.263, 0.1, 0.5,  0.2,  false, 1", "0.263, 0.3, 1,    1,   false, 1",
    "0.263, 0.3, 2,    0.3,  true,  1", "0.263, 0.3, 0.01, 0.5, false, 1",
    "0.9,   0.1, 0.2,  0.2,  true,  1", "0.9,   0.3, 0.5,  0.2, false, 2",
    "0.9,   0.3, 2,    0.3,  false, 1", "1.3,   0.1, 0.05, 0.05, true, 1",
    "1.3,   0.3, 0.2,  0.2,  false, 3", "1.3,   0.3, 1,    1,   false, 3.5"
  })
  void shares_of_two_limits_pass_one_as_often_as_the_integral_says(
      double own, double operation, double first, double second, boolean alike, double points) {
    Map<String, Double> one = Map.of("model", Spread.MODEL, "saw", operation, "a", own);
    Map<String, Double> other =
        Map.of("model", Spread.MODEL, alike ? "saw" : "sander", operation, "b", own);
    Estimate index = LognormalSum.of(List.of(new Term(first, one), new Term(second, other)));
    double shared = Spread.MODEL + (alike ? operation : 0);
    double variance = Spread.MODEL + operation + own;
    assertThat(100 * index.chanceOver(1))
        .isCloseTo(100 * overOne(variance, shared, first, second), within(points));
  }

  /** P(a·e^x + b·e^y > 1), x and y normal of one variance and some covariance, by midpoints. */
  private static double overOne(double variance, double covariance, double a, double b) {
    int steps = 40_000;
    double width = 20.0 / steps;
    double sigma = Math.sqrt(variance);
    double left = Math.sqrt(variance - covariance * covariance / variance);
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double z = -10 + (i + 0.5) * width;
      double rest = 1 - a * Math.exp(sigma * z);
      double chance =
          rest <= 0 ? 1 : Normal.above((Math.log(rest / b) - covariance / sigma * z) / left);
      sum += chance * Normal.density(z) * width;
    }
    return sum;
  }

  @Test
  void nothing_adds_up_to_nothing() {
    assertThat(LognormalSum.of(List.of())).isEqualTo(Estimate.ZERO);
    assertThat(LognormalSum.of(List.of(new Term(0, Map.of())))).isEqualTo(Estimate.ZERO);
    assertThat(Estimate.ZERO.chanceOver(1)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"1,49.3", "5,7.3", "15,0.74"})
  void the_share_above_a_limit_is_that_of_the_lognormal(double limit, double percent) {
    // 888 wood-dust samples, GM 0.98 and GSD 3.06 (Lee 2011, Ann Occup Hyg 55:180); shares derived.
    Estimate samples = new Estimate(0.98, 0.98, Math.log(3.06));
    assertThat(100 * samples.chanceOver(limit)).isCloseTo(percent, within(0.05));
  }

  @Property
  void the_chance_falls_as_the_limit_rises(
      @ForAll @DoubleRange(min = 0.01, max = 100) double central,
      @ForAll @DoubleRange(min = 0, max = 3) double sigma,
      @ForAll @DoubleRange(min = 0.01, max = 50) double limit) {
    Estimate estimate = new Estimate(central, central, sigma);
    assertThat(estimate.chanceOver(limit)).isBetween(0.0, 1.0);
    assertThat(estimate.chanceOver(limit * 1.5)).isLessThanOrEqualTo(estimate.chanceOver(limit));
  }

  @Test
  void the_doubts_of_an_hour_of_orbital_sanding_are_the_derived_ones() {
    // Derived: range 9-62 and GSD 3.0 of orbital sanding, range 0.8-1.2 of oak.
    double operation = Spread.ofRange(9, 62);
    double sigma2 = operation + Spread.ofRange(0.8, 1.2) + Spread.MODEL + Spread.own(3, operation);
    Estimate twa = new Estimate(3.125, 3.125, Math.sqrt(sigma2));
    assertThat(twa.low90()).isCloseTo(0.365307, within(1e-6));
    assertThat(twa.high90()).isCloseTo(26.7326, within(1e-4));
    assertThat(twa.chanceOver(1)).isCloseTo(0.808734, within(1e-6));
  }

  @Test
  void the_own_spread_never_falls_below_a_factor_of_1_67() {
    assertThat(Spread.own(1.1, 0.5)).isEqualTo(Math.pow(Math.log(1.67), 2));
  }
}
