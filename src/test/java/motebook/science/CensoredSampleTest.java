package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CensoredSampleTest {
  private static final double[] NONE = {};

  @Test
  void the_fit_is_that_of_other_programs() {
    // The fifteen of the strategy book, the two lowest known only as below 1.5: SciPy 1.17.1,
    // lognormal.py.
    LognormalSample fifteen =
        CensoredSample.fit(
            new double[] {1.8, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9},
            new double[] {1.5, 1.5});
    assertThat(fifteen.gm()).isCloseTo(2.47656793, within(1e-6));
    assertThat(fifteen.gsd()).isCloseTo(1.49092771, within(1e-6));
    // R 4.2.2, survival 3.5-3: survreg(Surv(x, told, type = "left") ~ 1, dist = "lognormal"), and
    // the same from optim(); statistics.R.
    LognormalSample half =
        CensoredSample.fit(new double[] {0.05, 0.12, 0.4}, new double[] {0.03, 0.03, 0.1});
    assertThat(half.gm()).isCloseTo(0.0418482, within(1e-6));
    assertThat(half.gsd()).isCloseTo(4.392652, within(2e-5));
    assertThat(half.n()).as("all of them").isEqualTo(6);
  }

  @Test
  void a_limit_of_detection_far_above_all_says_nothing() {
    // Without the far one the likelihood is that of the three, whose spread has the divisor n.
    double[] told = {0.5, 1, 2};
    LognormalSample far = CensoredSample.fit(told, new double[] {1e6});
    assertThat(far.gm()).isCloseTo(1, within(1e-9));
    assertThat(far.logSd()).isCloseTo(Math.log(2) * Math.sqrt(2 / 3.0), within(1e-9));
  }

  @Test
  void the_lower_the_limit_of_detection_the_lower_the_middle() {
    double[] told = {0.5, 1, 2};
    double before = CensoredSample.fit(told, new double[] {1}).logMean();
    for (double below : new double[] {0.5, 0.1, 1e-3, 1e-6, 1e-12}) {
      double mean = CensoredSample.fit(told, new double[] {below}).logMean();
      assertThat(mean).isLessThan(before);
      before = mean;
    }
  }

  @Test
  void one_figure_or_none_below_detection_is_no_such_sample() {
    assertThatThrownBy(() -> CensoredSample.fit(new double[] {1, 1}, new double[] {0.5}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CensoredSample.fit(new double[] {1, 2}, NONE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
