package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import motebook.model.Refusal;
import motebook.model.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {

  @ParameterizedTest
  @CsvSource({
    "3200ft3,90.6139090944",
    "3200 FT³,90.6139090944",
    "90,90",
    "90m3,90",
    "90.5 m³,90.5",
    "'90,5 m3',90.5",
    "90l,0.09",
    "0,0",
    "1ft3,0.028316846592"
  })
  void a_volume_is_given_in_cubic_metres(String text, double cubicMetres) {
    assertThat(Quantities.volumeM3("The figure", text, Units.METRIC))
        .isCloseTo(cubicMetres, within(1e-12 * cubicMetres));
  }

  @ParameterizedTest
  @CsvSource({"20ft,6.096", "6.1m,6.1", "6.1,6.1", "1 ft,0.3048", "12in,0.3048"})
  void a_length_is_given_in_metres(String text, double metres) {
    assertThat(Quantities.lengthM("The figure", text, Units.METRIC))
        .isCloseTo(metres, within(1e-12 * metres));
  }

  @ParameterizedTest
  @CsvSource({
    "400cfm,11.3267386368",
    "11.3,11.3",
    "11.3m3/min,11.3",
    "11.3 m³/min,11.3",
    "600m3/h,10"
  })
  void a_flow_is_given_in_cubic_metres_a_minute(String text, double flow) {
    assertThat(Quantities.flowM3PerMin("The figure", text, Units.METRIC))
        .isCloseTo(flow, within(1e-12 * flow));
  }

  @ParameterizedTest
  @CsvSource({"30fpm,9.144", "6,6", "6m/min,6", "6.5 M/MIN,6.5", "2m/s,120"})
  void a_speed_is_given_in_metres_a_minute(String text, double speed) {
    assertThat(Quantities.speedMPerMin("The figure", text, Units.METRIC))
        .isCloseTo(speed, within(1e-12 * speed));
  }

  @ParameterizedTest
  @CsvSource({"640,640", "640g/l,640", "640 G/L,640", "1lb/gal,119.826427"})
  void a_content_is_given_in_grams_a_litre(String text, double gramsPerLitre) {
    assertThat(Quantities.contentGPerL("The figure", text)).isCloseTo(gramsPerLitre, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "NaN", "Infinity", "m3", "ft3 90", ".5m3", "٩٠", "1.2.3", "90 m3 or so"})
  void what_is_no_figure_is_refused(String text) {
    assertThatThrownBy(() -> Quantities.volumeM3("--volume", text, Units.METRIC))
        .isInstanceOf(Refusal.class)
        .hasMessage("--volume needs a number, with or without a unit: got \"%s\".".formatted(text));
  }

  @ParameterizedTest
  @CsvSource({"90cfm,cfm", "1e3,e3", "90gal,gal"})
  void an_unknown_unit_is_refused_with_those_that_are_known(String text, String unit) {
    assertThatThrownBy(() -> Quantities.volumeM3("--volume", text, Units.METRIC))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "--volume knows no unit \"%s\". It knows: m³, m3, ft3, ft³, l.".formatted(unit));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3,200ft3", "3,200", "1,000 m3"})
  void a_comma_that_may_group_thousands_is_refused(String text) {
    assertThatThrownBy(() -> Quantities.volumeM3("--volume", text, Units.METRIC))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("may be a thousands mark or a decimal one")
        .hasMessageContaining("got \"" + text + "\"");
  }

  @Test
  void a_negative_figure_is_refused() {
    assertThatThrownBy(() -> Quantities.flowM3PerMin("--cleaner-flow", "-400cfm", Units.METRIC))
        .isInstanceOf(Refusal.class)
        .hasMessage("--cleaner-flow cannot be negative: got \"-400cfm\".");
  }
}
