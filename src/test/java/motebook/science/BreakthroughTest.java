package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreakthroughTest {
  // OSHA, 10 % breakthrough, toluene: read.
  private static final Breakthrough TOLUENE =
      new Breakthrough(
          List.of(50.0, 100.0, 200.0, 500.0, 1000.0), List.of(1018.0, 562.0, 307.0, 135.0, 72.0));

  private static double life(double ppm, double flow, double humidity, double carbon) {
    return TOLUENE.life(new CartridgeUse(ppm, flow, humidity, carbon));
  }

  @Test
  void between_two_printed_times_it_is_read_log_log() {
    // Derived: the geometric middle of two concentrations has the geometric middle of the times.
    assertThat(life(Math.sqrt(100 * 200.0), 53.3, 50, 52))
        .isCloseTo(Math.sqrt(562 * 307.0), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1", "10", "49.9", "50"})
  void below_50_ppm_the_time_at_50_is_kept(double ppm) {
    assertThat(life(ppm, 53.3, 50, 52)).isEqualTo(1018);
  }

  @Test
  void half_the_flow_or_twice_the_carbon_doubles_and_damp_air_halves() {
    assertThat(life(200, 26.65, 50, 52)).isCloseTo(614, within(1e-9));
    assertThat(life(200, 53.3, 50, 104)).isCloseTo(614, within(1e-9));
    assertThat(life(200, 53.3, 85, 52)).isEqualTo(307);
    assertThat(life(200, 53.3, 85.1, 52)).isEqualTo(153.5);
  }

  @Test
  void the_rule_of_thumb_is_eight_hours_up_to_200_ppm_and_a_fifth_at_ten_times_that() {
    // OSHA, quoting AIHA (read): tenfold the concentration, a fifth of the life; 10^0.7 is 5.01.
    assertThat(RuleOfThumb.life(new CartridgeUse(200, 40, 50, 52))).isEqualTo(480);
    assertThat(RuleOfThumb.life(new CartridgeUse(20, 40, 50, 52))).isEqualTo(480);
    assertThat(RuleOfThumb.life(new CartridgeUse(2000, 40, 50, 52))).isCloseTo(96, within(0.3));
    assertThat(RuleOfThumb.life(new CartridgeUse(200, 80, 90, 52))).isEqualTo(120);
  }
}
