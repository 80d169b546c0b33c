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
        // Mulhausen and Damiano 1998, Table V.2, read in an open R package: GM 2.479, GSD 1.502,
        // P95 4.84, UTL95,95 7.046, 4.24 % over 5; more digits and the rest by lognormal.py.
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | n | 15",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | gm | 2.47912671",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | gsd | 1.50240821",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | am | 2.68",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | p95 | 4.84300481",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | utl95_95 | 7.04590327",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | utl95_70 | 5.40900838",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | exceedance_percent | 4.24106995",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | exceedance_low90_percent | 0.857019567",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | exceedance_high90_percent | 15.282633",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | mvue | 2.67745318",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | lognormal_mean | 2.69327809",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | shapiro_w | 0.974295956",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | shapiro_p | 0.915787831",
        "stats 1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 --limit 5 | band | 3",
        "stats <1.5 1.8 <1.5 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 | gm | 2.47656793",
        "stats <1.5 1.8 <1.5 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 | gsd | 1.49092771",
        "stats <1.5 1.8 <1.5 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9 | censored | 2",
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
        // Regression on the equation, src/test/python/wheeler_jonas.py.
        "cartridge toluene --ppm 500 | table_minutes | 135",
        "cartridge toluene --ppm 500 | wheeler_jonas_minutes | 133.8826",
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
        .contains("change schedule", "manufacturer", "not independent");
    assertThat(shell.say("reckon cartridge methanol --ppm 200").out())
        .contains("no cartridge time", "Supplied air");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // NIOSH IDLH: toluene 500, mineral spirits 3540, methanol 6000, ammonia 300 ppm.
        "toluene --ppm 501 | above 500 ppm it is immediately dangerous",
        "xylenes --ppm 1000 | above 900 ppm",
        "methanol --ppm 7000 | above 6000 ppm",
        "ammonia --ppm 301 | above 300 ppm",
        // 42 CFR 84.190, read: organic vapour 1000 ppm.
        "mek --ppm 1001 | approved up to 1000 ppm (42 CFR 84.190)",
        "cumene --ppm 1001 | approved up to 1000 ppm"
      })
  void no_cartridge_is_calculated_where_none_may_be_used(String line, String said) {
    Shell.Said refused = shell.say("reckon cartridge " + line);
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains(said).doesNotContain("gear add");
    assertThat(shell.say("reckon cartridge " + line + " --json").code()).isEqualTo(2);
  }

  @Test
  void statistics_are_told_by_their_names_with_three_digits() {
    String fifteen = "1.3 1.8 1.2 4.5 2.0 2.1 5.5 2.2 3.0 2.4 2.5 2.5 3.5 2.8 2.9";
    assertThat(shell.say("reckon stats " + fifteen + " --limit 5").out())
        .isEqualTo(
            """
            15 results: geometric mean 2.48, geometric standard deviation 1.50, mean 2.68
            Mean of the fitted lognormal 2.69, unbiased estimate 2.68
            95th percentile 4.84; upper tolerance limit (95 % of days, 95 % confidence) 7.05, \
            at 70 % confidence 5.41
            Shapiro–Wilk (log values): W 0.974, p 0.916; consistent with lognormal
            4.24 % over 5 (90 % interval 0.857 % to 15.3 %); 95th percentile 0.969 of the limit
            Does not comply at 70 % confidence. EN 689: the limit is not kept
            """);
    assertThat(shell.say("reckon stats 0.010 0.011 0.012 --limit 5").out())
        .contains("Fewer than six results")
        .contains("less than 0.001 % over 5 (90 % interval less than 0.001 % to");
    assertThat(shell.say("reckon stats 90 91 92 93 94 95 --limit 5").out())
        .contains("over 99.9 % over 5 (90 % interval over 99.9 % to over 99.9 %)");
  }

  @Test
  void why_there_is_no_percentile_and_no_verdict_is_said_as_it_is() {
    // ten of twelve below detection: more than 80 %, and two figures that differ
    String below = "stats" + " <0.5".repeat(10) + " 0.6 0.9 --limit 1";
    assertThat(shell.say("reckon " + below).out())
        .contains("More than 80 % of the results are below detection")
        .contains("not decided, the group test needs more results above detection")
        .doesNotContain("do not differ")
        .doesNotContain("six for the group test");
    assertThat(shell.say("reckon stats 0.6 0.6 0.6 0.6 0.6 0.6 0.6 --limit 1").out())
        .contains("Results that do not differ say nothing")
        .contains("not decided, the group test needs results that differ");
    assertThat(shell.say("reckon stats 0.6 0.7 0.9 --limit 1").out())
        .contains("not decided, more results are needed (six for the group test)");
  }

  @Test
  void a_trend_is_called_by_the_rule_of_the_week_and_not_below_four_values() {
    assertThat(shell.say("reckon trend 1 2 3 4 5 16 7").out())
        .isEqualTo(
            "Rising: median step 1.00 (90 % range 1.00 to 3.00), S 19, z 2.70, two-sided p 0.00686"
                + " (approximate below ten values)\n");
    // p 0.0894: below a tenth, as for weeks, and the range of the slope leaves out 0.
    assertThat(shell.say("reckon trend 1 2 3 4").out()).startsWith("Rising: median step 1.00");
    assertThat(shell.say("reckon trend 1 2 3").out())
        .startsWith("Too few values to tell (3 of the 4 it takes): median step 1.00, S 3");
    assertThat(shell.json("reckon trend 1 2 3 4"))
        .containsEntry("sen_low95", null)
        .containsEntry("sen_high95", null);
    assertThat(shell.say("reckon trend 2 2 2 2 2 1 1 1").out()).startsWith("No clear trend");
    assertThat(shell.say("reckon trend 5 5 5 5 5").out())
        .isEqualTo("No clear trend: all values are equal.\n");
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
        "twa 1h@NaN | needs a number",
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
        "stats 1 <2 | two different known figures",
        "stats <1 <2 | two different known figures",
        "stats 1 1 <2 | two different known figures",
        "stats 2 2 2 | All results are equal",
        "stats 1 2 <1 <1 <1 <1 <1 <1 <1 <1 <1 | 9 of 11 results are below detection",
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

  @Test
  void of_two_results_the_text_gives_no_upper_tolerance_limit_and_the_json_does() {
    assertThat(shell.say("reckon stats 1 2").out())
        .contains("too few results to give an upper tolerance limit")
        .doesNotContain("95 % confidence");
    assertThat(shell.say("reckon stats 1 2 --limit 5").out()).doesNotContain("confidence");
    assertThat(number(shell.json("reckon stats 1 2"), "utl95_95")).isGreaterThan(100_000);
    assertThat(shell.say("reckon stats 1 2 3").out())
        .contains("upper tolerance limit (95 % of days, 95 % confidence)");
  }

  @Test
  void one_exercise_is_told_to_be_no_fit_test_and_still_answered() {
    Shell.Said one = shell.say("reckon fit 200 --facepiece half");
    assertThat(one.code()).isZero();
    assertThat(one.out()).contains("passed").contains("One exercise is not a fit test");
    assertThat(shell.json("reckon fit 200 --facepiece half"))
        .containsOnlyKeys("fit_factor", "pass")
        .containsEntry("pass", true);
    assertThat(shell.say("reckon fit 200 180 --facepiece half").out()).doesNotContain("exercise");
  }
}
