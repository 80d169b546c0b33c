package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolventsTest {
  private final Solvents solvents = Solvents.shipped();

  @Test
  void every_solvent_and_every_compound_of_the_breakthrough_table_is_there_with_its_source() {
    assertThat(solvents.all()).hasSize(25).allSatisfy(s -> assertThat(s.basis()).isNotBlank());
    assertThat(solvents.all()).filteredOn(s -> s.breakthrough().isPresent()).hasSize(12);
  }

  @ParameterizedTest
  @CsvSource({
    "Toluene,toluene",
    "108-88-3,toluene",
    "xylene,xylenes",
    "m-xylene,xylenes",
    "108-38-3,xylenes",
    "n-butanol,butanol",
    "1-butanol,butanol",
    "butyl acetate,butyl-acetate",
    "2-propanol,isopropanol",
    "2-butoxyethanol,glycol-ether",
    "sec-butanol,sec-butanol",
    "allyl-alcohol,allyl-alcohol",
    "dichloromethane,methylene-chloride"
  })
  void a_solvent_answers_to_its_names_and_its_number(String name, String key) {
    assertThat(solvents.find(name)).map(Solvent::key).contains(key);
  }

  // Ceilings and short-term limits: 29 CFR 1910.1052(c) and 1910.1048(c) read; 40 CFR 751 and the
  // OSHA, NIOSH, EU and GB lists from memory, as each row says.
  @ParameterizedTest
  @CsvSource({
    "toluene,OSHA,200,,300",
    "toluene,NIOSH,100,150,",
    "toluene,GB,50,100,",
    "butanol,OSHA,100,,",
    "butanol,NIOSH,,,50",
    "butanol,GB,,50,",
    "mineral-spirits,NIOSH,62,,319",
    "methylene-chloride,OSHA,25,125,",
    "methylene-chloride,EPA,2,16,",
    "formaldehyde,OSHA,0.75,2,",
    "formaldehyde,NIOSH,0.016,,0.1",
    "acetone,EU,500,,",
    "isocyanates,OSHA,,,"
  })
  void a_ceiling_is_never_a_limit_over_eight_hours(
      String key, Solvent.Authority authority, Double eight, Double quarter, Double ceiling) {
    Solvent.Ppm ppm = solvents.withKey(key).orElseThrow().limits().of(authority);
    assertThat(ppm).isEqualTo(new Solvent.Ppm(of(eight), of(quarter), of(ceiling)));
  }

  private static OptionalDouble of(Double ppm) {
    return ppm == null ? OptionalDouble.empty() : OptionalDouble.of(ppm);
  }

  @Test
  void what_is_dangerous_at_once_is_above_every_limit_and_has_its_source() {
    assertThat(solvents.all())
        .filteredOn(solvent -> solvent.limits().idlhPpm().isPresent())
        .hasSize(18)
        .allSatisfy(
            solvent -> {
              assertThat(solvent.limits().acuteBasis()).contains("IDLH");
              assertThat(solvent.limits().occupational().values())
                  .flatExtracting(Solvent.Ppm::eightHour, Solvent.Ppm::shortTerm)
                  .allSatisfy(
                      limit ->
                          assertThat(((OptionalDouble) limit).orElse(0))
                              .isLessThan(solvent.limits().idlhPpm().orElseThrow()));
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "solvents.csv | ,density_g_ml, | ,density, | solvents.csv, row 1, column density_g_ml: missing",
        "solvents.csv | ,0.867,2.92, | ,heavy,2.92, | solvents.csv, row 2, column density_g_ml: no number",
        "solvents.csv | ,0.867,2.92, | ,-1,2.92, | solvents.csv, row 2, column density_g_ml: must be finite and not negative",
        "solvents.csv | ,0.867,2.92, | ,0,2.92, | solvents.csv, row 2, column density_g_ml: must be above 0",
        "solvents.csv | ,2.92,3.80, | ,3.92,3.80, | solvents.csv, row 2, column vapour_kpa_25: must be above",
        "solvents.csv | ,1.4941, | ,0.4941, | solvents.csv, row 2, column refractive_index: a liquid's",
        "solvents.csv | ,organic-vapour,no,toluene, | ,carbon,no,toluene, | solvents.csv, row 2, column element: unknown",
        "solvents.csv | ,organic-vapour,no,toluene, | ,organic-vapour,no,tolueen, | solvents.csv, row 2, column breakthrough: \"tolueen\" is not in",
        "solvents.csv | ,organic-vapour,no,toluene, | ,organic-vapour,maybe,toluene, | solvents.csv, row 2, column light_alcohol: yes or no",
        "solvents.csv | ,organic-vapour,no,toluene, | ,none,no,toluene, | solvents.csv, row 2, column advice: said of",
        "solvents.csv | ,39.8, | ,warm, | solvents.csv, row 17, column boiling_c: no number",
        "solvents.csv | ,200,100,150, | ,200,-100,150, | solvents.csv, row 2, column niosh_rel_ppm: must be finite",
        "solvents.csv | ,idlh_ppm, | ,idlh, | solvents.csv, row 1, column idlh_ppm: missing",
        "solvents.csv | ,300,,,,500, | ,0,,,,500, | solvents.csv, row 2, column osha_ceiling_ppm: must be above 0",
        "breakthrough-10-percent.csv | ,ppm_200, | ,ppm_250, | breakthrough-10-percent.csv, row 1, column ppm_200: missing",
        "breakthrough-10-percent.csv | ,562, | ,x, | breakthrough-10-percent.csv, row 2, column ppm_100: no number",
        "breakthrough-10-percent.csv | ,562, | ,, | breakthrough-10-percent.csv, row 2, column ppm_100: empty",
        "breakthrough-10-percent.csv | ,562, | ,1562, | breakthrough-10-percent.csv, row 2, column ppm_100: the time must fall",
      })
  void a_wrong_table_is_told_by_row_and_column(String table, String was, String is, String told) {
    assertThatThrownBy(
            () ->
                Solvents.edited(
                    name -> text -> name.equals(table) ? Edits.replaceFirst(text, was, is) : text))
        .isInstanceOf(WrongTable.class)
        .hasMessageStartingWith(told);
  }
}
