package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class EmissionTest {

  @Test
  void the_fine_share_and_the_unit_are_the_derived_ones() {
    // Derived on the listed equations: about 0.1031 and 0.17668 min/m3.
    assertThat(Emission.FINE_SHARE).isCloseTo(0.1031, within(5e-5));
    assertThat(Emission.MIN_PER_M3).isCloseTo(0.17668, within(5e-6));
  }

  @Test
  void orbital_sanding_of_oak_makes_about_141_5_mg_a_minute() {
    assertThat(Emission.mgPerMin(25, 1, 1)).isCloseTo(141.5, within(0.05));
  }

  @Test
  void an_hour_in_the_clean_default_shop_gives_the_reference_figure_back() {
    double beta = NearField.exchangeM3PerMin(Emission.SHOP_AIR_SPEED_M_PER_MIN);
    double mean = 0;
    double fine = 0;
    for (Dust dust : Dust.values()) {
      double g = Emission.mgPerMin(25, 1, 1) * Emission.share(dust);
      double loss = Loss.rate(1, dust.settlingPerHour(), 0, Emission.SHOP_VOLUME_M3);
      RoomTrace room =
          new RoomTrace(Emission.SHOP_VOLUME_M3, List.of(new Loss(0, 60, loss)), g, 0, 60);
      double part = g / beta + room.mgMinPerM3(0, 60) / 60;
      mean += part;
      fine += dust == Dust.FINE ? part : 0;
    }
    assertThat(mean).isCloseTo(25.0, within(1e-9));
    assertThat(fine / mean).isCloseTo(Emission.FINE_SHARE_OF_AIR, within(1e-12));
  }
}
