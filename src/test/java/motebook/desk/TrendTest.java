package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TrendTest {
  private static final LocalDate LAST = LocalDate.of(2026, 3, 2);

  // The newest first; NaN for a week without work.
  private static Trend back(double... values) {
    Map<LocalDate, OptionalDouble> means = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      means.put(
          LAST.minusWeeks(i),
          Double.isNaN(values[i]) ? OptionalDouble.empty() : OptionalDouble.of(values[i]));
    }
    return Trend.of(
        LAST, Trend.QUARTER, monday -> means.getOrDefault(monday, OptionalDouble.empty()));
  }

  @Test
  void weeks_that_fall_by_a_tenth_each_are_falling_a_tenth_a_week() {
    Trend trend = back(1.0, 1.1, 1.2, 1.3, 1.4, 1.5);
    assertThat(trend.found().orElseThrow().direction()).isEqualTo(-1);
    assertThat(trend.found().orElseThrow().slope().perStep()).isCloseTo(-0.1, within(1e-9));
  }

  @Test
  void weeks_without_work_are_left_out_and_not_taken_as_clean() {
    Trend trend = back(1.0, Double.NaN, Double.NaN, 1.3, 1.4, 1.5);
    assertThat(trend.points()).hasSize(4);
    assertThat(trend.found().orElseThrow().slope().perStep()).isCloseTo(-0.1, within(1e-9));
  }

  @Test
  void three_weeks_with_work_are_too_few() {
    assertThat(back(1, 2, 3).found()).isEmpty();
    assertThat(back(1, 2, 3, 4).found().orElseThrow().direction()).isEqualTo(-1);
  }

  @Test
  void values_that_go_up_and_down_and_values_that_stay_have_no_clear_trend() {
    assertThat(back(1, 3, 2, 3, 1, 2).found().orElseThrow().direction()).isZero();
    assertThat(back(2, 2, 2, 2, 2).found().orElseThrow().direction()).isZero();
  }

  @Test
  void weeks_are_never_called_falling_while_the_interval_of_the_slope_holds_0() {
    // Derived: one of the fifteen pairs rises, variance 28.33, z -2.254, p 0.024.
    Trend.Found falling = back(1, 3, 2, 4, 5, 6).found().orElseThrow();
    assertThat(falling.test().s()).isEqualTo(-13);
    assertThat(falling.direction()).isEqualTo(-1);
    assertThat(falling.slope().high90()).isNegative();
    // Derived: four rise, S -7, z -1.127, p 0.26.
    Trend.Found unclear = back(1, 3, 2, 5, 4, 3.5).found().orElseThrow();
    assertThat(unclear.direction()).isZero();
    assertThat(unclear.slope().high90()).isNotNegative();
  }

  @Test
  void equal_weeks_that_touch_0_leave_a_trend_unclear() {
    // Fifteen pairs fall and none rises, but thirteen are equal: the test alone would call it
    // clear.
    Trend.Found found = back(2, 2, 2, 2, 2, 1, 1, 1).found().orElseThrow();
    assertThat(found.test().pTwoSided()).isLessThan(Trend.CLEAR_BELOW);
    assertThat(found.slope().low90()).isZero();
    assertThat(found.direction()).isZero();
  }

  @Test
  void nothing_from_before_the_weeks_that_are_looked_at_counts() {
    double[] values = new double[30];
    Arrays.fill(values, 1);
    assertThat(back(values).points()).hasSize(Trend.QUARTER);
  }
}
