package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MannKendallTest {

  @Test
  void one_wild_value_leaves_the_slope_at_one() {
    // Data from memory, Helsel and Hirsch: slope 1, S 19. Variance, z and p derived.
    MannKendall trend = MannKendall.of(1, 2, 3, 4, 5, 16, 7);
    assertThat(trend.s()).isEqualTo(19);
    assertThat(trend.senSlope()).isEqualTo(1);
    assertThat(trend.variance()).isCloseTo(7 * 6 * 19 / 18.0, within(1e-12));
    assertThat(trend.z()).isCloseTo(2.70338, within(5e-6));
    assertThat(trend.pTwoSided()).isCloseTo(0.0068636, within(1e-6));
  }

  @Test
  void ties_make_the_variance_smaller() {
    // Derived by hand: (4*3*13 - 2*1*9)/18, five pairs rise, one is equal.
    MannKendall trend = MannKendall.of(1, 2, 2, 3);
    assertThat(trend.s()).isEqualTo(5);
    assertThat(trend.variance()).isCloseTo(138 / 18.0, within(1e-12));
    assertThat(trend.z()).isCloseTo(4 / Math.sqrt(138 / 18.0), within(1e-12));
  }

  @Test
  void equal_values_have_no_trend() {
    MannKendall trend = MannKendall.of(0.0, -0.0, 0.0, 0.0);
    assertThat(trend.variance()).isZero();
    assertThat(trend.z()).isZero();
    assertThat(trend.pTwoSided()).isEqualTo(1);
    assertThat(trend.senSlope()).isZero();
  }

  @Property
  void the_mirror_in_time_has_the_mirrored_trend(
      @ForAll @Size(min = 2, max = 30) List<@DoubleRange(min = -50, max = 50) Double> drawn) {
    double[] values = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    double[] back = new double[values.length];
    Arrays.setAll(back, i -> values[values.length - 1 - i]);
    MannKendall forth = MannKendall.of(values);
    MannKendall mirrored = MannKendall.of(back);
    assertThat(mirrored.s()).isEqualTo(-forth.s());
    assertThat(mirrored.senSlope()).isCloseTo(-forth.senSlope(), within(1e-12));
    assertThat(mirrored.pTwoSided()).isEqualTo(forth.pTwoSided());
  }

  @Test
  void one_value_is_no_trend() {
    assertThatThrownBy(() -> MannKendall.of(1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void the_slope_has_the_interval_of_its_ranks() {
    // R 4.2.2: approx(1:21, sort(slopes), c((21-C)/2, (21+C)/2 + 1)), C = qnorm(0.975)*sqrt(v);
    // statistics.R.
    MannKendall wild = MannKendall.of(1, 2, 3, 4, 5, 16, 7);
    assertThat(wild.senLow95()).hasValue(1);
    assertThat(wild.senHigh95().orElseThrow()).isCloseTo(3.52086805, within(1e-8));
  }

  @Test
  void ties_are_those_of_r() {
    // R 4.2.2: cor.test(1:12, y, method = "kendall", exact = FALSE, continuity = TRUE): z -3.89227;
    // the rest statistics.R.
    MannKendall falling =
        MannKendall.of(3.1, 2.9, 2.9, 2.4, 2.6, 2.4, 2.0, 2.2, 1.8, 1.8, 1.8, 1.5);
    assertThat(falling.s()).isEqualTo(-57);
    assertThat(falling.variance()).isCloseTo(207, within(1e-9));
    assertThat(falling.z()).isCloseTo(-3.89226906, within(1e-8));
    assertThat(falling.pTwoSided()).isCloseTo(9.93110169e-05, within(1e-12));
    assertThat(falling.senSlope()).isCloseTo(-0.13875, within(1e-12));
    assertThat(falling.senLow95().orElseThrow()).isCloseTo(-0.162914523, within(1e-9));
    assertThat(falling.senHigh95().orElseThrow()).isCloseTo(-0.11125643, within(1e-8));
  }

  @Property
  void the_slope_lies_within_its_interval(
      @ForAll @Size(min = 5, max = 30) List<@DoubleRange(min = -5, max = 5) Double> drawn) {
    MannKendall trend = MannKendall.of(drawn.stream().mapToDouble(Double::doubleValue).toArray());
    assertThat(trend.senSlope())
        .isBetween(trend.senLow95().orElseThrow(), trend.senHigh95().orElseThrow());
  }

  @Test
  void four_values_leave_no_interval_of_95_percent() {
    // Derived: of the 24 orders of four values two are as extreme as this one, 8.3 %; of the 120
    // orders of five two, 1.7 %.
    assertThat(MannKendall.of(1, 2, 3, 4).senLow95()).isEmpty();
    assertThat(MannKendall.of(1, 2, 3, 4).senHigh95()).isEmpty();
    assertThat(MannKendall.of(1, 2, 3, 4, 5).senLow95()).hasValue(1);
  }
}
