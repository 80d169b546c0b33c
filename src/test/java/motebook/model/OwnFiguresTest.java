package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OwnFiguresTest {

  @ParameterizedTest
  @EnumSource(OwnFigure.class)
  void what_is_shipped_is_allowed_and_not_kept(OwnFigure figure) {
    OwnFigures same = OwnFigures.SHIPPED.with(figure, figure.shipped());
    assertThat(same.chosen()).isEmpty();
    assertThat(same.get(figure)).isEqualTo(figure.shipped());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CARTRIDGE_SAFETY_FRACTION|0|must lie between 0.1 and 1",
        "CARTRIDGE_SAFETY_FRACTION|1.01|must lie between 0.1 and 1",
        "CARTRIDGE_SAFETY_FRACTION|NaN|must lie between 0.1 and 1",
        "CARTRIDGE_HUMIDITY|101|must lie between 0 and 100 %",
        "OPENED_GAS_MONTHS|2.5|is a whole number of months: got 2.5",
        "FIT_MONTHS_OSHA|13|must lie between 1 and 12 months",
        "TRAINING_MONTHS|13|must lie between 1 and 12 months",
        "EXAMINATION_MONTHS|15|must lie between 1 and 14 months",
        "SOON_DAYS|-1|must lie between 0 and 90 days"
      })
  void what_no_rule_allows_is_refused(OwnFigure figure, double value, String why) {
    assertThatThrownBy(() -> OwnFigures.SHIPPED.with(figure, value))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(figure.key())
        .hasMessageContaining(why);
  }

  @Test
  void one_figure_is_chosen_without_the_others() {
    OwnFigures own =
        OwnFigures.SHIPPED.with(OwnFigure.FIT_MONTHS_UK, 24).with(OwnFigure.SOON_DAYS, 7);
    assertThat(own.whole(OwnFigure.FIT_MONTHS_UK)).isEqualTo(24);
    assertThat(own.whole(OwnFigure.FIT_MONTHS_OSHA)).isEqualTo(12);
    assertThat(own.with(OwnFigure.FIT_MONTHS_UK, 12).chosen())
        .containsOnlyKeys(OwnFigure.SOON_DAYS);
  }

  @Test
  void whose_vapour_limits_count_is_said_by_a_word() {
    assertThat(VapourLimits.of("NIOSH")).isEqualTo(VapourLimits.NIOSH);
    assertThatThrownBy(() -> VapourLimits.of("hse"))
        .isInstanceOf(Refusal.class)
        .hasMessage("The vapours are held against stricter, osha or niosh: got \"hse\".");
  }
}
