package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LognormalSampleTest {
  // Mulhausen and Damiano 1998, A Strategy for Assessing and Managing Occupational Exposures, 2nd
  // edition, Table V.2, mg/m3.
  private static final LognormalSample FIFTEEN =
      LognormalSample.of(1.3, 1.8, 1.2, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9);

  @Test
  void the_fifteen_values_of_the_strategy_book_have_their_figures() {
    // Read in an open R package that carries the table: GM 2.479, GSD 1.502, P95 4.84, UTL95,95
    // 7.046, 4.24 % over 5.
    assertThat(FIFTEEN.gm()).isCloseTo(2.479, within(0.0005));
    assertThat(FIFTEEN.gsd()).isCloseTo(1.502, within(0.0005));
    assertThat(FIFTEEN.p95()).isCloseTo(4.84, within(0.005));
    assertThat(FIFTEEN.upperToleranceLimit(0.95)).isCloseTo(7.046, within(0.0005));
    assertThat(100 * FIFTEEN.shareOver(5)).isCloseTo(4.24, within(0.005));
  }

  @Test
  void the_fifteen_values_have_the_derived_mean_and_limit_at_70_percent() {
    // SciPy 1.17.1, lognormal.py; the mean by hand, 40.2 / 15.
    assertThat(FIFTEEN.mean()).isCloseTo(2.68, within(1e-12));
    assertThat(FIFTEEN.upperToleranceLimit(0.70)).isCloseTo(5.40900838, within(1e-7));
  }

  @ParameterizedTest
  @CsvSource({
    // Derived from the exact non-central t, K = t(0.95; n - 1, z sqrt n) / sqrt n.
    "3,0.95,7.656",
    "6,0.95,3.708",
    "10,0.95,2.911",
    "20,0.95,2.396",
    "30,0.95,2.220",
    // EN 689 group test, from memory.
    "6,0.70,2.187",
    "10,0.70,2.005"
  })
  void the_factor_is_that_of_the_exact_non_central_t(int n, double confidence, double k) {
    assertThat(ToleranceFactor.of95thPercentile(n, confidence)).isCloseTo(k, within(0.0006));
  }

  @Test
  void two_results_have_the_printed_factor() {
    // One-sided tolerance tables, 95 % / 95 %, n = 2: 26.26 (memory).
    assertThat(ToleranceFactor.of95thPercentile(2, 0.95)).isCloseTo(26.26, within(0.005));
  }

  @Property(tries = 60)
  void the_factor_falls_with_more_results_and_rises_with_confidence(
      @ForAll @IntRange(min = 2, max = 3000) int n,
      @ForAll @DoubleRange(min = 0.55, max = 0.98) double confidence) {
    double k = ToleranceFactor.of95thPercentile(n, confidence);
    assertThat(k).isGreaterThan(ToleranceFactor.of95thPercentile(2 * n, confidence));
    assertThat(k).isLessThan(ToleranceFactor.of95thPercentile(n, confidence + 0.01));
    assertThat(k).isGreaterThan(1.6448);
  }

  @Test
  void a_large_survey_is_reproduced_by_its_two_figures() {
    // Lee 2011, Ann Occup Hyg 55:180: 888 samples, GM 0.98, GSD 3.06, reported 48 % over 1, 6 %
    // over
    // 5, 1 % over 15; the lognormal figures derived.
    LognormalSample wood = new LognormalSample(888, 1.8, Math.log(0.98), Math.log(3.06));
    assertThat(100 * wood.shareOver(1)).isCloseTo(49.3, within(0.05));
    assertThat(100 * wood.shareOver(5)).isCloseTo(7.3, within(0.05));
    assertThat(100 * wood.shareOver(15)).isCloseTo(0.74, within(0.01));
  }

  @Test
  void equal_results_lie_at_one_point() {
    LognormalSample same = LognormalSample.of(2, 2, 2);
    assertThat(same.upperToleranceLimit(0.95)).isCloseTo(2, within(1e-12));
    assertThat(same.shareOver(3)).isZero();
    assertThat(same.shareOver(1)).isEqualTo(1);
  }

  @Test
  void one_result_or_a_zero_is_no_sample() {
    assertThatThrownBy(() -> LognormalSample.of(1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LognormalSample.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void the_share_over_a_limit_has_the_interval_of_the_non_central_t() {
    // SciPy 1.17.1: brentq of nct.cdf(U*sqrt(15), 14, delta) - p, norm.sf(delta/sqrt(15));
    // lognormal.py.
    assertThat(100 * FIFTEEN.shareOver(5, 0.05)).isCloseTo(0.857019567, within(1e-8));
    assertThat(100 * FIFTEEN.shareOver(5, 0.95)).isCloseTo(15.2826330, within(1e-6));
    assertThat(100 * FIFTEEN.shareOver(2, 0.05)).isCloseTo(52.5609482, within(1e-6));
    assertThat(100 * FIFTEEN.shareOver(2, 0.95)).isCloseTo(83.4889772, within(1e-6));
  }

  @Property(tries = 40)
  void five_percent_are_not_exceeded_with_a_confidence_at_the_upper_limit_of_that_confidence(
      @ForAll @IntRange(min = 2, max = 60) int n,
      @ForAll @DoubleRange(min = 0.1, max = 2) double sd,
      @ForAll @DoubleRange(min = 0.2, max = 0.98) double confidence) {
    LognormalSample sample = new LognormalSample(n, 1, 0, sd);
    double limit = sample.upperToleranceLimit(confidence);
    assertThat(sample.shareOver(limit, confidence)).isCloseTo(0.05, within(1e-7));
  }

  @Test
  void the_mean_without_bias_is_that_of_the_bessel_function() {
    // exp(mean(y)) * gamma(b) * z^((1-b)/2) * besselI(2*sqrt(z), b-1) with b = (n-1)/2, z =
    // (n-1)^2 var(y)/(4n): the fifteen by SciPy 1.17.1, lognormal.py, the wide ones by R 4.2.2,
    // statistics.R.
    assertThat(FIFTEEN.unbiasedMean()).isCloseTo(2.67745318, within(1e-8));
    assertThat(FIFTEEN.lognormalMean()).isCloseTo(2.69327809, within(1e-8));
    LognormalSample wide = LognormalSample.of(0.1, 0.5, 0.8, 3, 12, 0.05, 40);
    assertThat(wide.unbiasedMean()).isCloseTo(8.96430857, within(1e-7));
    assertThat(LognormalSample.of(2, 2, 2).unbiasedMean()).isCloseTo(2, within(1e-12));
  }
}
