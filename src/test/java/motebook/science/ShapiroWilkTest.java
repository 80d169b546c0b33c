package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapiroWilkTest {

  @ParameterizedTest
  @CsvSource({
    // R 4.2.2: shapiro.test(log(x)); statistics.R. One for each branch: three, small, large.
    "1 2 7, 0.973171134, 0.685758265",
    "1 2 7 8, 0.886410491, 0.366738191",
    // The fifteen of the strategy book by SciPy 1.17.1, lognormal.py.
    "1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9, 0.974295956, 0.915787831",
    "0.2 0.3 0.31 0.5 0.7 0.9 1.1 1.2 2.5 3.1 14, 0.943976793, 0.568313333",
    "0.2 0.3 0.31 0.5 0.7 0.9 1.1 1.2 2.5 3.1 14 0.04, 0.982151464, 0.990800928"
  })
  void logarithms_are_tested_as_in_r(String values, double w, double p) {
    double[] logs =
        Arrays.stream(values.split(" ", -1))
            .mapToDouble(Double::parseDouble)
            .map(Math::log)
            .toArray();
    assertThat(ShapiroWilk.of(logs).w()).isCloseTo(w, within(1e-8));
    assertThat(ShapiroWilk.of(logs).p()).isCloseTo(p, within(1e-7));
  }

  @Test
  void long_rows_are_tested_as_in_r() {
    // R 4.2.2: shapiro.test(1:50), shapiro.test((1:30)^2); statistics.R.
    ShapiroWilk even = ShapiroWilk.of(IntStream.rangeClosed(1, 50).asDoubleStream().toArray());
    assertThat(even.w()).isCloseTo(0.955582688, within(1e-8));
    assertThat(even.p()).isCloseTo(0.0580918627, within(1e-8));
    ShapiroWilk bent =
        ShapiroWilk.of(IntStream.rangeClosed(1, 30).mapToDouble(i -> i * i).toArray());
    assertThat(bent.w()).isCloseTo(0.901420535, within(1e-8));
    assertThat(bent.p()).isCloseTo(0.00909978747, within(1e-9));
  }

  @Property
  void unit_and_offset_change_nothing(
      @ForAll @Size(min = 3, max = 40) List<@DoubleRange(min = -9, max = 9) Double> values,
      @ForAll @DoubleRange(min = 0.1, max = 10) double unit) {
    double[] x = values.stream().mapToDouble(v -> Math.rint(8 * v)).toArray();
    x[0] = 80;
    double[] moved = Arrays.stream(x).map(v -> 3 - unit * v).toArray();
    ShapiroWilk test = ShapiroWilk.of(x);
    assertThat(ShapiroWilk.of(moved).w()).isCloseTo(test.w(), within(1e-9));
    assertThat(test.w()).isPositive().isLessThanOrEqualTo(1);
    assertThat(test.p()).isBetween(0.0, 1.0);
  }

  @Test
  void too_few_or_equal_values_cannot_be_tested() {
    assertThatThrownBy(() -> ShapiroWilk.of(1, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ShapiroWilk.of(2, 2, 2)).isInstanceOf(IllegalArgumentException.class);
  }
}
