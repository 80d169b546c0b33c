package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.science.CartridgeUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CartridgeLifeTest {
  private static final List<Integer> PPM = List.of(50, 100, 200, 500, 1000);

  private static Solvent solvent(String name) {
    return Solvents.shipped().find(name).orElseThrow();
  }

  private static CartridgeLife life(String name, double ppm) {
    return CartridgeLife.of(solvent(name), new CartridgeUse(ppm, 53.3, 50, 52));
  }

  @ParameterizedTest
  @CsvSource({
    // OSHA, 10 % breakthrough times (read): two cartridges of 26 g, 53.3 L/min, 22 degrees.
    "toluene,1018,562,307,135,72",
    "ethylbenzene,1133,604,319,135,70",
    "m-xylene,1143,608,321,136,70",
    "mixed xylenes,1143,608,321,136,70",
    "cumene,1122,586,304,126,64",
    "mesitylene,1159,603,311,128,65",
    "p-cymene,1104,566,289,117,59",
    "ethanol,123,105,85,60,43",
    "isopropanol,425,286,186,101,61",
    "allyl alcohol,789,495,303,152,87",
    "1-propanol,551,364,233,123,73",
    "sec-butanol,773,464,272,130,72",
    "1-butanol,1073,615,345,156,84",
    "butanol,1073,615,345,156,84"
  })
  void every_printed_time_comes_back_at_its_own_concentration(
      String name, double at50, double at100, double at200, double at500, double at1000) {
    assertThat(PPM.stream().map(ppm -> life(name, ppm).table().orElseThrow()))
        .containsExactly(at50, at100, at200, at500, at1000);
  }

  @Test
  void the_carbon_bed_estimate_stays_near_the_printed_times() {
    // The bed term was fitted to the table, 3.5 % root mean square over what has properties.
    double squares = 0;
    int count = 0;
    for (Solvent solvent : Solvents.shipped().all()) {
      if (solvent.breakthrough().isPresent() && solvent.vapour().isPresent()) {
        for (int ppm : PPM) {
          CartridgeLife life = life(solvent.key(), ppm);
          double off = life.wheelerJonas().orElseThrow() / life.table().orElseThrow() - 1;
          squares += off * off;
          count++;
        }
      }
    }
    assertThat(count).isEqualTo(30);
    assertThat(Math.sqrt(squares / count)).isLessThan(0.05);
  }

  @Test
  void the_shortest_that_applies_wins_and_is_named() {
    CartridgeLife thin = life("toluene", 50);
    assertThat(thin.shortest().orElseThrow().basis()).isEqualTo("rule-of-thumb");
    // 480 min at 40 L/min, breathed at 53.3.
    assertThat(thin.shortest().orElseThrow().minutes()).isCloseTo(360.225, within(0.001));
    assertThat(life("ethanol", 200).shortest().orElseThrow().minutes()).isLessThanOrEqualTo(85);
    assertThat(life("cumene", 1000).shortest()).contains(new CartridgeLife.Estimate("table", 64));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ethanol", "isopropanol", "1-propanol", "allyl alcohol", "acetone"})
  void light_alcohols_and_what_boils_at_70_degrees_or_less_have_no_rule_of_thumb(String name) {
    CartridgeLife life = life(name, 100);
    assertThat(life.ruleOfThumb()).isEmpty();
    assertThat(life.shortest()).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "methanol,within minutes",
    "methylene chloride,supplied air",
    "formaldehyde,its own cartridge",
    "isocyanates,supplied air",
    "ammonia,its own cartridge"
  })
  void what_an_organic_vapour_element_does_not_hold_has_no_time_and_says_why(
      String name, String why) {
    CartridgeLife life = life(name, 10);
    assertThat(life.estimates()).isEmpty();
    assertThat(life.shortest()).isEmpty();
    assertThat(life.notes()).singleElement().asString().contains(why);
  }

  @Test
  void above_1000_ppm_there_is_no_time_for_anything() {
    for (Solvent solvent : Solvents.shipped().all()) {
      CartridgeLife life = life(solvent.key(), 1000.1);
      assertThat(life.estimates()).as(solvent.key()).isEmpty();
      assertThat(life.notes()).as(solvent.key()).hasSize(1);
    }
  }

  @Test
  void every_other_solvent_has_a_time_up_to_1000_ppm() {
    assertThat(Solvents.shipped().all())
        .filteredOn(solvent -> solvent.advice().isEmpty())
        .hasSize(20)
        .allSatisfy(solvent -> assertThat(life(solvent.key(), 1000).shortest()).isPresent());
  }

  @Test
  void notes_tell_of_one_shift_storage_and_impossible_air() {
    assertThat(life("acetone", 500).notes()).singleElement().asString().contains("one shift");
    assertThat(life("glycol ether", 1000).notes()).isEmpty();
    assertThat(life("mineral spirits", 1000).notes()).singleElement().asString().contains("hold");
    CartridgeUse slow = new CartridgeUse(20, 20, 50, 52);
    assertThat(CartridgeLife.of(solvent("toluene"), slow).notes())
        .singleElement()
        .asString()
        .contains("several days");
  }
}
