package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.Choice;
import motebook.desk.Choices;
import motebook.journal.Settings;
import motebook.model.OwnFigure;
import motebook.model.Surroundings.Indoors;
import motebook.model.Units;
import motebook.model.Work;
import motebook.screen.state.Field;
import motebook.screen.state.Focus;
import motebook.screen.state.Form;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The form, the stopwatch, favourites, same again, cautions, finding, weeks, the first run. */
class BenchKeysTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db")).open();
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void log(String... lines) {
    for (String line : lines) {
      pilot.type(line).press("Enter");
    }
  }

  private Work onlyWork() {
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    return pilot.book().sessionsOn(TODAY).get(0).work();
  }

  @Test
  void a_session_is_logged_field_by_field_and_read_back_on_the_way() {
    pilot.say("form").type("40m").press("Down").type("orb sand").press("Down").type("mdf");
    pilot.press("Down").press("Right");
    assertThat(pilot.screen()).contains("40m orbital sanding of MDF with tool vacuum");
    pilot.press("Enter");
    assertThat(onlyWork().controls()).containsExactly("tool-vacuum");
    assertThat(pilot.screen()).contains("Logged: 40m orbital sanding of MDF");
  }

  @Test
  void a_form_that_breaks_a_rule_is_not_written_and_goes_to_the_field() {
    pilot.say("form").type("40m").press("Down").type("drilling").press("Down").type("oek");
    pilot.press("Up", "Up", "Enter");
    assertThat(pilot.book().hasSessions()).isFalse();
    assertThat(pilot.state().pages().form().orElseThrow().field().key()).isEqualTo("material");
    assertThat(pilot.screen()).contains("did you mean oak");
    pilot.press("Escape");
    assertThat(pilot.screen()).contains("Nothing was changed.");
  }

  @Test
  void a_session_is_changed_in_the_form_and_undo_takes_the_change_back() {
    log("60m orbital sanding of oak at 9:00", "20m drilling of pine at 10:30");
    pilot.press("Up", "Enter").press("Ctrl-U").type("30m").press("Enter");
    assertThat(pilot.screen()).contains("Changed to: 30m orbital sanding of oak");
    assertThat(pilot.book().sessionsOn(TODAY).get(0).work().minutes()).isEqualTo(30);
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY).get(0).work().minutes()).isEqualTo(60);
  }

  @Test
  void a_session_is_deleted_after_a_yes() {
    log("60m orbital sanding of oak at 9:00");
    pilot.press("Delete");
    assertThat(pilot.screen()).contains("Delete this? 09:00-10:00 orbital sanding of oak");
    pilot.press("Escape");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    pilot.press("Delete", "y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).isEmpty();
    assertThat(pilot.screen()).contains("Deleted; Ctrl-Z brings it back.");
  }

  @Test
  void the_same_again_ends_now_and_what_it_overlaps_leads_into_the_line() {
    log("30m drilling of pine at 9:00");
    pilot.press("Ctrl-R");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    assertThat(pilot.book().sessionsOn(TODAY).get(1).work().endMinute()).isEqualTo(12 * 60);
    pilot.press("Ctrl-R");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    assertThat(pilot.state().typing()).isTrue();
    assertThat(pilot.state().line().text()).isEqualTo("30m drilling of pine");
    assertThat(pilot.screen()).contains("overlaps your 11:30-12:00 drilling", "at 11:00");
    pilot.press("Tab", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(3);
  }

  @Test
  void the_same_again_in_an_empty_book_says_that_there_is_nothing() {
    assertThat(pilot.press("Ctrl-R").screen()).contains("Nothing was logged yet");
  }

  @Test
  void a_favourite_is_kept_under_a_name_and_one_key_logs_it() {
    log("30m drilling of pine at 9:00");
    pilot.press("Ctrl-K").type("Holes").press("Enter");
    assertThat(pilot.screen()).contains("Kept \"Holes\": 30m drilling of pine; F2 logs it.");
    pilot.press("F2");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    assertThat(pilot.press("F3").screen()).contains("There are only 1 favourites.");
    pilot.press("Ctrl-K").type("holes").press("Enter");
    assertThat(pilot.screen()).contains("There is a favourite \"Holes\" already");
    pilot.press("Escape").say("favourites").press("Delete", "y", "Enter");
    assertThat(pilot.book().favourites().all()).isEmpty();
  }

  @Test
  void a_favourite_whose_control_no_longer_serves_is_logged_as_it_stands_and_counts_as_none() {
    pilot.book().favourites().add("Wet", "30m orbital sanding of oak with wet sanding");
    pilot.open().press("F2");
    assertThat(pilot.book().sessionsOn(TODAY))
        .singleElement()
        .satisfies(session -> assertThat(session.work().controls()).containsExactly("wet-sanding"));
    assertThat(pilot.press("Escape", "n").screen()).contains("wet sanding counts as none");
  }

  @Test
  void what_is_on_record_is_edited_with_the_control_that_no_longer_serves() {
    Work wet =
        new Work(
            "me",
            "shop",
            TODAY,
            LocalTime.of(9, 0),
            30,
            "orbital-sanding",
            Optional.of("oak"),
            List.of("wet-sanding"),
            Optional.empty(),
            "");
    pilot.book().log(wet);
    pilot.open().press("Enter").press("Up").type("a rag").press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY).get(0).work().note()).isEqualTo("a rag");
    assertThat(pilot.book().sessionsOn(TODAY).get(0).work().controls())
        .containsExactly("wet-sanding");
  }

  @Test
  void a_favourite_never_pushes_a_line_away_that_is_being_typed() {
    log("30m drilling of pine at 9:00");
    pilot.press("Ctrl-K").type("Holes").press("Enter").type("20m asse");
    pilot.press("Escape", "v", "Enter");
    assertThat(pilot.state().line().text()).isEqualTo("20m asse");
    assertThat(pilot.screen()).contains("A line is being typed");
  }

  @Test
  void earlier_lines_come_back_with_up_and_go_with_down() {
    log("30m drilling of pine at 9:00", "1h assembly at 10:00");
    pilot.press("Ctrl-P");
    assertThat(pilot.state().line().text()).isEqualTo("1h assembly");
    assertThat(pilot.press("Up").state().line().text()).isEqualTo("30m drilling of pine");
    assertThat(pilot.press("Down").state().line().text()).isEqualTo("1h assembly");
    assertThat(pilot.press("Down").state().line().text()).isEmpty();
    pilot.type("20m").press("Up");
    assertThat(pilot.state().line().text()).isEqualTo("20m");
  }

  @Test
  void what_was_done_before_is_offered_first() {
    log("30m drilling of pine at 9:00");
    pilot.type("30m ");
    assertThat(pilot.state().line().choices().get(0)).isEqualTo("30m drilling of pine");
    pilot.press("Ctrl-U").type("15m d");
    assertThat(pilot.state().line().choices().get(0)).isEqualTo("15m drilling of pine");
  }

  @Test
  void the_stopwatch_runs_pauses_and_logs_a_session_for_each_stretch() {
    pilot.press("Ctrl-T").type("table saw of oak").press("Enter");
    assertThat(pilot.screen()).contains("The stopwatch runs: table saw of oak");
    pilot.pass(20).press("Ctrl-T");
    assertThat(pilot.screen()).contains("Stopwatch paused at 20 min");
    pilot.pass(10).press("Ctrl-T").pass(15);
    assertThat(pilot.screen()).contains("Stopwatch 35 min: table saw of oak");
    assertThat(pilot.book().hasSessions()).isFalse();
    pilot.press("Ctrl-X");
    assertThat(pilot.screen().replaceAll("\\s+", " "))
        .contains("Logged: 35 min table saw of oak in 2 parts. Fine dust falls to a tenth");
    assertThat(pilot.book().sessionsOn(TODAY))
        .extracting(s -> s.work().start().toString(), s -> s.work().minutes())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("12:00", 20),
            org.assertj.core.groups.Tuple.tuple("12:30", 15));
  }

  @Test
  void the_stopwatch_shows_the_dose_so_far_and_what_is_left_before_the_limit() {
    pilot.press("Ctrl-T").type("drilling of pine").press("Enter").pass(30);
    String screen = pilot.screen().replaceAll("\\s+", " ");
    assertThat(screen)
        .containsPattern("left before the limit at even chances, \\d+ min at 1 in 20");
    assertThat(screen).contains("timed: drilling of pine");
    assertThat(pilot.state().sheet().current().orElseThrow().report().minutesLogged())
        .isEqualTo(30);
  }

  @Test
  void the_stopwatch_goes_on_while_the_program_is_gone() {
    pilot.press("Ctrl-T").type("table saw of oak").press("Enter", "Ctrl-C");
    pilot.close();
    pilot = new Pilot(folder.resolve("book.db"));
    pilot.open().pass(25);
    assertThat(pilot.screen()).contains("Stopwatch 25 min: table saw of oak");
  }

  @Test
  void what_cannot_be_timed_is_told_and_no_stopwatch_starts() {
    pilot.press("Ctrl-T").type("table sow of oak").press("Enter");
    assertThat(pilot.screen()).contains("did you mean");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PROMPT);
    assertThat(pilot.book().stopwatches().all()).isEmpty();
    assertThat(pilot.press("Escape").say("stop").screen())
        .contains("No stopwatch of me is under way");
  }

  @Test
  void cautions_are_set_aside_for_the_day_and_never_silently() {
    log("30m orbital sanding of mdf at 9:00");
    assertThat(pilot.screen()).contains("! The binder of this board");
    pilot.press("Ctrl-O");
    assertThat(pilot.screen()).contains("Set aside for the day 2026-03-04");
    pilot.press("Other");
    assertThat(pilot.screen()).doesNotContain("! The binder").contains("set aside for this day");
    assertThat(pilot.say("notes").screen()).contains("! The binder of this board");
    pilot.press("Escape", "Ctrl-O", "Other");
    assertThat(pilot.screen()).contains("! The binder of this board");
  }

  @Test
  void another_day_is_gone_to_by_its_date() {
    pilot.say("go to").type("2 weeks ago").press("Enter");
    assertThat(pilot.screen()).contains("Wednesday 18 February 2026, 14 days ago");
    pilot.say("go to").type("someday").press("Enter");
    assertThat(pilot.screen()).contains("\"someday\" is no day");
    pilot.press("Escape").say("week").say("go to").type("2025-12-24").press("Enter");
    assertThat(pilot.screen()).contains("Week from Monday 22 December 2025");
  }

  @Test
  void earlier_work_is_found_by_words_and_its_day_shown_with_it_pointed_at() {
    ShopWeeks.log(pilot);
    pilot.say("find").type("sweeping pine").press("Enter");
    assertThat(pilot.screen())
        .contains("Found: sweeping pine")
        .contains("Ana: dry sweeping of pine");
    pilot.press("Down", "Enter");
    assertThat(pilot.state().sheet().person()).isEqualTo("Ana");
    assertThat(pilot.state().sheet().date()).isBefore(TODAY);
    assertThat(pilot.screen()).contains(">1 10:00-10:40 dry sweeping of pine");
    pilot.say("find").type("western").press("Enter");
    assertThat(pilot.state().pages().found().hits()).hasSize(1);
    pilot.say("find").type("nothing of the kind").press("Enter");
    assertThat(pilot.screen()).contains("Nothing in the book holds all of these words.");
  }

  @Test
  void the_week_leads_to_its_days_and_back() {
    ShopWeeks.log(pilot);
    pilot.say("week").press("Left");
    assertThat(pilot.screen()).contains("Week from Monday 23 February 2026, last week");
    pilot.press("Up", "Up", "Enter");
    assertThat(pilot.screen()).contains("Monday 23 February 2026, 9 days ago");
    pilot.say("week").say("person");
    assertThat(pilot.screen()).contains("Ana");
    pilot.press("Home");
    assertThat(pilot.state().focus()).isEqualTo(Focus.DAY);
  }

  @Test
  void a_line_logged_from_the_week_shows_its_day() {
    pilot.say("week").type("20m drilling of oak at 8:00").press("Enter");
    assertThat(pilot.state().focus()).isEqualTo(Focus.DAY);
    assertThat(pilot.screen()).contains("08:00-08:20 drilling of oak");
  }

  @Test
  void the_first_run_asks_only_while_nothing_was_ever_written() {
    try (Pilot fresh = new Pilot(folder.resolve("other.db"))) {
      fresh.openFresh();
      assertThat(fresh.screen()).contains("Welcome: a few questions");
      fresh.press("Ctrl-U").type("Zoë").press("Down", "Right", "Down", "Right", "Down", "Ctrl-U");
      fresh.type("20 x 16 x 8").press("Down", "Left", "Down", "Left", "Down", "Ctrl-U");
      fresh.type("400").press("Enter");
      assertThat(fresh.state().focus()).isEqualTo(Focus.DAY);
      assertThat(fresh.book().settings().person()).isEqualTo("Zoë");
      assertThat(fresh.book().settings().units()).isEqualTo(Units.US);
      Indoors shop =
          (Indoors) fresh.book().premises().place("shop", TODAY).orElseThrow().surroundings();
      // 20 ft x 16 ft x 8 ft and 400 cfm with the foot of 0.3048 m, exact by definition
      assertThat(shop.volumeM3()).isCloseTo(72.49, org.assertj.core.data.Offset.offset(0.01));
      assertThat(shop.cleanerFlowM3PerMin().orElse(0)).isBetween(11.32, 11.33);
    }
    try (Pilot again = new Pilot(folder.resolve("other.db"))) {
      again.openFresh();
      assertThat(again.state().focus()).isEqualTo(Focus.DAY);
    }
  }

  @Test
  void a_shop_smaller_or_fanned_more_than_any_is_refused_in_the_form_of_settings() {
    pilot.say("settings").press("Down", "Down", "Down", "Ctrl-U").type("5 m³").press("Enter");
    assertThat(pilot.screen().replaceAll("\\s+", " "))
        .contains("A room of 5 m³ is smaller than any workshop")
        .contains("place change with --yes");
    Indoors shop =
        (Indoors) pilot.book().premises().place("shop", TODAY).orElseThrow().surroundings();
    assertThat(shop.volumeM3()).isEqualTo(100);
  }

  @Test
  void what_a_form_of_settings_changes_is_one_change_and_one_undo_takes_it_back() {
    pilot.say("settings").press("Ctrl-U").type("Hedda").press("Down", "Right");
    pilot.press("Down", "Down", "Ctrl-U").type("84 m³");
    down(8);
    pilot.press("Ctrl-U").type("0.5");
    down(2);
    pilot.press("Ctrl-U").type("3 months").press("Enter");
    assertThat(pilot.screen().replaceAll("\\s+", " "))
        .contains(
            "Changed: name, limits, cartridge share, opened gas, shop. Ctrl-Z takes it back.");
    assertThat(pilot.book().changes().history(5)).hasSize(1);
    assertThat(pilot.book().settings().person()).isEqualTo("Hedda");
    assertThat(pilot.book().settings().figures().get(OwnFigure.CARTRIDGE_SAFETY_FRACTION))
        .isEqualTo(0.5);
    assertThat(pilot.book().settings().figures().whole(OwnFigure.OPENED_GAS_MONTHS)).isEqualTo(3);
    Settings shipped = new Settings("me", "shop", "acgih", 1.5, 30);
    pilot.book().changes().undo();
    assertThat(pilot.book().settings()).isEqualTo(shipped);
    assertThat(pilot.book().premises().place("shop", TODAY).orElseThrow().surroundings())
        .isEqualTo(new Indoors(100, 1, 3, 6, OptionalDouble.empty(), OptionalDouble.empty(), 0));
  }

  private void down(int rows) {
    for (int row = 0; row < rows; row++) {
      pilot.press("Down");
    }
  }

  @Test
  void a_figure_outside_its_bounds_is_told_at_its_field() {
    pilot.say("settings");
    down(15);
    pilot.press("Ctrl-U").type("40").press("Up", "Enter");
    assertThat(pilot.screen())
        .contains("The fit-months-uk must lie between 1 and 36 months: got 40.")
        .contains("> fit test, UK");
    assertThat(pilot.book().changes().history(5)).isEmpty();
  }

  @Test
  void every_choice_of_the_owner_stands_on_the_form() {
    pilot.say("settings");
    Form form = pilot.state().pages().form().orElseThrow();
    List<String> fields = form.fields().stream().map(Field::key).toList();
    assertThat(Choices.ALL)
        .extracting(Choice::key)
        .filteredOn(key -> !key.equals("equipment"))
        .isSubsetOf(fields);
    // equipment is asked for one by one
    assertThat(fields).contains("collector", "tool-vacuum");
  }

  @Test
  void a_setting_that_cannot_be_is_told_at_its_field_and_nothing_is_written() {
    pilot.say("settings").press("Down", "Down", "Ctrl-U").type("imperial").press("Down", "Enter");
    assertThat(pilot.screen()).contains("Units are metric or us: got").contains("> units");
    assertThat(pilot.book().changes().history(5)).isEmpty();
    pilot.press("Ctrl-U").type("us").press("Enter");
    assertThat(pilot.screen()).contains("Changed: units.");
    assertThat(pilot.book().premises().place("shop", TODAY).orElseThrow().surroundings())
        .isEqualTo(new Indoors(100, 1, 3, 6, OptionalDouble.empty(), OptionalDouble.empty(), 0));
  }
}
