package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import motebook.science.Vapour.Flammable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VapourTest {

  @ParameterizedTest
  @CsvSource({
    // NIOSH Pocket Guide, read: mg/m3 of 1 ppm at 25 degrees.
    "136,5.56",
    "60.10,2.46",
    "74.12,3.03"
  })
  void one_ppm_of_turpentine_isopropanol_and_butanol_weighs_what_is_printed(
      double molarMass, double mgPerM3) {
    assertThat(Vapour.ppm(mgPerM3, molarMass)).isCloseTo(1, within(0.002));
  }

  @Test
  void formaldehyde_of_a_curing_lacquer_is_a_third_of_a_ppm() {
    // Arch Environ Health 1988 43:222, read: 0.40 mg/m3 as an 8-h mean.
    assertThat(Vapour.ppm(0.40, 30.03)).isCloseTo(0.326, within(0.0005));
  }

  @Test
  void a_quarter_litre_of_toluene_an_hour_into_ten_cubic_metres_a_minute() {
    // Derived: 361 mg/m3, 95.8 ppm.
    double mgPerM3 = 250 * 0.867 * 1000 / 60 / 10;
    assertThat(mgPerM3).isCloseTo(361, within(0.5));
    assertThat(Vapour.ppm(mgPerM3, 92.14)).isCloseTo(95.8, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({
    // NIOSH IDLH pages, read: 10 % of the lower flammable limit.
    "2000,2.0",
    "1400,1.4",
    "800,0.8"
  })
  void a_tenth_of_the_lower_flammable_limit_is_as_printed(double ppm, double percent) {
    assertThat(Vapour.flammableShare(List.of(new Flammable(ppm, percent))))
        .isCloseTo(0.1, within(1e-12));
  }

  @Test
  void vapours_add_up_to_the_flammable_limit_after_le_chatelier() {
    // Derived: half of each limit together reach it; a quarter of toluene's is 2500 ppm.
    assertThat(Vapour.flammableShare(List.of(new Flammable(5000, 1.0), new Flammable(12500, 2.5))))
        .isCloseTo(1, within(1e-12));
    assertThat(Vapour.flammableShare(List.of(new Flammable(2500, 1.0)))).isEqualTo(0.25);
  }

  @Test
  void contact_cement_is_nearly_twice_the_limits_taken_together() {
    // J Occup Environ Hyg 2012 9:D95, inputs read: 159 ppm toluene and 58 ppm MEK.
    assertThat(
            Dose.mixtureIndex(List.of(new Dose.Ingredient(159, 100), new Dose.Ingredient(58, 200))))
        .isCloseTo(1.88, within(1e-12));
  }

  @Test
  void air_above_a_liquid_holds_its_pressure_as_a_part_of_the_atmosphere() {
    // Derived: 3.80 kPa of toluene and 0.11 kPa of mineral spirits of 101.325; half of it by mole.
    assertThat(Vapour.saturatedPpm(1, 3.80)).isCloseTo(37503.1, within(0.1));
    assertThat(Vapour.saturatedPpm(1, 0.11)).isCloseTo(1085.6, within(0.1));
    assertThat(Vapour.saturatedPpm(0.5, 3.80)).isCloseTo(18751.5, within(0.1));
  }
}
