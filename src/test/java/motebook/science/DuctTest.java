package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DuctTest {

  @Test
  void a_four_inch_duct_at_4000_feet_a_minute_moves_349_cubic_feet() {
    // Derived on the area of a circle: 0.08727 ft2, 349.1 cfm.
    assertThat(Duct.areaFt2(4)).isCloseTo(0.08727, within(5e-6));
    assertThat(4000 * Duct.areaFt2(4)).isCloseTo(349.1, within(0.05));
  }
}
