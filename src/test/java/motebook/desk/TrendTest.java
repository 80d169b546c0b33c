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
  void nothing_from_before_the_weeks_that_are_looked_at_counts() {
    double[] values = new double[30];
    Arrays.fill(values, 1);
    assertThat(back(values).points()).hasSize(Trend.QUARTER);
  }
}
