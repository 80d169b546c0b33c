package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import motebook.journal.Settings;
import motebook.model.Refusal;
import motebook.reference.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures are those of limits.csv, where each has its source. */
class LimitFiguresTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          acgih         | 1 mg/m³ inhalable, most woods; 0.5 red cedar
          niosh         | 1 mg/m³ total, all wood
          osha          | 15 mg/m³ total, all wood; 5 mg/m³ respirable, shown only
          great-britain | 3 mg/m³ inhalable, hardwood and board; 5 softwood and red cedar
          australia     | 1 mg/m³ inhalable, hardwood and board; 5 softwood and red cedar
          """)
  void a_set_is_told_by_its_figures_in_force(String set, String told) {
    assertThat(LimitFigures.of(set, DAY)).isEqualTo(told);
  }

  @Test
  void an_edition_that_ends_is_told_until_when_and_one_that_begins_from_when() {
    assertThat(LimitFigures.of("australia"))
        .isEqualTo(
            "1 mg/m³ inhalable, hardwood and board until 2026-11-30;"
                + " 5 softwood and red cedar until 2026-11-30; 0.5 all wood from 2026-12-01");
    assertThat(LimitFigures.of("australia", LocalDate.of(2026, 12, 1)))
        .isEqualTo("0.5 mg/m³ inhalable, all wood");
    assertThat(LimitFigures.of("eu", LocalDate.of(2020, 1, 1)))
        .isEqualTo("none in force on 2020-01-01");
  }

  @Test
  void every_set_has_its_figures() {
    assertThat(LimitFigures.on(DAY).keySet())
        .containsExactlyElementsOf(Reference.shipped().limitSets());
    assertThat(LimitFigures.on(DAY).values()).allMatch(told -> told.contains(" mg/m³ "));
  }

  @Test
  void a_set_that_there_is_not_is_answered_with_all_and_their_figures() {
    assertThatThrownBy(
            () -> Choices.of("limits").set(new Settings("me", "shop", "acgih", 1.5, 30), "mars"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("niosh (1 mg/m³ total, all wood), osha (15 mg/m³ total, all wood;");
  }
}
