package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FinishesTest {
  private final Finishes finishes = Finishes.shipped();

  @Test
  void sixteen_finishes_are_there_each_with_its_source() {
    assertThat(finishes.all())
        .hasSize(16)
        .allSatisfy(finish -> assertThat(finish.basis()).isNotBlank());
  }

  @Test
  void the_solvents_of_every_finish_add_up_to_all_of_its_vapour() {
    assertThat(finishes.all())
        .allSatisfy(
            finish ->
                assertThat(finish.solvents().values().stream().mapToDouble(x -> x).sum())
                    .as(finish.key())
                    .isCloseTo(1, within(1e-9)));
  }

  @Test
  void every_solvent_of_every_finish_has_a_molar_mass_and_a_limit() {
    assertThat(finishes.all())
        .flatExtracting(finish -> finish.solvents().keySet())
        .allSatisfy(
            key -> {
              Solvent solvent = Solvents.shipped().withKey(key).orElseThrow();
              assertThat(solvent.weighed()).isTrue();
              assertThat(solvent.limits().of(Solvent.Authority.OSHA).eightHour().isPresent())
                  .isTrue();
              assertThat(solvent.limits().lelPercent().isPresent()).isTrue();
            });
  }

  @Test
  void every_caution_of_every_finish_has_a_sentence() {
    assertThat(finishes.all())
        .flatExtracting(Finish::cautions)
        .allSatisfy(key -> assertThat(Reference.shipped().caution(key).basis()).isNotBlank());
    assertThat(finishes.finish("two-part-polyurethane").cautions()).contains(Finish.ISOCYANATES);
    assertThat(finishes.finish("conversion-varnish").cautions()).contains(Finish.FORMALDEHYDE);
  }

  @Test
  void no_two_finishes_answer_to_the_same_name() {
    List<String> names = new ArrayList<>();
    finishes
        .all()
        .forEach(f -> f.names().stream().map(Text::folded).distinct().forEach(names::add));
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void half_a_litre_of_lacquer_gives_off_345_grams() {
    // Derived: 500 mL at 690 g/L.
    assertThat(finishes.finish("lacquer").mg(500)).isEqualTo(345_000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "toluene 0.30 acetone 0.05 mek | toluene 0.31 acetone 0.05 mek | solvents: solvents and shares that add to 1",
        "toluene 0.30 acetone 0.05 mek | toluene 0.30 acetone 0.O5 mek | solvents: no number",
        "toluene 0.30 acetone 0.05 mek | toluen 0.30 acetone 0.05 mek | solvents: \"toluen\" is not in solvents.csv",
        "toluene 0.30 acetone 0.05 mek | isocyanates 0.30 acetone 0.05 mek | solvents: \"isocyanates\" is not in",
        "toluene 0.30 acetone 0.05 mek | toluene 0.30 toluene 0.05 mek | solvents: \"toluene\" comes twice",
        ",fire,C, | ,fyre,C, | cautions: \"fyre\" is not in cautions.csv",
        ",690,550,780, | ,990,550,780, | volatile_g_l: 990.0 lies outside",
        ",0.95,1.5, | ,1.95,1.5, | within_session: a share is at most 1",
        ",0.95,1.5, | ,0.95,0, | later_rate_per_h: must be above 0",
      })
  void a_wrong_table_is_told_by_row_and_column(String was, String is, String told) {
    assertThatThrownBy(
            () ->
                Finishes.edited(
                    name ->
                        text ->
                            name.equals("finishes.csv") ? Edits.replaceFirst(text, was, is) : text))
        .isInstanceOf(WrongTable.class)
        .hasMessageStartingWith("finishes.csv, row 2, column " + told);
  }

  @Test
  void a_data_sheet_takes_the_place_of_the_row_whose_name_it_bears() {
    OwnFinish sheet =
        new OwnFinish("Nitrocellulose Lacquer", "lacquer", 640, Map.of("toluene", 1.0));
    Finishes own = finishes.with(List.of(sheet));
    Finish lacquer = own.finish("lacquer");
    assertThat(own.all()).hasSize(16);
    assertThat(lacquer.solvents()).containsExactly(Map.entry("toluene", 1.0));
    assertThat(lacquer.volatileGPerL()).isEqualTo(Figure.exactly(640));
    assertThat(lacquer.withinSession()).isEqualTo(0.95);
    assertThat(lacquer.names()).contains("lacquer", "nitro lacquer");
  }

  @Test
  void a_data_sheet_under_a_new_name_stands_beside_the_rows() {
    OwnFinish sheet = new OwnFinish("Quick Clear", "oil-varnish", 380, Map.of("turpentine", 1.0));
    Finishes own = finishes.with(List.of(sheet));
    assertThat(own.all()).hasSize(17);
    assertThat(own.finish("quick-clear").cautions()).containsExactly("fire", "oily-rags");
    assertThat(own.named("quick CLEAR")).map(Finish::key).contains("quick-clear");
    assertThatThrownBy(() -> finishes.finish("quick-clear"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void shares_rounded_by_a_data_sheet_are_made_whole_and_others_refused() {
    OwnFinish rounded = new OwnFinish("x", "lacquer", 640, Map.of("toluene", 0.2, "acetone", 0.79));
    assertThat(rounded.solvents().values().stream().mapToDouble(x -> x).sum())
        .isCloseTo(1, within(1e-12));
    assertThatThrownBy(() -> new OwnFinish("x", "lacquer", 640, Map.of("toluene", 0.2)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("must add to 1")
        .hasMessageContaining("add to 0.2.");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 2001, Double.NaN})
  void an_impossible_volatile_content_is_refused(double gramsPerLitre) {
    assertThatThrownBy(() -> new OwnFinish("x", "lacquer", gramsPerLitre, Map.of("toluene", 1.0)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("volatile content");
  }
}
