package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "3.125, 3.13",
    "14, 14.0",
    "1, 1.00",
    "0.0365, 0.0365",
    "1449, 1450",
    "999.6, 1000",
    "4010.7, 4010",
    "123456789, over 1 000 000",
    "-0.31, -0.310",
    "0, 0",
    "0.001, 0.00100",
    "999999, 1000000",
    "1004999, 1000000",
    "1005001, over 1 000 000",
    "-3e9, over 1 000 000 below 0",
    "0.0000094, less than 0.001",
    "-0.0000094, less than 0.001 below 0"
  })
  void what_was_calculated_has_three_digits_and_a_floor(double value, String shown) {
    assertThat(Figures.rounded(value)).isEqualTo(shown);
  }

  @Property
  void no_figure_is_in_scientific_notation_and_none_has_more_than_three_digits(
      @ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
    assertThat(Figures.rounded(value)).doesNotContainIgnoringCase("e+").doesNotContain("E");
    String scaled = Figures.scaled(value);
    assertThat(
            scaled.startsWith("less") || scaled.startsWith("over 1 000 000")
                ? ""
                : scaled.replaceAll("[-.]", "").replaceAll("^0+|0+$", ""))
        .hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void a_figure_in_a_small_unit_of_the_persons_own_has_a_lower_floor() {
    assertThat(Figures.scaled(0.00025)).isEqualTo("0.000250");
    assertThat(Figures.scaled(0.0000094)).isEqualTo("less than 0.0001");
    assertThat(Figures.scaled(-0.0000094)).isEqualTo("less than 0.0001 below 0");
  }

  @Test
  void a_narrow_column_has_a_short_floor() {
    assertThat(Figures.cell(0.0000094)).isEqualTo("<0.001");
    assertThat(Figures.cell(3.125)).isEqualTo("3.13");
    assertThat(Figures.cell(2e7)).isEqualTo(">1 000 000");
  }

  @Test
  void an_estimate_and_a_range_under_the_floor_are_said_once() {
    assertThat(Figures.about(3.125)).isEqualTo("about 3.13");
    assertThat(Figures.about(0.0002)).isEqualTo("less than 0.001");
    assertThat(Figures.about(2e7)).isEqualTo("over 1 000 000");
    assertThat(Figures.range(0.365, 26.7)).isEqualTo("0.365 to 26.7");
    assertThat(Figures.range(0.0001, 2)).isEqualTo("less than 0.001 to 2.00");
    assertThat(Figures.range(0.0001, 0.0002)).isEqualTo("less than 0.001");
  }

  @ParameterizedTest
  @CsvSource({
    "0, less than 1 %",
    "1e-300, less than 1 %",
    "0.0099, less than 1 %",
    "0.01, 1 %",
    "0.81, 81 %",
    "0.99, 99 %",
    "0.9901, over 99 %",
    "1, over 99 %"
  })
  void a_chance_is_never_none_and_never_certain(double chance, String shown) {
    assertThat(Figures.chance(chance)).isEqualTo(shown);
  }

  @Test
  void a_share_that_is_neither_none_nor_all_is_not_shown_as_such() {
    assertThat(Figures.percent(0)).isEqualTo("0 %");
    assertThat(Figures.percent(0.2)).isEqualTo("<1 %");
    assertThat(Figures.percent(99.7)).isEqualTo(">99 %");
    assertThat(Figures.percent(99.99999999)).isEqualTo("100 %");
    assertThat(Figures.percent(140.3)).isEqualTo("140 %");
    assertThat(Figures.percent(1449)).isEqualTo("1450 %");
  }

  @Test
  void shares_add_by_the_largest_remainder() {
    assertThat(Figures.shares(List.of(33.4, 33.4, 33.2))).containsExactly("34 %", "33 %", "33 %");
    assertThat(Figures.shares(List.of(12.5, 12.5, 75.0))).containsExactly("13 %", "12 %", "75 %");
    assertThat(Figures.shares(List.of(99.8, 0.2))).containsExactly(">99 %", "<1 %");
    assertThat(Figures.shares(List.of(100 - 1e-13))).containsExactly("100 %");
    assertThat(Figures.shares(List.of(0.0, 0.0))).containsExactly("0 %", "0 %");
    assertThat(Figures.shares(List.of())).isEmpty();
  }

  @Property
  void shown_shares_add_to_the_whole_and_none_is_a_percent_off(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0.01, max = 1000) Double> parts) {
    double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
    List<Double> percents = parts.stream().map(part -> 100 * part / sum).toList();
    List<String> shown = Figures.shares(percents);
    int total = 0;
    for (int i = 0; i < shown.size(); i++) {
      int whole =
          switch (shown.get(i)) {
            case "<1 %" -> 0;
            case ">99 %" -> 100;
            default -> Integer.parseInt(shown.get(i).replace(" %", ""));
          };
      assertThat(Math.abs(whole - percents.get(i))).isLessThan(1);
      total += whole;
    }
    assertThat(total).isEqualTo(100);
  }
}
