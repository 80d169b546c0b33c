package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilterLoadingTest {

  @ParameterizedTest
  @CsvSource({"1,83.333333", "5,16.666667", "10,8.333333"})
  void two_hundred_milligrams_at_40_litres_a_minute(double mgPerM3, double hours) {
    // Derived on mass = C Q t 0.06; the 200 mg are of NIOSH 96-101.
    assertThat(FilterLoading.hours(200, mgPerM3, 40)).isCloseTo(hours, within(1e-6));
  }

  @Property
  void the_load_adds_over_split_wear(
      @ForAll @DoubleRange(min = 0, max = 100) double mgPerM3,
      @ForAll @DoubleRange(min = 5, max = 100) double flow,
      @ForAll @DoubleRange(min = 0, max = 8) double first,
      @ForAll @DoubleRange(min = 0, max = 8) double second) {
    double split = FilterLoading.mg(mgPerM3, flow, first) + FilterLoading.mg(mgPerM3, flow, second);
    assertThat(split)
        .isCloseTo(FilterLoading.mg(mgPerM3, flow, first + second), within(1e-9 + 1e-12 * split));
  }
}
