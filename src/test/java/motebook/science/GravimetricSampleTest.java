package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GravimetricSampleTest {

  @Test
  void the_printed_example_is_6_26() {
    // Boss and Day, Air Sampling and Industrial Hygiene Engineering: 3.005 mg, 2.0 L/min, 240 min.
    GravimetricSample sample = new GravimetricSample(3.005, 2.0 * 240, 0);
    assertThat(sample.mgPerM3()).isCloseTo(6.26, within(0.005));
    assertThat(sample.belowDetection()).isFalse();
  }

  @Test
  void a_gain_below_the_limit_of_detection_answers_with_that_limit_as_an_upper_bound() {
    // NIOSH 0600: 0.03 mg; the concentration derived.
    for (double net : new double[] {-0.5, 0, 0.029}) {
      GravimetricSample sample = new GravimetricSample(net, 480, 0.03);
      assertThat(sample.belowDetection()).as("%s mg", net).isTrue();
      assertThat(sample.mgPerM3()).isCloseTo(0.0625, within(1e-12));
    }
  }

  @Test
  void a_gain_at_the_limit_of_detection_is_told() {
    assertThat(new GravimetricSample(0.03, 480, 0.03).belowDetection()).isFalse();
  }
}
