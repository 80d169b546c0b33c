package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseTest {

  @Test
  void the_example_of_the_regulation_averages_to_81_25_ppm() {
    // 29 CFR 1910.1000(d)(1)(ii): 2 h at 150, 2 h at 75, 4 h at 50 ppm.
    double twa =
        Dose.twa(
            List.of(
                new Dose.Stretch(120, 150), new Dose.Stretch(120, 75), new Dose.Stretch(240, 50)));
    assertThat(twa).isEqualTo(81.25);
  }

  @Test
  void the_example_mixture_of_the_regulation_has_the_index_0_925() {
    // 29 CFR 1910.1000(d)(2)(ii).
    double index =
        Dose.mixtureIndex(
            List.of(
                new Dose.Ingredient(500, 1000),
                new Dose.Ingredient(45, 200),
                new Dose.Ingredient(40, 200)));
    assertThat(index).isCloseTo(0.925, within(1e-12));
  }

  @Test
  void a_twelve_hour_shift_halves_a_limit() {
    // Brief and Scala, daily form; the example 0.05 -> 0.025 mg/m3 read second-hand.
    assertThat(0.05 * LongShift.dailyFactor(12)).isCloseTo(0.025, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"8,1", "4,1", "10,0.7", "16,0.25"})
  void the_daily_factor_is_the_formula_and_never_above_one(double hours, double factor) {
    // (8/h)(24-h)/16, arithmetic on the formula; not used above 1.
    assertThat(LongShift.dailyFactor(hours)).isCloseTo(factor, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"40,1", "20,1", "56,0.625"})
  void the_weekly_factor_is_the_formula_and_never_above_one(double hours, double factor) {
    assertThat(LongShift.weeklyFactor(hours)).isCloseTo(factor, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "2,138,207",
    "4,69,104",
    "6,46,69",
    "8,35,52",
    "10,28,41",
    "12,23,35",
    "15,18,28",
    "20,14,21"
  })
  void the_air_clears_in_the_printed_minutes(double airChanges, double min99, double min999) {
    // CDC/HICPAC 2003, Guidelines for Environmental Infection Control, App. B, Table B.1: printed
    // as
    // whole minutes, some rounded up and some down (15/h from memory).
    assertThat(Clearing.minutes(airChanges, 99)).isCloseTo(min99, within(1.0));
    assertThat(Clearing.minutes(airChanges, 99.9)).isCloseTo(min999, within(1.0));
  }

  @ParameterizedTest
  @CsvSource({"1,138", "2,69", "6,23", "12,12"})
  void ninety_percent_go_in_the_printed_minutes(double airChanges, double minutes) {
    // Health Canada 1996 (Canada Communicable Disease Report 22S1), Appendix F.
    assertThat(Clearing.minutes(airChanges, 90)).isCloseTo(minutes, within(1.0));
  }

  @ParameterizedTest
  @CsvSource({"10,0.90,5.263158", "20,0.95,10.256410", "1000,0.90,9.910803", "10,1,10", "10,0,1"})
  void part_time_wear_leaves_the_factor_of_the_lead_rule(double apf, double worn, double factor) {
    // 29 CFR 1910.1025(c)(3); values derived on its formula.
    assertThat(Protection.effectiveFactor(apf, worn)).isCloseTo(factor, within(1e-6));
  }
}
