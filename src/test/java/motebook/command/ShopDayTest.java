package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a woodworker does with the book from the command line. */
class ShopDayTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  @Test
  void a_line_is_said_back_in_full_with_the_dose_of_the_day() {
    Shell.Said said = shell.say("log 40m orb sand of mdf with tool vac at 9:15");
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out())
        .contains("Logged as session 1: 40m orbital sanding of MDF with tool vacuum in shop by me")
        .contains("at 09:15 on 2026-03-02")
        .contains("about ")
        .contains("90 % range")
        .contains("formaldehyde");
  }

  @Test
  void a_line_may_be_quoted_or_not_and_a_note_may_begin_with_a_hyphen() {
    assertThat(shell.run("log", "20m assembly at 8:00").code()).isZero();
    assertThat(shell.say("log 20m assembly at 8:30 note glue-up -- slow").code()).isZero();
    assertThat(at(shell.json("day"), "sessions", 1, "note")).isEqualTo("glue-up -- slow");
  }

  @Test
  void the_shown_shares_of_a_day_add_to_100() {
    // Outdoors nothing is left over, so each of the three is a third: 33 three times is 99.
    shell.say("log 20m drilling of oak outdoors at 8:00");
    shell.say("log 20m drilling of oak outdoors at 9:00");
    shell.say("log 20m drilling of oak outdoors at 10:00");
    assertThat(shell.say("day").out())
        .contains("34 % of the dose")
        .containsPattern("33 % of the dose(?s).*33 % of the dose");
  }

  @Test
  void an_air_cleaner_is_used_once_its_flow_is_known() {
    assertThat(shell.say("log 40m table saw oak with air cleaner").code()).isEqualTo(2);
    shell.say("place change shop --cleaner-flow 400cfm --cleaner-run-on 30");
    assertThat(shell.say("log 40m table saw oak with air cleaner").code()).isZero();
  }

  @Test
  void feet_and_cfm_are_metres_and_cubic_metres_by_their_exact_definition() {
    // 1 ft = 0.3048 m exactly.
    shell.say("place change shop --volume 3200ft3 --cleaner-flow 400cfm");
    Map<String, Object> places = shell.json("place list");
    assertThat(number(places, "places", 0, "versions", 0, "volume_m3"))
        .isCloseTo(3200 * Math.pow(0.3048, 3), within(1e-9));
    assertThat(number(places, "places", 0, "versions", 0, "cleaner_flow_m3_min"))
        .isCloseTo(400 * Math.pow(0.3048, 3), within(1e-9));
    shell.say("place add attic --length 20ft --width 5 --height 2");
    assertThat(number(shell.json("place list"), "places", 2, "versions", 0, "volume_m3"))
        .isCloseTo(60.96, within(1e-9));
  }

  @Test
  void a_correction_of_a_place_corrects_all_days_and_a_change_from_a_day_only_later_ones() {
    shell.say("log 60m orbital sanding of oak at 9:00 on 2026-02-02");
    shell.say("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    double before = twa("2026-02-02");
    Shell.Said said = shell.say("place change shop --volume 40 --from 2026-03-01");
    assertThat(said.out()).contains("2026-03-01");
    assertThat(twa("2026-02-02")).isEqualTo(before);
    assertThat(twa("2026-03-02")).isGreaterThan(before);
    assertThat(shell.say("place change shop --air-changes 2").out()).contains("All days");
    assertThat(twa("2026-02-02")).isLessThan(before);
  }

  private double twa(String date) {
    return number(shell.json("day " + date), "twa", "outside", "typical_mg_m3");
  }

  @Test
  void undo_takes_back_change_by_change_and_history_shows_it() {
    shell.say("log 20m assembly at 8:00");
    shell.say("limits use eu");
    assertThat(shell.say("undo").out()).contains("limits");
    assertThat(shell.say("undo").out()).contains("assembly");
    assertThat(shell.say("undo").out()).contains("nothing to take back");
    assertThat(at(shell.json("day"), "sessions")).isEqualTo(List.of());
    assertThat(shell.say("history").out()).contains("taken back").contains("2026-03-02 18:00");
  }

  @Test
  void the_week_adds_up_to_a_mean_over_forty_hours_and_names_the_worst() {
    shell.say("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    shell.at("2026-03-06T18:00");
    shell.say("log 60m table saw oak at 9:00 on 2026-03-04");
    shell.say("log 30m sweeping at 9:00 on 2026-03-06");
    Map<String, Object> week = shell.json("week 2026-03-04");
    double sum = twa("2026-03-02") + twa("2026-03-04") + twa("2026-03-06");
    assertThat(number(week, "mean_40h", "outside", "typical_mg_m3"))
        .isCloseTo(sum / 5, within(1e-9));
    assertThat(at(week, "from")).isEqualTo("2026-03-02");
    assertThat((List<?>) at(week, "days")).hasSize(7);
    assertThat(at(week, "sources", 0, "operation")).isEqualTo("orbital-sanding");
    String text = shell.say("week").out();
    assertThat(text)
        .contains("Week from Monday 2 March 2026")
        .contains("worst day   Monday: outside about 3.1")
        .doesNotContain("40-h mean");
    double days =
        number(week, "days", 0, "outside", "central_mg_m3")
            + number(week, "days", 2, "outside", "central_mg_m3")
            + number(week, "days", 4, "outside", "central_mg_m3");
    assertThat(number(week, "mean_of_days_mg_m3")).isCloseTo(days * 8 / 40, within(1e-9));
    assertThat(text.lines().filter(l -> l.startsWith("from "))).hasSize(3);
  }

  @Test
  void a_file_of_lines_is_logged_all_or_none() throws Exception {
    Path good =
        Files.writeString(
            folder.resolve("good.txt"), "20m assembly at 8:00\n\n# lunch\n30m drilling at 9:00\n");
    assertThat(shell.run("log", "--lines", good.toString()).out()).contains("Logged 2 sessions");
    Path bad =
        Files.writeString(
            folder.resolve("bad.txt"), "20m assembly at 10:00\n30m driling at 11:00\n");
    Shell.Said said = shell.run("log", "--lines", bad.toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("Line 2").contains("drilling");
    assertThat((List<?>) at(shell.json("day"), "sessions")).hasSize(2);
    assertThat(shell.typing("10m drilling at 12:00\n").run("log", "--lines", "-").code()).isZero();
    assertThat(shell.run("log", "--lines", "missing.txt").err()).contains("missing.txt");
  }

  @Test
  void a_daily_copy_that_cannot_be_made_is_told_and_the_session_is_kept() throws Exception {
    shell.say("log 20m assembly at 8:00");
    Files.writeString(folder.resolve("book.db.copies"), "a file where the folder should be");
    shell.at("2026-03-03T18:00");
    Shell.Said said = shell.say("log 20m assembly at 9:00");
    assertThat(said.code()).isZero();
    assertThat(said.err()).contains("copy of the book was not made");
    assertThat((List<?>) at(shell.json("day 2026-03-03"), "sessions")).hasSize(1);
  }

  @Test
  void names_and_notes_cannot_hurt_the_book_or_the_terminal() {
    shell.run("person", "add", "Robert'); DROP TABLE session;--");
    shell.run("log", "20m assembly at 8:00 note \u001b[31mred\u202e\u0007 ' OR 1=1");
    String day = shell.say("day").out();
    assertThat(day).doesNotContain("\u001b").doesNotContain("\u202e").doesNotContain("\u0007");
    assertThat(day).contains("OR 1=1");
    assertThat(shell.say("verify").code()).isZero();
    assertThat(shell.run("log", "20m assembly at 9:00 note " + "x".repeat(10_000)).code())
        .isEqualTo(2);
    assertThat(shell.run("log", "20m \u001b[2J").err()).doesNotContain("\u001b");
  }

  @Test
  void somebody_can_take_the_book_over_under_their_own_name() {
    shell.say("log 20m assembly at 8:00");
    shell.say("person rename me Zoë");
    assertThat(shell.json("day")).containsEntry("person", "Zoë");
    shell.say("person add Ana");
    shell.say("person use Ana");
    assertThat(shell.json("day")).containsEntry("person", "Ana");
    assertThat(shell.json("person list")).containsEntry("own", "Ana");
  }

  @Test
  void the_sample_shop_fills_a_fresh_book_and_no_other() {
    shell.at("2026-11-25T10:00");
    Shell.Said said = shell.say("sample-shop");
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out()).contains("motebook day 2026-11-20");
    assertThat((List<?>) at(shell.json("day 2026-11-20"), "sessions"))
        .hasSizeGreaterThanOrEqualTo(6);
    assertThat((List<?>) at(shell.json("person list"), "people")).hasSize(3);
    assertThat(shell.say("verify").out()).contains("whole");
    Shell.Said again = shell.say("sample-shop");
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("sessions already");
  }

  @Test
  void the_sample_opens_on_a_copy_that_is_thrown_away() {
    shell.at("2026-11-25T10:00");
    assertThat(shell.say("--sample").code()).isZero();
    assertThat(shell.screenOpened).hasValueSatisfying(book -> assertThat(book).doesNotExist());
    assertThat(folder.resolve("book.db")).doesNotExist();
  }
}
