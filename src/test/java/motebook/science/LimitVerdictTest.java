package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitVerdictTest {
  private static final double[] NONE = {};

  @ParameterizedTest
  @CsvSource({
    // EN 689:2018 preliminary test (memory): 3 results below 10 %, 4 below 15 %, 5 below 20 %; any
    // above the limit fails.
    "0.09 0.05 0.02, KEPT",
    "0.11 0.05 0.02, MORE_RESULTS_NEEDED",
    "0.14 0.05 0.02 0.03, KEPT",
    "0.16 0.05 0.02 0.03, MORE_RESULTS_NEEDED",
    "0.19 0.05 0.02 0.03 0.04, KEPT",
    "0.21 0.05 0.02 0.03 0.04, MORE_RESULTS_NEEDED",
    "0.09 1.01 0.02, NOT_KEPT",
    "0.01 0.01, MORE_RESULTS_NEEDED",
    // Group test with the fifteen values of Mulhausen and Damiano 1998, Table V.2, at limits of 5.5
    // and 5.4: their upper limit at 70 % confidence is 5.409 (lognormal.py).
    "0.236364 0.327273 0.218182 0.818182 0.363636 0.381818 1 0.4 0.545455 0.436364 0.454545 0.454545 0.636364 0.509091 0.527273, KEPT",
    "0.240741 0.333333 0.222222 0.833333 0.37037 0.388889 1.01852 0.407407 0.555556 0.444444 0.462963 0.462963 0.648148 0.518519 0.537037, NOT_KEPT"
  })
  void results_as_shares_of_the_limit(String shares, LimitVerdict verdict) {
    double[] results =
        Arrays.stream(shares.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    assertThat(LimitVerdict.of(results, NONE, Optional.of(LognormalSample.of(results)), 1))
        .isEqualTo(verdict);
  }

  @Test
  void three_below_a_tenth_pass_the_first_test_whether_they_have_a_figure_or_not() {
    assertThat(LimitVerdict.of(NONE, new double[] {0.09, 0.05, 0.05}, Optional.empty(), 1))
        .isEqualTo(LimitVerdict.KEPT);
    assertThat(LimitVerdict.of(new double[] {0.05}, new double[] {0.09, 0.03}, Optional.empty(), 1))
        .isEqualTo(LimitVerdict.KEPT);
    assertThat(LimitVerdict.of(NONE, new double[] {0.11, 0.05, 0.05}, Optional.empty(), 1))
        .isEqualTo(LimitVerdict.MORE_RESULTS_NEEDED);
  }

  @Test
  void a_limit_of_detection_over_the_limit_decides_nothing() {
    assertThat(LimitVerdict.of(NONE, new double[] {2, 0.05, 0.05}, Optional.empty(), 1))
        .isEqualTo(LimitVerdict.MORE_RESULTS_NEEDED);
  }

  @Test
  void equal_results_give_no_certainty() {
    double[] equal = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
    assertThat(LimitVerdict.of(equal, NONE, Optional.of(LognormalSample.of(equal)), 1))
        .isEqualTo(LimitVerdict.MORE_RESULTS_NEEDED);
  }

  @ParameterizedTest
  @CsvSource({"0.9,0", "1,0", "1.1,1", "10,1", "11,2", "50,2", "51,3", "100,3", "101,4"})
  void the_five_bands_end_at_1_10_50_and_100_percent(double percent, int band) {
    // AIHA strategy book, 2015 (memory).
    assertThat(ExposureBand.of(percent, 100)).isEqualTo(band);
  }
}
