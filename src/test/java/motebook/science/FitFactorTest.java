package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class FitFactorTest {

  @Test
  void the_overall_factor_is_the_harmonic_mean_of_the_regulation() {
    // 29 CFR 1910.134 App. A I.C.2(b)(8); values derived on it.
    assertThat(FitFactor.overall(200, 180, 150, 120, 90, 110, 210))
        .isCloseTo(138.56, within(0.005));
    assertThat(FitFactor.overall(500, 500, 500, 500, 500, 500, 50)).isEqualTo(218.75);
  }

  @Property
  void equal_factors_at_the_pass_mark_pass_however_many(
      @ForAll @IntRange(min = 1, max = 40) int n) {
    double[] factors = new double[n];
    Arrays.fill(factors, FitFactor.PASS_HALF);
    assertThat(FitFactor.overall(factors)).isEqualTo(FitFactor.PASS_HALF);
  }

  @Property
  void the_overall_factor_lies_between_the_least_and_the_plain_mean(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 1, max = 1e5) Double> exercises) {
    double[] factors = exercises.stream().mapToDouble(Double::doubleValue).toArray();
    assertThat(FitFactor.overall(factors))
        .isBetween(
            Arrays.stream(factors).min().orElseThrow() * (1 - 1e-12),
            Arrays.stream(factors).average().orElseThrow() * (1 + 1e-12));
  }

  @Test
  void no_exercises_are_no_test() {
    assertThatThrownBy(FitFactor::overall).isInstanceOf(IllegalArgumentException.class);
  }
}
