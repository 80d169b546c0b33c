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
  private static final LognormalSample SIX = LognormalSample.of(0.84, 0.98, 0.42, 1.16, 1.36, 2.66);

  @Test
  void the_six_values_of_the_slides_have_their_printed_means() {
    // Teaching slides "Analyzing small data sets", 2007: GM 1.06, GSD 1.83, AM 1.24.
    assertThat(SIX.gm()).isCloseTo(1.06, within(0.005));
    assertThat(SIX.gsd()).isCloseTo(1.83, within(0.005));
    assertThat(SIX.mean()).isCloseTo(1.24, within(0.005));
  }

  @Test
  void the_six_values_have_the_derived_upper_figures() {
    // Derived on the formulas, not published.
    assertThat(SIX.p95()).isCloseTo(2.881, within(0.0005));
    assertThat(SIX.upperToleranceLimit(0.95)).isCloseTo(10.05, within(0.01));
    assertThat(SIX.upperToleranceLimit(0.70)).isCloseTo(4.000, within(0.001));
    assertThat(100 * SIX.shareOver(5)).isCloseTo(0.53, within(0.005));
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
    // R 4.2.2: uniroot of pt(U*sqrt(6), 5, delta) - p, pnorm(delta/sqrt(6), lower.tail = FALSE);
    // statistics.R.
    assertThat(100 * SIX.shareOver(5, 0.05)).isCloseTo(0.00390589828, within(1e-8));
    assertThat(100 * SIX.shareOver(5, 0.95)).isCloseTo(14.8883003, within(1e-6));
    assertThat(100 * SIX.shareOver(1, 0.05)).isCloseTo(28.2297428, within(1e-6));
    assertThat(100 * SIX.shareOver(1, 0.95)).isCloseTo(77.9640273, within(1e-6));
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
    // R 4.2.2: exp(mean(y)) * gamma(b) * z^((1-b)/2) * besselI(2*sqrt(z), b-1) with b = (n-1)/2,
    // z = (n-1)^2 var(y)/(4n); statistics.R. The lognormal mean derived, 1.278.
    assertThat(SIX.unbiasedMean()).isCloseTo(1.23573613, within(1e-8));
    assertThat(SIX.lognormalMean()).isCloseTo(1.27816653, within(1e-8));
    LognormalSample wide = LognormalSample.of(0.1, 0.5, 0.8, 3, 12, 0.05, 40);
    assertThat(wide.unbiasedMean()).isCloseTo(8.96430857, within(1e-7));
    assertThat(LognormalSample.of(2, 2, 2).unbiasedMean()).isCloseTo(2, within(1e-12));
  }
}
