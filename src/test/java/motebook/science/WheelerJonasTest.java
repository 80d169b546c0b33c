package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Regression on the equations, whose constants are from memory: none of it is published. */
class WheelerJonasTest {
  private static final CartridgeUse TOLUENE_1000 = new CartridgeUse(1000, 53.3, 50, 52);

  private static WheelerJonas.Vapour toluene(double refractiveIndex) {
    return new WheelerJonas.Vapour(92.14, 0.867, refractiveIndex, 2.92, 3.80);
  }

  @Test
  void toluene_at_1000_ppm_has_the_derived_terms() {
    WheelerJonas.Vapour toluene = toluene(1.4961);
    assertThat(toluene.polarisation()).isCloseTo(31.05, within(0.005));
    assertThat(WheelerJonas.capacity(toluene, 1000)).isCloseTo(0.3430, within(0.0001));
    assertThat(WheelerJonas.ratePerMin(toluene)).isCloseTo(4745, within(0.5));
    // 71.3 is the regression as noted, for a vapour pressure at 22 degrees that is not; with the
    // one
    // interpolated here the equation, worked out apart from this code, gives 71.2493.
    assertThat(WheelerJonas.life(toluene, TOLUENE_1000)).isCloseTo(71.249, within(0.0005));
    assertThat(WheelerJonas.life(toluene, TOLUENE_1000)).isCloseTo(71.3, within(0.1));
  }

  @Test
  void toluene_with_the_shipped_refractive_index_lasts_71_15_minutes() {
    WheelerJonas.Vapour toluene = toluene(1.4941);
    assertThat(toluene.polarisation()).isCloseTo(30.94, within(0.005));
    assertThat(WheelerJonas.life(toluene, TOLUENE_1000)).isCloseTo(71.15, within(0.005));
  }

  @Test
  void the_vapour_pressure_at_22_degrees_lies_on_the_line_between_the_printed_ones() {
    // Derived: ln p straight in 1/T between 2.92 kPa at 20 and 3.80 kPa at 25 degrees.
    assertThat(toluene(1.4941).kPa()).isCloseTo(3.24794, within(0.00001));
  }

  @Test
  void a_bed_too_small_for_the_flow_lasts_no_time() {
    CartridgeUse use = new CartridgeUse(1000, 53.3, 50, 0.01);
    assertThat(WheelerJonas.life(toluene(1.4941), use)).isZero();
  }
}
