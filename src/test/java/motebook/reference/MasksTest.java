package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import motebook.model.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MasksTest {
  private final Masks masks = Masks.shipped();

  @Test
  void every_row_has_a_source() {
    assertThat(masks.factors()).hasSize(43).allSatisfy(f -> assertThat(f.source()).isNotBlank());
    assertThat(masks.classes()).hasSize(45).allSatisfy(c -> assertThat(c.basis()).isNotBlank());
    assertThat(masks.hazards()).hasSize(9).allSatisfy(h -> assertThat(h.source()).isNotBlank());
  }

  // 29 CFR 1910.134(d)(3)(i)(A) Table 1, read in a dated eCFR copy.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "air-purifying | quarter mask | 5",
        "air-purifying | filtering facepiece | 10",
        "air-purifying | half mask | 10",
        "air-purifying | full facepiece | 50",
        "powered air-purifying | half mask | 50",
        "powered air-purifying | full facepiece | 1000",
        "powered air-purifying | helmet or hood | 25",
        "powered air-purifying | loose-fitting facepiece | 25",
        "supplied air, demand | half mask | 10",
        "supplied air, demand | full facepiece | 50",
        "supplied air, continuous flow | half mask | 50",
        "supplied air, continuous flow | full facepiece | 1000",
        "supplied air, continuous flow | helmet or hood | 25",
        "supplied air, continuous flow | loose-fitting facepiece | 25",
        "supplied air, pressure-demand | half mask | 50",
        "supplied air, pressure-demand | full facepiece | 1000",
      })
  void the_factors_of_osha_stand_for_every_element(String kind, String facepiece, double apf) {
    assertThat(masks.factors("osha", kind, facepiece))
        .singleElement()
        .satisfies(factor -> assertThat(factor.apf()).isEqualTo(apf))
        .satisfies(factor -> assertThat(factor.rating()).isEmpty());
  }

  // NIOSH 96-101, II.D, read as reprinted elsewhere; EN 149 and EN 143 second-hand.
  @ParameterizedTest
  @CsvSource({
    "N95,DIRTY",
    "organic vapour and N95,DIRTY",
    "R95,OIL",
    "OV/R95,OIL",
    "P100,OPEN",
    "HE,OPEN",
    "FFP3,SHIFT",
    "FFP2 NR D,SHIFT",
    "FFP3 R,OPEN",
    "P3 R D,OPEN",
    "P3,OPEN",
    "P2 NR,SHIFT",
    "organic vapour,OPEN"
  })
  void what_is_printed_on_an_element_tells_what_ends_it(String name, ElementClass.Service service) {
    assertThat(masks.elementClass(name).orElseThrow().service()).isEqualTo(service);
  }

  // HSG53 and EN 529, read in a reproduction; adding a gas element lowers the factor.
  @ParameterizedTest
  @CsvSource({
    "filtering facepiece,FFP1,4",
    "filtering facepiece,FFP2,10",
    "filtering facepiece,FFP3,20",
    "half mask,P1,4",
    "half mask,P2,10",
    "half mask,P3,20",
    "half mask,gas,10",
    "half mask,gas and P3,10",
    "full facepiece,P2,10",
    "full facepiece,P3,40",
    "full facepiece,gas,20",
    "full facepiece,gas and P3,20"
  })
  void the_factors_of_the_uk_stand_for_one_rating(String facepiece, String rating, double apf) {
    assertThat(masks.factors("uk", "air-purifying", facepiece))
        .filteredOn(factor -> factor.rating().equals(rating))
        .extracting(ProtectionFactor::apf)
        .containsExactly(apf);
  }

  @Test
  void the_hoods_of_the_uk_are_rated_as_a_whole() {
    assertThat(masks.factors("uk", "powered air-purifying", "helmet or hood"))
        .extracting(ProtectionFactor::rating)
        .containsExactly("TH1", "TH2", "TH3");
  }

  // HSG53, from memory: a tight powered mask is rated as a whole, the factor of its highest class
  // depends on the facepiece; an airline takes no element.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "powered air-purifying | half mask TM1 | 10 | EACH_EXERCISE",
        "powered air-purifying | half mask TM2 | 20 | EACH_EXERCISE",
        "powered air-purifying | half mask TM3 | 20 | EACH_EXERCISE_OR_QUALITATIVE",
        "powered air-purifying | full mask TM3 | 40 | EACH_EXERCISE",
        "supplied air, light duty | hood LDH2 | 20 | NONE",
        "supplied air, light duty | LDH3 | 40 | NONE",
        "supplied air, continuous flow | hood | 40 | NONE",
        "supplied air, continuous flow | half mask | 20 | EACH_EXERCISE_OR_QUALITATIVE",
        "supplied air, continuous flow | full mask | 40 | EACH_EXERCISE"
      })
  void the_tight_powered_masks_and_the_airlines_of_the_uk_have_their_factors(
      String kind, String facepiece, double apf, ProtectionFactor.FitRule rule) {
    assertThat(masks.factors("uk", kind, facepiece))
        .filteredOn(
            factor -> factor.rating().isEmpty() || facepiece.endsWith(" " + factor.rating()))
        .singleElement()
        .satisfies(factor -> assertThat(factor.apf()).isEqualTo(apf))
        .satisfies(factor -> assertThat(factor.fitRule()).isEqualTo(rule));
  }

  // 29 CFR 1910.134(f)(6) and (f)(8): a qualitative test caps negative-pressure masks alone, and an
  // airline in demand mode is one.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "air-purifying | full facepiece | QUALITATIVE_TO_10",
        "supplied air, demand | full facepiece | QUALITATIVE_TO_10",
        "powered air-purifying | full facepiece | EITHER",
        "supplied air, continuous flow | half mask | EITHER",
        "supplied air, pressure-demand | full facepiece | EITHER",
        "powered air-purifying | helmet or hood | NONE"
      })
  void which_fit_test_gives_the_factor_depends_on_the_pressure_in_the_mask(
      String kind, String facepiece, ProtectionFactor.FitRule rule) {
    assertThat(masks.factors("osha", kind, facepiece))
        .extracting(ProtectionFactor::fitRule)
        .containsOnly(rule);
  }

  @Test
  void what_the_table_has_no_row_for_is_not_allowed() {
    assertThat(masks.factors("osha", "supplied air, demand", "helmet or hood")).isEmpty();
    assertThat(masks.factors("osha", "supplied air, pressure-demand", "helmet or hood")).isEmpty();
    assertThat(masks.factors("uk", "air-purifying", "quarter mask")).isEmpty();
  }

  @Test
  void only_what_seals_on_the_face_is_tight() {
    assertThat(masks.factors())
        .filteredOn(factor -> !factor.seal().tight())
        .extracting(ProtectionFactor::facepiece)
        .containsOnly(
            "helmet or hood",
            "loose-fitting facepiece",
            "helmet or hood LDH1",
            "helmet or hood LDH2",
            "helmet or hood LDH3");
  }

  @Test
  void every_rating_of_an_element_has_a_row_and_every_row_an_element() {
    List<String> rated =
        masks.classes().stream().map(ElementClass::rating).filter(r -> !r.isEmpty()).toList();
    List<String> rows =
        masks.factors().stream().map(ProtectionFactor::rating).filter(r -> !r.isEmpty()).toList();
    assertThat(rated).containsAll(rows);
    assertThat(rows).containsAll(rated);
  }

  // 42 CFR 84: 95, 99 and 99.97 %.
  @ParameterizedTest
  @CsvSource({
    "N95,n,95",
    "N100,n,99.97",
    "R99,r,99",
    "P95,p,95",
    "p100,p,99.97",
    "hepa,p,99.97",
    "OV/P100,p,99.97"
  })
  void a_particulate_class_has_its_letter_and_its_efficiency(
      String name, String letter, double efficiency) {
    ElementClass found = masks.elementClass(name).orElseThrow();
    assertThat(found.letter()).isEqualTo(letter);
    assertThat(found.efficiencyPercent()).isEqualTo(efficiency);
    assertThat(found.particulate()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "wood-dust,n95,true",
    "wood-dust,ffp1,true",
    "wood-dust,organic vapour,false",
    "wood-dust,organic vapour and P3,true",
    "solvent-vapour,organic-vapour,true",
    "solvent-vapour,P100,false",
    "solvent-vapour,multi-gas,true",
    "solvent-vapour,formaldehyde,false",
    "formaldehyde,P100,false",
    "formaldehyde,organic vapour,false",
    "formaldehyde,formaldehyde,true",
    "formaldehyde,ABEK,false",
    "ammonia,ammonia,true",
    "ammonia,organic vapour,false",
    "methylene-chloride,multi-gas,false",
    "methanol,organic vapour,false",
    "isocyanates,organic vapour and P100,false",
    "lead,N95,false",
    "lead,P100,true",
    "lead,P3,true",
    "arsenic-chromium,P95,false",
    "arsenic-chromium,HE,true"
  })
  void an_element_holds_what_it_is_made_for(String hazard, String name, boolean holds) {
    assertThat(masks.hazard(hazard).heldBy(masks.elementClass(name).orElseThrow()))
        .isEqualTo(holds);
  }

  @Test
  void no_two_classes_answer_to_one_name() {
    assertThat(
            masks.classes().stream().flatMap(c -> c.names().stream().map(Text::folded).distinct()))
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource({"hood,helmet or hood", "Half Mask,half mask", "half facepiece,half mask"})
  void a_facepiece_answers_to_its_names(String name, String facepiece) {
    assertThat(masks.factors("OSHA", "Powered air purifying", name))
        .extracting(ProtectionFactor::facepiece)
        .containsExactly(facepiece);
  }

  @Test
  void every_solvent_is_a_hazard() {
    assertThat(Solvents.shipped().all())
        .allSatisfy(solvent -> assertThat(masks.hazardOf(solvent).advice()).isNotBlank());
    assertThat(masks.hazardOf(Solvents.shipped().find("methanol").orElseThrow()).suppliedAirOnly())
        .isTrue();
  }

  @Test
  void heavier_work_breathes_more() {
    // Judgement between published figures, see the table.
    assertThat(masks.litresPerMin(Operation.WorkRate.LIGHT)).isEqualTo(20);
    assertThat(masks.litresPerMin(Operation.WorkRate.MODERATE)).isEqualTo(40);
    assertThat(masks.litresPerMin(Operation.WorkRate.HEAVY)).isEqualTo(60);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "protection-factors.csv | ,apf, | ,factor, | protection-factors.csv, row 1, column apf: missing",
        "protection-factors.csv | half,5,qualitative-to-10 | half,5,none | protection-factors.csv, row 2, column fit_rule: one for what seals",
        "protection-factors.csv | loose,25,none | loose,25,either | protection-factors.csv, row 8, column fit_rule: one for what seals",
        "protection-factors.csv | half,5, | half,1, | protection-factors.csv, row 2, column apf: a factor is above 1",
        "protection-factors.csv | half,5, | snug,5, | protection-factors.csv, row 2, column seal: unknown",
        "protection-factors.csv | osha,air-purifying,quarter | oasha,air-purifying,quarter | protection-factors.csv, row 2, column scheme: unknown",
        "protection-factors.csv | osha,air-purifying,quarter mask | osha,air-purifying,half mask | protection-factors.csv, row 4, column facepiece: the same",
        "elements.csv | ,n,95,dirty | ,n,,dirty | elements.csv, row 2, column efficiency_percent: above 0",
        "elements.csv | ,n,95,dirty | ,x,95,dirty | elements.csv, row 2, column letter: unknown",
        "elements.csv | ,n,95,dirty | ,n,95,filthy | elements.csv, row 2, column service: unknown",
        "elements.csv | organic-vapour,,,,gas | organic-vapour,,,shift,gas | elements.csv, row 30, column service: only what",
        "elements.csv | ,particulate,n,95,dirty | ,dust,n,95,dirty | elements.csv, row 2, column holds: unknown: \"dust\"",
        "hazards.csv | ,dust,particulate | ,smoke,particulate | hazards.csv, row 2, column kind: unknown",
        "hazards.csv | ,finish-vapour, | ,finish, | hazards.csv, row 3, column cautions: unknown: \"finish\"",
        "hazards.csv | ,,ammonia, | ,,, | hazards.csv, row 1, column solvents: no row for AMMONIA",
        "breathing-rates.csv | moderate,40 | heavy,40 | breathing-rates.csv, row 1, column work_rate: no row MODERATE",
      })
  void a_wrong_table_is_told_by_row_and_column(String table, String was, String is, String told) {
    assertThatThrownBy(
            () ->
                Masks.edited(
                    name -> text -> name.equals(table) ? Edits.replaceFirst(text, was, is) : text))
        .isInstanceOf(WrongTable.class)
        .hasMessageStartingWith(told);
  }
}
