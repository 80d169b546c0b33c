package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleCommandTest {
  private static final String HOUR = "sample add --on 2026-03-02 --from 9:00 --to 10:00 ";

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
    shell.say("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--from 9:00 --to 10:00 --mg-m3 501 | A result of 501 mg/m³ is far above any wood dust",
        "--from 9:00 --to 10:00 --mg 1 --flow 26 | A pump of 26.0 L/min is no personal pump",
        "--from 9:00 --to 19:00 --mg-m3 2 | The sampled time is not over yet",
        "--from 10:00 --to 11:00 --mg-m3 2 | No work of this person lies in the sampled time"
      })
  void a_result_that_no_shop_has_is_refused_unless_it_is_meant(String figures, String why) {
    shell.say("log 60m orbital sanding of oak at 9:00");
    String line = "sample add --fraction inhalable " + figures;
    Shell.Said said = shell.say(line);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains(why).contains("add --yes");
    assertThat(shell.say("sample list").out()).contains("no samples");
    assertThat(shell.say(line + " --yes").code()).isZero();
    shell.say("undo");
    shell.atTerminal().typing("yes\n");
    assertThat(shell.say(line).code()).isZero();
    assertThat(shell.say("sample list").out()).contains("me:");
  }

  @Test
  void a_sampled_hour_reads_close_to_its_sample_on_every_command() {
    assertThat(number(shell.json("day 2026-03-02"), "learned_from_samples")).isZero();
    assertThat(shell.json(HOUR + "--mg-m3 10 --fraction inhalable")).containsEntry("id", 1);
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "learned_from_samples")).isEqualTo(1);
    assertThat(number(day, "sessions", 0, "mean_outside_mg_m3")).isBetween(10.0, 10.2);
    assertThat(number(day, "twa", "outside", "high90_mg_m3")).isBetween(1.5, 1.7);
    assertThat(shell.say("day 2026-03-02").out()).contains("from 1 sample of this shop");
    Map<String, Object> week = shell.json("week 2026-03-02");
    assertThat(number(week, "learned_from_samples")).isEqualTo(1);
    assertThat(number(week, "days", 0, "outside", "central_mg_m3"))
        .isCloseTo(number(day, "twa", "outside", "central_mg_m3"), within(1e-9));
    assertThat(shell.say("log 5m assembly at 11:00 on 2026-03-02").out())
        .contains("from 1 sample of this shop");
  }

  @Test
  void a_weighed_filter_is_listed_beside_the_estimate() {
    // Boss and Day: 3.005 mg at 2.0 L/min in 240 min is 6.26 mg/m3.
    shell.say(
        "sample add --on 2026-03-02 --from 9:00 --to 13:00 --mg 3.005 --flow 2.0 --fraction total");
    Map<String, Object> list = shell.json("sample list");
    assertThat(number(list, "samples", 0, "mg_m3")).isCloseTo(6.26, within(0.005));
    assertThat(number(list, "samples", 0, "estimated_mg_m3"))
        .isCloseTo(25 / 4.0 / 1.5, within(1e-6));
    assertThat(number(list, "samples", 0, "ratio")).isCloseTo(1.5025, within(1e-3));
    assertThat(at(list, "operations", 0, "operation")).isEqualTo("orbital-sanding");
    assertThat(number(list, "operations", 0, "before", "central_mg_m3"))
        .isCloseTo(25, within(1e-9));
    assertThat(number(list, "operations", 0, "after", "central_mg_m3")).isGreaterThan(25);
  }

  @Test
  void below_detection_is_kept_as_such() {
    shell.say(HOUR + "--mg 0.02 --flow 2 --fraction inhalable --yes");
    shell.say(HOUR + "--mg-m3 <0.4 --fraction respirable --yes");
    shell.say(HOUR + "--mg-m3 0.1 --detection-limit 0.3 --fraction total --yes");
    Map<String, Object> list = shell.json("sample list");
    for (int i = 0; i < 3; i++) {
      assertThat(at(list, "samples", i, "below_detection")).isEqualTo(true);
    }
    assertThat(number(list, "samples", 0, "mg_m3")).isCloseTo(0.25, within(1e-9));
    assertThat(number(list, "samples", 1, "mg_m3")).isEqualTo(0.4);
    assertThat(number(list, "samples", 2, "mg_m3")).isEqualTo(0.3);
    assertThat(shell.say("sample list").out()).contains("below 0.250 mg/m³ inhalable");
  }

  @Test
  void what_is_added_can_be_removed_and_every_step_taken_back() {
    double before = number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3");
    shell.say(HOUR + "--mg-m3 10 --fraction inhalable");
    double learned = number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3");
    assertThat(shell.say("sample remove 1").out()).contains("Removed sample 1");
    assertThat(number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3"))
        .isEqualTo(before);
    shell.say("undo");
    assertThat(number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3"))
        .isEqualTo(learned);
    shell.say("undo");
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
    assertThat(shell.say("sample list").out()).contains("no samples in this book");
    assertThat(shell.json("verify")).isNotEmpty();
  }

  @Test
  void an_instrument_has_the_larger_error_and_a_wild_result_is_pointed_at() {
    shell.say(HOUR + "--mg-m3 5000 --fraction inhalable --direct-reading --yes");
    assertThat(number(shell.json("sample list"), "samples", 0, "cv")).isEqualTo(0.5);
    assertThat(shell.say("sample list").out()).contains("warning   Sample 1 lies more than three");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--fraction inhalable | --mg with --flow, or --mg-m3",
        "--fraction inhalable --mg 1 | --flow",
        "--fraction inhalable --mg 1 --flow 2 --mg-m3 3 | not both",
        "--fraction thoracic --mg-m3 3 | inhalable, respirable or total",
        "--mg-m3 3 | --fraction",
        "--fraction inhalable --mg-m3 0 | not zero",
        "--fraction inhalable --mg-m3 3 --cv 9 | --cv",
        "--fraction inhalable --mg-m3 3 --person Nobody | Nobody",
        "--fraction inhalable --mg-m3 3 --to 8:00 | ends after it begins",
        "--fraction inhalable --mg-m3 3 --to 25:00 | time of day",
        "--fraction inhalable --mg 0 --flow 2 --detection-limit 0 | never zero",
      })
  void what_cannot_be_a_sample_is_refused_and_nothing_written(String options, String why) {
    Shell.Said said =
        shell.say(
            "sample add --on 2026-03-02 --from 9:00 "
                + (options.contains("--to ") ? "" : "--to 10:00 ")
                + options);
    assertThat(said.code()).as(said.err()).isEqualTo(2);
    assertThat(said.err()).contains(why).doesNotContain("\tat ");
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
  }

  @Test
  void the_very_same_sample_is_not_taken_twice() {
    shell.say(HOUR + "--mg-m3 10 --fraction inhalable");
    Shell.Said again = shell.say(HOUR + "--mg-m3 10 --fraction inhalable --note again");
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("as sample 1");
    assertThat(shell.say(HOUR + "--mg-m3 2 --fraction respirable").code()).isZero();
    assertThat(shell.say("sample remove 9").code()).isEqualTo(2);
  }

  private String meter(String rows) throws IOException {
    Path file = folder.resolve("meter.csv");
    Files.writeString(file, "time,dust mg/m3\n" + rows);
    return file.toString();
  }

  private static String minutes(int from, int to, double value) {
    StringBuilder rows = new StringBuilder();
    for (int minute = from; minute < to; minute++) {
      rows.append(
          String.format(
              Locale.ROOT, "2026-03-02 %02d:%02d:00,%s\n", minute / 60, minute % 60, value));
    }
    return rows.toString();
  }

  @Test
  void an_instrument_gives_one_sample_for_each_session_it_overlaps() throws IOException {
    shell.say("log 30m table saw oak at 11:00 on 2026-03-02");
    String file = meter(minutes(530, 610, 8) + minutes(655, 700, 2));
    Map<String, Object> told = shell.json("sample import " + file + " --fraction inhalable");
    assertThat(told).containsEntry("ids", List.of(1, 2)).containsEntry("rows", 125);
    assertThat(at(told, "complaints", 0)).asString().startsWith("line 82: nothing was read");
    Map<String, Object> list = shell.json("sample list");
    assertThat(at(list, "samples", 0, "from")).isEqualTo("09:00");
    assertThat(at(list, "samples", 0, "to")).isEqualTo("10:00");
    assertThat(number(list, "samples", 0, "mg_m3")).isCloseTo(8, within(1e-9));
    assertThat(at(list, "samples", 1, "kind")).isEqualTo("direct-reading");
    assertThat(number(list, "samples", 1, "mg_m3")).isCloseTo(2, within(1e-9));
    Map<String, Object> again = shell.json("sample import " + file + " --fraction inhalable");
    assertThat(again).containsEntry("ids", List.of()).containsEntry("known", 2);
    assertThat(shell.say("undo").out()).contains("Imported 2 samples");
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
  }

  @Test
  void the_whole_can_be_one_sample_and_nothing_there_is_below_detection() throws IOException {
    String file = meter(minutes(530, 610, 0));
    assertThat(shell.say("sample import " + file + " --fraction inhalable --whole").err())
        .contains("--detection-limit");
    Map<String, Object> told =
        shell.json(
            "sample import " + file + " --fraction inhalable --whole --detection-limit 0.01 --yes");
    assertThat(told).containsEntry("ids", List.of(1));
    Map<String, Object> list = shell.json("sample list");
    assertThat(at(list, "samples", 0, "below_detection")).isEqualTo(true);
    assertThat(at(list, "samples", 0, "from")).isEqualTo("08:50");
  }

  @Test
  void a_file_that_tells_nothing_is_refused() throws IOException {
    String file = meter(minutes(900, 960, 8));
    assertThat(shell.say("sample import " + file + " --fraction inhalable").err())
        .contains("Log the work first");
    assertThat(shell.say("sample import " + file).err()).contains("--fraction");
    assertThat(shell.say("sample import no.csv --fraction total").err()).contains("no file");
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
  }

  @Test
  void a_meters_reading_is_multiplied_by_its_factor_and_has_the_smaller_error() {
    shell.say(HOUR + "--mg-m3 10 --fraction inhalable --direct-reading --factor 1.8");
    Map<String, Object> list = shell.json("sample list");
    assertThat(number(list, "samples", 0, "mg_m3")).isCloseTo(18, within(1e-9));
    assertThat(number(list, "samples", 0, "factor")).isEqualTo(1.8);
    assertThat(number(list, "samples", 0, "cv")).isEqualTo(0.3);
    assertThat(shell.say("sample list").out()).contains("meter times 1.8");
  }

  @Test
  void an_area_sample_is_held_against_the_air_of_the_room() {
    double near =
        at(shell.json("day 2026-03-02"), "sessions", 0, "mean_outside_mg_m3") instanceof Number n
            ? n.doubleValue()
            : 0;
    shell.say(HOUR + "--mg-m3 1.5 --fraction inhalable --area --yes");
    Map<String, Object> list = shell.json("sample list");
    assertThat(at(list, "samples", 0, "type")).isEqualTo("area");
    assertThat(at(list, "samples", 0, "place")).isEqualTo("shop");
    // the first hour of orbital sanding in the shop: room 25 less the near field's G/beta, 141.5
    // mg/min over pi 0.8^2 6 m3/min = 11.73
    assertThat(number(list, "samples", 0, "estimated_mg_m3"))
        .isCloseTo(near - 141.5 / (Math.PI * 0.64 * 6), within(0.05));
    assertThat(shell.say(HOUR + "--mg-m3 1 --fraction inhalable --area yard").err())
        .contains("no room air");
  }

  @ParameterizedTest
  @CsvSource({"PM2.5", "pm10", "PM1", "PM4"})
  void a_particle_size_is_no_fraction_but_may_be_kept_for_comparison(String channel) {
    double before = number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3");
    Shell.Said refused = shell.say(HOUR + "--mg-m3 2 --direct-reading --fraction " + channel);
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("not a health fraction").contains("--relative");
    shell.json(HOUR + "--mg-m3 2 --direct-reading --relative --fraction " + channel);
    Map<String, Object> list = shell.json("sample list");
    assertThat(at(list, "samples", 0, "relative")).isEqualTo(true);
    assertThat(at(list, "samples", 0, "estimated_mg_m3")).isNull();
    assertThat(number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3"))
        .isEqualTo(before);
    assertThat(number(shell.json("day 2026-03-02"), "learned_from_samples")).isZero();
  }

  @Test
  void a_column_called_by_a_particle_size_is_refused_as_a_fraction() throws IOException {
    Path file = folder.resolve("pm.csv");
    Files.writeString(file, "time,PM2.5 mg/m3\n" + minutes(530, 610, 8));
    assertThat(shell.say("sample import " + file + " --fraction respirable").err())
        .contains("PM2.5 is a meter's channel");
    assertThat(shell.json("sample import " + file + " --fraction PM2.5 --relative"))
        .containsEntry("ids", List.of(1));
  }

  @Test
  void what_moves_by_more_than_a_tenth_is_listed_before_and_after() {
    Map<String, Object> added = shell.json(HOUR + "--mg-m3 3 --fraction inhalable");
    assertThat(at(added, "moved", 0, "operation")).isEqualTo("orbital-sanding");
    assertThat(at(added, "moved", 0, "material")).isEqualTo("oak");
    assertThat(number(added, "moved", 0, "before", "central_mg_m3")).isCloseTo(25, within(1e-6));
    assertThat(number(added, "moved", 0, "after", "central_mg_m3")).isLessThan(22);
    assertThat(at(added, "moved", 1, "date")).isEqualTo("2026-03-02");
    assertThat((List<?>) added.get("moved")).hasSize(2);
    shell.say("undo");
    assertThat(shell.say(HOUR + "--mg-m3 3 --fraction inhalable").out())
        .contains("What moves by more than a tenth")
        .contains("orbital sanding of oak");
  }

  @Test
  void a_suspiciously_low_result_asks_whether_pump_and_filter_were_in_order() {
    Shell.Said low = shell.say(HOUR + "--mg-m3 1.2 --fraction inhalable");
    assertThat(low.code()).isEqualTo(2);
    assertThat(low.err()).contains("Were pump and filter in order?").contains("--yes");
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
    assertThat(shell.say(HOUR + "--mg-m3 1.3 --fraction inhalable").code()).isZero();
    shell.say("undo");
    assertThat(shell.say(HOUR + "--mg-m3 <2.4 --fraction inhalable").code()).isEqualTo(2);
    assertThat(shell.say(HOUR + "--mg-m3 <2.6 --fraction inhalable").code()).isZero();
    shell.say("undo");
    assertThat(shell.say(HOUR + "--mg-m3 1.2 --fraction inhalable --yes").code()).isZero();
  }

  @Test
  void failed_samples_of_one_import_do_not_vouch_for_each_other() throws IOException {
    StringBuilder rows = new StringBuilder();
    for (String day : List.of("2026-02-26", "2026-02-27", "2026-03-02")) {
      shell.say("log 60m orbital sanding of oak at 9:00 on " + day);
      rows.append(minutes(540, 600, 0.2).replace("2026-03-02", day));
    }
    String line = "sample import " + meter(rows.toString()) + " --fraction inhalable";
    Shell.Said said = shell.say(line);
    assertThat(said.code()).isEqualTo(2);
    for (String day : List.of("2026-03-02", "2026-02-27", "2026-02-26")) {
      // 25 mg/m3 is what was known before: a twentieth of it is 1.25
      assertThat(said.err())
          .contains(
              day + " 09:00-10:00 me: 0.200 inhalable mg/m³ lies far below the estimate of 25.0");
    }
    assertThat(shell.json("sample list")).containsEntry("samples", List.of());
    assertThat(shell.say(line + " --yes").code()).isZero();
  }

  @Test
  void a_result_that_contradicts_another_is_asked_about_and_names_it() {
    shell.say(HOUR + "--mg-m3 36 --fraction inhalable");
    String area = HOUR + "--mg-m3 2 --fraction inhalable --area";
    Shell.Said said = shell.say(area);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err())
        .contains("09:00-10:00 air of shop: 2.00 inhalable mg/m³ contradicts sample 1 (")
        .contains("me: 36.0 mg/m³ inhalable")
        .contains("--yes")
        .doesNotContain("pump");
    assertThat((List<?>) shell.json("sample list").get("samples")).hasSize(1);
    shell.atTerminal().typing("no\n");
    assertThat(shell.say(area).err()).contains("Nothing was changed");
    shell.atTerminal().typing("yes\n");
    assertThat(shell.say(area).code()).isZero();
  }

  @Test
  void a_result_that_agrees_with_another_is_kept_without_a_question() {
    shell.say(HOUR + "--mg-m3 36 --fraction inhalable");
    // the room is thought to hold half of what the sander breathes
    assertThat(shell.say(HOUR + "--mg-m3 18 --fraction inhalable --area").code()).isZero();
  }

  @Test
  void of_several_samples_the_one_of_the_same_hours_is_named() {
    shell.say("log 60m orbital sanding of oak at 9:00 on 2026-02-27");
    shell.say("sample add --on 2026-02-27 --from 9:00 --to 10:00 --mg-m3 40 --fraction inhalable");
    shell.say(HOUR + "--mg-m3 36 --fraction inhalable");
    assertThat(shell.say(HOUR + "--mg-m3 2 --fraction inhalable --area").err())
        .contains("contradicts sample 2 (2026-03-02");
  }

  @ParameterizedTest
  @CsvSource({"--factor 1.8", "--cv 0.2", "--relative", "--area"})
  void a_reading_counts_once_whatever_is_said_of_it_the_second_time(String option)
      throws IOException {
    String line = "sample import " + meter(minutes(540, 600, 8)) + " --fraction inhalable ";
    assertThat(shell.json(line)).containsEntry("ids", List.of(1));
    Shell.Said again = shell.say(line + option + " --yes");
    if (option.equals("--area")) {
      assertThat(again.code()).as("another sampler, in the room").isZero();
    } else {
      assertThat(again.code()).isEqualTo(2);
      assertThat(again.err())
          .contains("as sample 1: 2026-03-02 09:00-10:00 me: 8.00 mg/m³ inhalable")
          .contains("Remove it first")
          .contains("sample remove 1");
      shell.say("sample remove 1");
      assertThat(shell.say(line + option + " --yes").code()).isZero();
    }
  }

  @Test
  void a_second_result_of_the_same_hour_is_refused_but_a_meter_beside_a_filter_is_not() {
    shell.say(HOUR + "--mg-m3 10 --fraction inhalable");
    assertThat(shell.say(HOUR + "--mg-m3 11 --fraction inhalable --yes").err())
        .contains("as sample 1");
    assertThat(shell.say(HOUR + "--mg-m3 10 --fraction inhalable --factor 1.8 --yes").err())
        .contains("as sample 1");
    assertThat(shell.say(HOUR + "--mg-m3 12 --fraction inhalable --direct-reading").code())
        .isZero();
  }

  @Test
  void the_published_figure_is_one_option_away() {
    double before = number(shell.json("day 2026-03-02"), "twa", "outside", "central_mg_m3");
    shell.say(HOUR + "--mg-m3 10 --fraction inhalable");
    assertThat(number(shell.json("day 2026-03-02 --published"), "twa", "outside", "central_mg_m3"))
        .isEqualTo(before);
    assertThat(number(shell.json("day 2026-03-02"), "published", "central_mg_m3"))
        .isEqualTo(before);
    assertThat(shell.say("day 2026-03-02").out()).contains("without it");
    assertThat(
            number(
                shell.json("week 2026-03-02 --published"), "days", 0, "outside", "central_mg_m3"))
        .isEqualTo(before);
  }

  @Test
  void a_sample_for_the_shift_takes_two_hours() {
    assertThat(shell.say(HOUR + "--mg-m3 10 --fraction inhalable --stands-for-shift").err())
        .contains("120 minutes or more");
  }
}
