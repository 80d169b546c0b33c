package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LongShiftTest {
  @ParameterizedTest
  @ValueSource(doubles = {8, 9, 10, 12, 16, 23})
  void what_is_left_for_a_twa_and_its_divisor_make_the_daily_factor_once(double hours) {
    // 12 h: 0.75 left for the TWA, 8/12 in the divisor, 0.5 together (read second-hand).
    assertThat(8 / hours * LongShift.factorForTwa(hours))
        .isCloseTo(LongShift.dailyFactor(hours), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 8})
  void short_times_raise_no_limit(double hours) {
    assertThat(LongShift.factorForTwa(hours)).isEqualTo(1);
  }
}
