package motebook.command;

import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The keys, figures and refusals of the desk calculator that other programs may rely on. */
class ReckonContractTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 29 CFR 1910.1000(d)(1) and (2): the examples printed there.
        "twa 120m@150 120m@75 240m@50 --limit 100 | twa | 81.25",
        "twa 120m@150 120m@75 240m@50 --limit 100 | index | 0.8125",
        "mixture 500/1000 45/200 40/200 | index | 0.925",
        // CDC/HICPAC 2003, Table B.1: 46 min.
        "clear --air-changes 6 --removal 99 | minutes | 46.0517",
        // Derived on the closed form of one room, V 90 m3, Q 1.5 m3/min, G 10 mg/min.
        "air --emission 10 --volume 90 --air-changes 1 --speed 10 --minutes 15 | room_mg_m3 | 1.474661",
        "air --emission 10 --volume 90 --air-changes 1 --speed 10 --minutes 15 | room_mean_mg_m3 | 0.768021",
        "air --emission 10 --volume 90 --air-changes 1 --speed 10 --minutes 15 | near_mg_m3 | 1.972021",
        "air --emission 10 --volume 90 --air-changes 1 --speed 10 --minutes 15 | near_mean_mg_m3 | 1.265381",
        // Brief and Scala, read second-hand.
        "shift --limit 0.05 --hours 12 | factor | 0.5",
        "shift --limit 0.05 --hours 12 | adjusted_limit | 0.025",
        // Derived on the rule of 29 CFR 1910.1025(c)(3).
        "wear --apf 10 --worn 90 | effective_factor | 5.26316",
        // Derived on 29 CFR 1910.134 App. A I.C.2(b)(8).
        "fit 200 180 150 120 90 110 210 --facepiece half | fit_factor | 138.5604",
        // Derived on mass = C Q t 0.06.
        "filter --mass 200 --concentration 5 --flow 40 | hours | 16.66667",
        // Boss and Day, Air Sampling and Industrial Hygiene Engineering: 6.26 mg/m3.
        "sample --mass 3.005 --flow 2.0 --minutes 240 | mg_m3 | 6.260417",
        // Derived: 0.03 mg in 480 L.
        "sample --mass 0.05 --blank 0.04 --flow 2 --minutes 240 | mg_m3 | 0.0625",
        // Derived on the area of a 4-inch circle, 0.0872665 ft2.
        "duct --airflow 350 --diameter 4 | velocity_fpm | 4010.705",
        "duct --velocity 4000 --diameter 4 | airflow_cfm | 349.0659",
        // Teaching slides Analyzing small data sets, 2007: GM 1.06, GSD 1.83, AM 1.24; rest
        // derived.
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | n | 6",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | gm | 1.063993",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | gsd | 1.832418",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | am | 1.236667",
        // R 4.2.2, src/test/R/statistics.R.
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | utl95_95 | 10.0496379",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | utl95_70 | 4.0004266",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | exceedance_percent | 0.530918055",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | exceedance_low90_percent | 0.00390589828",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | exceedance_high90_percent | 14.8883003",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 | mvue | 1.23573613",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 | lognormal_mean | 1.27816653",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 | shapiro_w | 0.974627015",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 | shapiro_p | 0.921947602",
        "stats 0.84 0.98 0.42 1.16 1.36 2.66 --limit 5 | band | 3",
        "stats 0.84 0.98 <0.5 1.16 1.36 2.66 | gm | 1.0445976",
        "stats 0.84 0.98 <0.5 1.16 1.36 2.66 | gsd | 1.8094791",
        "stats 0.84 0.98 <0.5 1.16 1.36 2.66 | censored | 1",
        "trend 1 2 3 4 5 16 7 | sen_low95 | 1",
        "trend 1 2 3 4 5 16 7 | sen_high95 | 3.52086805",
        // Data from memory, Helsel and Hirsch: slope 1, S 19; the rest derived on the formulas.
        "trend 1 2 3 4 5 16 7 | s | 19",
        "trend 1 2 3 4 5 16 7 | variance | 44.333333",
        "trend 1 2 3 4 5 16 7 | z | 2.703381",
        "trend 1 2 3 4 5 16 7 | p_two_sided | 0.006863795",
        "trend 1 2 3 4 5 16 7 | sen_slope | 1",
        "trend -1 -2 -3 | sen_slope | -1",
        // OSHA, 10 % breakthrough table (read).
        "cartridge toluene --ppm 200 | table_minutes | 307",
        "cartridge sec-butanol --ppm 500 | table_minutes | 130",
        // Regression on the equation, not published: 71.15 min.
        "cartridge toluene --ppm 1000 | wheeler_jonas_minutes | 71.1499",
        // 480 min at 40 L/min (OSHA, quoting AIHA).
        "cartridge toluene --ppm 200 --flow 40 | rule_of_thumb_minutes | 480",
        "cartridge butyl acetate --ppm 200 --flow 40 --humidity 86 | rule_of_thumb_minutes | 240",
      })
  void the_calculator_answers_with_flat_objects(String line, String key, double value) {
    assertThat(number(shell.json("reckon " + line), key))
        .isCloseTo(value, within(1e-5 * Math.abs(value)));
  }

  @Test
  void the_calculator_says_whether_a_fit_passes_and_a_sample_tells() {
    String factors = "reckon fit 200 180 150 120 90 110 210 --facepiece ";
    assertThat(shell.json(factors + "half")).containsEntry("pass", true);
    assertThat(shell.json(factors + "full")).containsEntry("pass", false);
    String sample = "reckon sample --flow 2 --minutes 240 --mass ";
    assertThat(shell.json(sample + "0.02")).containsEntry("below_detection", true);
    assertThat(shell.json(sample + "-0.02")).containsEntry("below_detection", true);
    assertThat(shell.json(sample + "0.04")).containsEntry("below_detection", false);
    assertThat(shell.json("reckon stats 1 2 4"))
        .containsEntry("exceedance_percent", null)
        .containsEntry("en689", null)
        .containsEntry("band", null)
        .containsEntry("censored", 0);
    assertThat(shell.json("reckon stats 1 2 4 <0.5 --limit 900"))
        .containsEntry("n", 4)
        .containsEntry("am", null)
        .containsEntry("mvue", null)
        .containsEntry("shapiro_p", null)
        .containsEntry("en689", "kept");
  }

  @Test
  void a_cartridge_answers_with_the_shortest_estimate_and_every_figure() {
    Map<String, Object> cumene = shell.json("reckon cartridge cumene --ppm 1000");
    assertThat(cumene)
        .containsOnlyKeys(
            "minutes",
            "basis",
            "table_minutes",
            "wheeler_jonas_minutes",
            "rule_of_thumb_minutes",
            "note")
        .containsEntry("minutes", 64.0)
        .containsEntry("basis", "table")
        .containsEntry("wheeler_jonas_minutes", null)
        .containsEntry("note", null);
    assertThat(shell.json("reckon cartridge methanol --ppm 10"))
        .containsEntry("minutes", null)
        .containsEntry("basis", null)
        .containsEntry("table_minutes", null)
        .hasEntrySatisfying("note", note -> assertThat(note).asString().contains("Methanol"));
    assertThat(shell.say("reckon cartridge toluene --ppm 200").out())
        .contains("change schedule", "maker");
    assertThat(shell.say("reckon cartridge methanol --ppm 200").out())
        .contains("no cartridge time", "Supplied air");
  }

  @Test
  void without_a_limit_the_index_of_a_mean_is_null() {
    assertThat(shell.json("reckon twa 8h@2"))
        .containsEntry("index", null)
        .containsEntry("twa", 2.0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "twa 120@150 | 120m",
        "twa 120m150 | 120m@150",
        "twa 1h@NaN | between",
        "mixture 5/0 | above 0",
        "clear --air-changes 6 --removal 100 | below 100",
        "clear --air-changes 0 --removal 9 | above 0",
        "shift --limit 1 --hours 24 | below 24",
        "shift --limit 1 | --week-hours",
        "wear --apf 0.5 --worn 9 | --apf",
        "wear --apf 10 --worn 101 | --worn",
        "fit --facepiece half | 200 180 150",
        "fit 200 0 --facepiece half | above 0",
        "fit 200 -5 --facepiece half | between 0",
        "fit 200 NaN --facepiece half | fit factor",
        "fit 200 --facepiece quarter | half or full",
        "fit 200 | --facepiece",
        "filter --mass 0 --concentration 5 --flow 40 | --mass must be above 0",
        "filter --mass 200 --concentration 0 --flow 40 | --concentration",
        "filter --mass 200 --concentration 5 --flow NaN | --flow",
        "sample --mass 1 --flow 0 --minutes 240 | --flow must be above 0",
        "sample --mass 1 --flow 2 | --minutes",
        "sample --mass x --flow 2 --minutes 9 | needs a number",
        "sample --mass 0 --flow 2 --minutes 9 --detection-limit 0 | --detection-limit",
        "duct --airflow 350 --diameter 0 | --diameter must be above 0",
        "duct --diameter 4 | either --airflow or --velocity",
        "duct --airflow 350 --velocity 4000 --diameter 4 | not both",
        "stats | 2 figures or more",
        "stats 1 | got 1",
        "stats 1 0 | below detection",
        "stats 1 -2 | above 0",
        "stats 1 NaN | A result",
        "stats 1 <2 | two of a known figure",
        "stats <1 <2 | two of a known figure",
        "stats 1 1 <2 | differ",
        "stats 1 2 <0 | <0.03",
        "stats 1 2 < | needs a number",
        "stats 1 2 --limit 0 | --limit must be above 0",
        "stats 1e-12 1e12 | unit",
        "trend | 2 figures or more",
        "trend 1 two | needs a number",
        "cartridge tolune --ppm 200 | toluene",
        "cartridge propanol --ppm 200 | 1 propanol",
        "cartridge water --ppm 200 | These are known: toluene",
        "cartridge --ppm 200 | SOLVENT",
        "cartridge toluene | --ppm",
        "cartridge toluene --ppm 0 | --ppm must be above 0",
        "cartridge toluene --ppm 200 --flow 0 | --flow must be above 0",
        "cartridge toluene --ppm 200 --humidity 101 | between 0 and 100",
        "cartridge toluene --ppm 200 --carbon NaN | --carbon",
      })
  void a_figure_that_cannot_be_reckoned_with_ends_with_2_and_says_why(String line, String why) {
    Shell.Said said = shell.say("reckon " + line);
    assertThat(said.code()).as(said.err()).isEqualTo(2);
    assertThat(said.err()).contains(why).doesNotContain("\tat ");
    assertThat(said.out()).isEmpty();
    assertThat(folder).isEmptyDirectory();
  }
}
