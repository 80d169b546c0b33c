package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceTest {
  private final Reference reference = Reference.shipped();

  @Test
  void every_row_has_a_source() {
    assertThat(reference.operations())
        .hasSize(46)
        .allSatisfy(o -> assertThat(o.basis()).isNotBlank());
    assertThat(reference.materials())
        .hasSize(14)
        .allSatisfy(m -> assertThat(m.basis()).isNotBlank());
    assertThat(reference.limits()).hasSize(17).allSatisfy(l -> assertThat(l.source()).isNotBlank());
    assertThat(reference.controls())
        .hasSize(11)
        .allSatisfy(c -> assertThat(c.rows()).allSatisfy(r -> assertThat(r.basis()).isNotBlank()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "operations.csv | ,grade, | ,mark, | operations.csv, row 1, column grade: missing",
        "operations.csv | ,3.0,A, | ,3.0,E, | operations.csv, row 2, column grade: unknown: \"E\"",
        "operations.csv | ,25,9,62, | ,25,99,62, | operations.csv, row 2, column low_mg_m3: 99.0 is above",
        "operations.csv | ,25,9,62, | ,2.5,9,62, | operations.csv, row 2, column reference_mg_m3: 2.5 lies outside",
        "operations.csv | ,25,9,62, | ,25,0,62, | operations.csv, row 2, column low_mg_m3: a range that starts at 0",
        "operations.csv | ,25,9,62, | ,x,9,62, | operations.csv, row 2, column reference_mg_m3: no number",
        "operations.csv | ,25,9,62, | ,NaN,9,62, | operations.csv, row 2, column reference_mg_m3: must be finite",
        "operations.csv | hand-belt-sanding, | orbital-sanding, | operations.csv, row 3, column key: \"orbital-sanding\" comes twice",
        "materials.csv | ,red-cedar,1.0 | ,redwood,1.0 | materials.csv, row 7, column wood_class: unknown",
        "materials.csv | arsenic-chromium | chrome | materials.csv, row 12, column cautions: \"chrome\" is not in cautions.csv",
        "controls.csv | block-sanding,0.15 | blok-sanding,0.15 | controls.csv, row 2, column serves: \"blok-sanding\" is not in operations.csv",
        "controls.csv | ,0.15,0.06,0.44 | ,1.15,0.06,1.44 | controls.csv, row 2, column pass_factor: no control is held to make dust",
        "operations.csv | ,A,any, | ,A,indoors, | operations.csv, row 2, column where: unknown: \"indoors\"",
        "materials.csv | ,1.0,yes,B | ,1.0,perhaps,B | materials.csv, row 2, column covered_by_limit: yes or no",
        "limits.csv | ,judges, | ,counts, | limits.csv, row 1, column judges: missing",
        "limits.csv | 2017-07-01 | 2017-7-1 | limits.csv, row 7, column valid_from: no date",
        "limits.csv | all except red-cedar | all except teak | limits.csv, row 2, column wood_classes: unknown: \"teak\"",
      })
  void a_wrong_table_is_told_by_row_and_column(String table, String was, String is, String told) {
    assertThatThrownBy(
            () ->
                Reference.edited(
                    name -> text -> name.equals(table) ? Edits.replaceFirst(text, was, is) : text))
        .isInstanceOf(WrongTable.class)
        .hasMessageStartingWith(told);
  }

  /** What a source cannot have measured, in the words of the tables. */
  private static final Pattern NOT_MEASURED =
      Pattern.compile("judgement|back-calculated|no ratio", Pattern.CASE_INSENSITIVE);

  @Test
  void no_figure_is_graded_above_its_own_basis() {
    Map<String, Grade> grades = new LinkedHashMap<>();
    reference.operations().forEach(row -> grades.put(row.key() + ": " + row.basis(), row.grade()));
    reference.materials().forEach(row -> grades.put(row.key() + ": " + row.basis(), row.grade()));
    reference.controls().stream()
        .flatMap(control -> control.rows().stream())
        .forEach(row -> grades.put(row.id() + ": " + row.basis(), row.grade()));
    Finishes.shipped()
        .all()
        .forEach(row -> grades.put(row.key() + ": " + row.basis(), row.grade()));
    assertThat(grades).hasSize(46 + 14 + 18 + 16);
    assertThat(grades)
        .allSatisfy(
            (basis, grade) ->
                assertThat(grade.rough() || !NOT_MEASURED.matcher(basis).find())
                    .as("%s, graded %s", basis, grade)
                    .isTrue());
  }

  @Test
  void no_two_controls_of_one_name_serve_one_operation() {
    for (Control one : reference.controls()) {
      for (Control other : reference.controls()) {
        boolean shared =
            !one.equals(other) && one.names().stream().anyMatch(other.names()::contains);
        assertThat(reference.operations())
            .as("%s and %s", one.key(), other.key())
            .noneMatch(
                operation ->
                    shared
                        && one.rowFor(operation.key()).isPresent()
                        && other.rowFor(operation.key()).isPresent());
      }
    }
    assertThat(reference.control("tool-vacuum").names())
        .containsAnyElementsOf(reference.control("machine-vacuum").names());
  }

  @Test
  void wet_sanding_is_for_the_hand_alone() {
    // Water and a mains tool do not go together.
    assertThat(reference.operations())
        .filteredOn(o -> reference.control("wet-sanding").rowFor(o.key()).isPresent())
        .extracting(Operation::key)
        .containsExactly("block-sanding");
  }

  @Test
  void every_operation_that_makes_dust_and_is_done_by_a_machine_indoors_has_a_control() {
    assertThat(reference.operations())
        .filteredOn(
            o -> o.family() == Operation.Family.SANDING || o.family() == Operation.Family.CUTTING)
        .filteredOn(o -> o.where() == Operation.Where.ANY && !o.key().equals("mortising"))
        .allSatisfy(
            o ->
                assertThat(reference.controls())
                    .as(o.key())
                    .anyMatch(
                        c -> c.actsOn() == Control.ActsOn.SOURCE && c.rowFor(o.key()).isPresent()));
  }

  @Test
  void the_limits_of_a_set_follow_the_class_in_the_air() {
    LocalDate day = LocalDate.of(2026, 3, 2);
    assertThat(reference.limits("acgih", day, Set.of(WoodClass.HARDWOOD)))
        .extracting(Limit::key)
        .containsExactly("acgih-wood");
    assertThat(reference.limits("acgih", day, Set.of(WoodClass.RED_CEDAR, WoodClass.BOARD)))
        .extracting(Limit::key)
        .containsExactly("acgih-wood", "acgih-red-cedar");
    assertThat(reference.limits("eu", day, Set.of(WoodClass.SOFTWOOD))).isEmpty();
  }

  @Test
  void no_wood_dust_limit_covers_lead_or_preservatives() {
    assertThat(reference.materials())
        .filteredOn(material -> !material.coveredByLimit())
        .extracting(Material::key)
        .containsExactly("treated", "old-paint");
  }

  @Test
  void the_respirable_figure_for_nuisance_dust_judges_no_day() {
    assertThat(reference.limits())
        .filteredOn(limit -> !limit.judges())
        .extracting(Limit::key)
        .containsExactly("osha-pnor-respirable");
  }

  @ParameterizedTest
  @CsvSource({"2026-11-30,au-hardwood-2026-11", "2026-12-01,au-wood-2026-12"})
  void an_edition_holds_from_its_first_day_to_its_last(LocalDate day, String key) {
    assertThat(reference.limits("australia", day, Set.of(WoodClass.HARDWOOD)))
        .extracting(Limit::key)
        .containsExactly(key);
  }

  @Test
  void a_control_has_a_row_for_each_group_that_it_serves() {
    Control vacuum = reference.control("tool-vacuum");
    assertThat(vacuum.rowFor("orbital-sanding")).map(r -> r.passFactor().typical()).contains(0.15);
    assertThat(vacuum.rowFor("circular-saw")).map(r -> r.passFactor().typical()).contains(0.5);
    assertThat(vacuum.rowFor("sweeping")).isEmpty();
    assertThat(reference.control("air-cleaner").rowFor("sweeping")).isPresent();
  }

  @Test
  void an_unnamed_material_reads_the_row_unknown() {
    assertThat(reference.material(Optional.empty()).key()).isEqualTo("unknown");
  }

  @Test
  void every_material_is_worked_at_with_the_cancer_caution() {
    assertThat(reference.materials())
        .allSatisfy(m -> assertThat(m.cautions()).contains("nasal-cancer"));
  }
}
