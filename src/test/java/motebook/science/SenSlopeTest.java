package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;

class SenSlopeTest {
  private static final double[] ONE_TO_SEVEN = {1, 2, 3, 4, 5, 6, 7};

  @Test
  void the_textbook_values_with_one_wild_one_have_the_slope_1() {
    // Data of Helsel and Hirsch (from memory): median slope 1.
    double[] y = {1, 2, 3, 4, 5, 16, 7};
    SenSlope slope = SenSlope.of(ONE_TO_SEVEN, y);
    assertThat(slope.perStep()).isEqualTo(1);
    // Derived: (21 − 1.645·√44.333)/2 = 5.02, so the 5th and the 17th of the 21 slopes in order.
    assertThat(slope.low90()).isEqualTo(1);
    assertThat(slope.high90()).isEqualTo(3);
  }

  @Test
  void times_that_are_missing_count_in_the_distance() {
    SenSlope slope = SenSlope.of(new double[] {0, 1, 10, 11}, new double[] {5, 4.9, 4, 3.9});
    assertThat(slope.perStep()).isCloseTo(-0.1, within(1e-12));
  }

  @Test
  void values_that_do_not_move_have_no_slope() {
    SenSlope slope = SenSlope.of(ONE_TO_SEVEN, new double[] {2, 2, 2, 2, 2, 2, 2});
    assertThat(slope).isEqualTo(new SenSlope(0, 0, 0));
  }

  @Property
  void the_interval_leaves_out_0_just_where_the_test_is_below_10_percent(
      @ForAll @Size(min = 4, max = 52) @UniqueElements
          List<@IntRange(min = 1, max = 100_000) Integer> drawn,
      @ForAll @IntRange(min = 0, max = 30) int climb) {
    double[] values = new double[drawn.size()];
    double[] times = new double[drawn.size()];
    for (int i = 0; i < values.length; i++) {
      times[i] = i;
      values[i] = drawn.get(i) + 100.0 * climb * i;
    }
    Assume.that(Arrays.stream(values).distinct().count() == values.length);
    assertThat(SenSlope.of(times, values).direction() != 0)
        .isEqualTo(MannKendall.of(values).pTwoSided() < 0.1);
  }

  @Test
  void one_value_is_refused() {
    assertThatThrownBy(() -> SenSlope.of(new double[] {1}, new double[] {1}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SenSlope.of(new double[] {1}, new double[] {1, 2}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
