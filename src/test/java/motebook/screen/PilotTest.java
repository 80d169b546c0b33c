package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.model.MaskUse;
import motebook.model.Work;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PilotTest {
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

  @Test
  void a_digit_begins_the_line_and_enter_logs_what_was_read_back() {
    pilot.type("60m orb sand of oak at 9:00");
    assertThat(pilot.screen())
        .contains("orbital sanding of oak in shop by me at 09:00 on 2026-03-04")
        .contains("day outside about 3.13 mg/m³");
    assertThat(pilot.book().hasSessions()).isFalse();
    pilot.press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    assertThat(pilot.screen()).contains("Logged: 1h orbital sanding of oak").contains("about 3.13");
    assertThat(pilot.state().line().blank()).isTrue();
  }

  @Test
  void a_daily_copy_that_cannot_be_made_is_told_beside_what_was_logged() throws IOException {
    pilot.type("20m assembly at 8:00").press("Enter");
    Files.writeString(folder.resolve("book.db.copies"), "a file where the folder should be");
    pilot.type("20m assembly at 9:00").press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    String unwrapped = pilot.screen().replaceAll("\\s+", " ");
    assertThat(unwrapped).contains("Today's copy of the book was not made");
  }

  @Test
  void escape_leaves_the_line_and_keeps_its_text() {
    pilot.type("25m drilling of pine").press("Escape");
    assertThat(pilot.state().where().open()).isFalse();
    assertThat(pilot.screen()).contains("╳ 25m drilling of pine");
    pilot.press("Escape").type(" at 8:00").press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
  }

  @Test
  void a_line_that_is_not_understood_is_not_logged_and_the_word_is_marked() {
    pilot.type("20m orbitel sanding of oak").press("Enter");
    assertThat(pilot.book().hasSessions()).isFalse();
    List<String> screen = pilot.screen().lines().toList();
    String line = screen.get(21);
    assertThat(line).startsWith(" > 20m orbitel sanding of oak");
    int at = line.indexOf("orbitel");
    assertThat(screen.get(20).substring(at)).isEqualTo("▾".repeat(7));
    assertThat(screen.get(20).substring(0, at)).isBlank();
  }

  @Test
  void an_overlap_is_told_at_the_line_which_stays() {
    pilot.type("60m orbital sanding of oak at 9:00").press("Enter");
    pilot.type("30m drilling of oak at 9:30").press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    assertThat(pilot.state().line().text()).isEqualTo("30m drilling of oak at 9:30");
    assertThat(pilot.screen()).contains("09:00");
    assertThat(pilot.state().typing()).isTrue();
  }

  @Test
  void an_overlap_is_told_before_enter_and_the_free_time_is_one_tab_away() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.type("15m drilling of oak");
    assertThat(pilot.screen())
        .contains("overlaps your 11:40-12:00 table saw: say a free time, for example at 11:25")
        .contains("[Tab: at 11:25]");
    pilot.press("Tab");
    assertThat(pilot.state().line().text()).isEqualTo("15m drilling of oak at 11:25");
    assertThat(pilot.screen()).doesNotContain("overlaps");
    pilot.press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
  }

  @Test
  void a_refused_overlap_names_a_free_time_that_is_past() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.type("15m drilling of oak").press("Enter");
    assertThat(String.join(" ", pilot.screen().split("\\s+")))
        .contains("15 minutes are free at 11:25, so say: at 11:25.");
    pilot.press("Tab", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
  }

  @Test
  void a_time_that_was_said_is_exchanged_for_the_free_one_by_tab() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.type("15m drilling of oak at 11:30 note pegs").press("Tab");
    assertThat(pilot.state().line().text()).isEqualTo("15m drilling of oak at 11:25 note pegs");
    assertThat(pilot.screen()).doesNotContain("overlaps");
  }

  @Test
  void a_form_tells_an_overlap_and_offers_the_free_time_for_its_start() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.say("form").type("15m").press("Down").type("drilling");
    assertThat(String.join(" ", pilot.screen().split("\\s+")))
        .contains("overlaps your 11:40-12:00 table saw: say a free time, for example at 11:25");
    while (!pilot.state().pages().form().orElseThrow().field().key().equals("start")) {
      pilot.press("Down");
    }
    pilot.press("Right");
    assertThat(pilot.screen()).contains("11:25").doesNotContain("overlaps");
    pilot.press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
  }

  @Test
  void a_session_that_is_changed_does_not_overlap_itself() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.press("Enter").press("Down", "Down").type("pine");
    assertThat(pilot.screen()).contains("of pine").doesNotContain("overlaps");
  }

  @Test
  void a_note_stays_behind_the_time_that_is_offered() {
    pilot.type("20m table saw of oak").press("Enter");
    pilot.type("15m drilling of oak note for the shelf").press("Tab");
    assertThat(pilot.state().line().text())
        .isEqualTo("15m drilling of oak at 11:25 note for the shelf");
  }

  @Test
  void tab_completes_and_again_offers_another() {
    pilot.type("20m orb");
    String offered = pilot.state().line().choices().get(0);
    pilot.press("Tab");
    assertThat(pilot.state().line().text()).isEqualTo(offered);
    int choices = pilot.state().line().choices().size();
    assertThat(choices).isPositive();
    for (int i = 0; i < choices; i++) {
      pilot.press("Tab");
    }
    assertThat(pilot.state().line().text()).isEqualTo(offered);
    pilot.press("Back-Tab");
    assertThat(pilot.state().line().choices()).contains(pilot.state().line().text());
  }

  @Test
  void undo_asks_with_the_change_and_takes_it_back_on_yes_alone() {
    pilot.type("60m orbital sanding of oak at 9:00").press("Enter", "Ctrl-Z");
    assertThat(pilot.screen()).contains("Take this back? Logged 2026-03-04 09:00");
    pilot.press("Enter", "Ctrl-Z", "Escape");
    assertThat(pilot.screen()).contains("Nothing was taken back.");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).isEmpty();
    assertThat(pilot.screen()).contains("Taken back: Logged 2026-03-04 09:00");
    pilot.press("Ctrl-Z");
    assertThat(pilot.screen()).contains("There is nothing to take back.");
  }

  @Test
  void undo_does_not_take_back_what_another_window_wrote_meanwhile() {
    pilot.type("60m orbital sanding of oak at 9:00").press("Enter", "Ctrl-Z");
    elsewhere(work("me", 8));
    pilot.press("y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    assertThat(pilot.screen()).contains("nothing was taken back");
  }

  @Test
  void what_another_window_writes_appears_within_a_tick() {
    assertThat(pilot.screen()).contains("Nothing is in this book yet.");
    elsewhere(work("me", 8));
    pilot.pass(0);
    assertThat(pilot.screen()).contains("08:00-08:30 drilling");
  }

  private void elsewhere(Work work) {
    Clock clock = Clock.fixed(Instant.parse("2026-03-04T12:00:00Z"), ZoneOffset.UTC);
    try (Book other = Book.open(folder.resolve("book.db"), clock)) {
      other.log(work);
    }
  }

  private static Work work(String person, int hour) {
    return new Work(
        person,
        "shop",
        TODAY,
        LocalTime.of(hour, 0),
        30,
        "drilling",
        Optional.empty(),
        List.of(),
        Optional.empty(),
        "");
  }

  @Test
  void the_days_before_and_after_are_one_key_away_and_today_is_too() {
    pilot.press("Left", "Left");
    assertThat(pilot.screen()).contains("Monday 2 March 2026, 2 days ago");
    pilot.press("Right");
    assertThat(pilot.screen()).contains("Tuesday 3 March 2026, yesterday");
    pilot.say("today");
    assertThat(pilot.screen()).contains("Wednesday 4 March 2026, today");
  }

  @Test
  void a_session_of_another_day_is_shown_on_its_day() {
    pilot.type("60m orbital sanding of oak at 9:00 on 2026-02-20").press("Enter");
    assertThat(pilot.screen()).contains("Friday 20 February 2026, 12 days ago").contains("09:00");
  }

  @Test
  void each_person_has_a_day_of_their_own() {
    ShopDay.log(pilot);
    pilot.say("person");
    assertThat(pilot.screen()).contains("today  Ana").contains("08:30-09:20 orbital sanding");
    pilot.type("10m drilling at 9:30");
    assertThat(pilot.screen()).contains("by Ana");
  }

  @Test
  void the_air_of_the_other_place_is_one_key_away() {
    ShopDay.log(pilot);
    assertThat(pilot.screen()).contains("shop air");
    assertThat(pilot.say("room").screen()).contains("yard air").contains("outdoors");
    assertThat(pilot.say("room").screen()).contains("shop air");
  }

  @Test
  void a_mask_has_its_bar_and_the_notes_say_why_it_is_not_credited() {
    Work plain = work("me", 8);
    pilot
        .book()
        .log(
            new Work(
                "me",
                "shop",
                TODAY,
                plain.start(),
                plain.minutes(),
                "drilling",
                Optional.empty(),
                List.of(),
                Optional.of(new MaskUse("half mask", true, 90)),
                ""));
    pilot.pass(0);
    String bar =
        pilot
            .say("today")
            .screen()
            .lines()
            .filter(l -> l.startsWith(" mask on"))
            .findFirst()
            .orElseThrow();
    assertThat(bar.substring(10)).contains("┅┅").doesNotContain("━");
    assertThat(pilot.screen()).doesNotContain("no mask worn").contains("wearing half mask");
    assertThat(pilot.say("notes").screen()).contains("The mask is not credited in 08:00-08:30");
  }

  @Test
  void a_line_left_unfinished_is_there_when_the_book_is_opened_again() throws IOException {
    pilot.type("25m drilling of Zoë").pass(0).press("Ctrl-C");
    assertThat(pilot.state().over()).isTrue();
    Path file = folder.resolve("book.db.draft");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    try (Pilot next = new Pilot(folder.resolve("book.db")).open()) {
      assertThat(next.screen()).contains("> 25m drilling of Zoë").contains("left unfinished");
      next.press("Ctrl-U").pass(0);
      assertThat(file).doesNotExist();
    }
  }

  @Test
  void control_characters_of_a_paste_are_kept_out() {
    pilot.paste("20m drilling\u001b[2J\u0007\u202e of\toak at 8:00\r\n");
    assertThat(pilot.state().line().text()).isEqualTo("20m drilling[2J of oak at 8:00 ");
    assertThat(pilot.state().typing()).isTrue();
  }

  @Test
  void several_pasted_lines_are_logged_as_one_change_after_a_yes() {
    pilot.paste("20m drilling of oak at 8:00\n\n9:00-9:30 table saw pine\n");
    assertThat(pilot.screen()).contains("Log these 2 sessions? 20m drilling of oak");
    assertThat(pilot.book().hasSessions()).isFalse();
    pilot.press("Escape");
    assertThat(pilot.screen()).contains("Nothing was logged.");
    pilot.paste("20m drilling of oak at 8:00\n9:00-9:30 table saw pine").press("y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(2);
    assertThat(pilot.screen()).contains("Logged 2 sessions as one change.");
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).isEmpty();
  }

  @Test
  void of_several_pasted_lines_none_is_logged_where_one_is_not_understood() {
    pilot.type("5m").press("Escape").paste("20m drilling at 8:00\n20m drillong at 9:00");
    assertThat(pilot.screen()).contains("Line 2:").contains("5m");
    assertThat(pilot.book().hasSessions()).isFalse();
  }

  @Test
  void of_several_pasted_lines_none_is_logged_where_two_overlap() {
    pilot.paste("20m drilling at 8:00\n20m drilling at 8:10").press("y", "Enter");
    assertThat(pilot.book().hasSessions()).isFalse();
    assertThat(pilot.screen()).contains("08:00");
  }

  @Test
  void a_paste_longer_than_any_line_is_left_out() {
    pilot.paste("9".repeat(100_000));
    assertThat(pilot.state().line().text()).isEmpty();
  }

  @Test
  void today_goes_on_to_the_next_day_at_midnight() {
    pilot.pass(12 * 60);
    assertThat(pilot.screen()).contains("Thursday 5 March 2026, today");
  }

  @Test
  void a_window_that_is_too_small_says_so_and_comes_back() {
    assertThat(pilot.resize(59, 15).screen()).contains("needs a window of at least 60");
    assertThat(pilot.resize(60, 14).screen()).contains("columns and 15 rows");
    assertThat(pilot.resize(60, 15).screen()).contains("Nothing is in this book yet.");
  }

  @Test
  void help_opened_from_the_line_leads_back_to_it() {
    pilot.type("20m drill").press("F1");
    assertThat(pilot.state().focus()).isEqualTo(Focus.HELP);
    pilot.press("Escape").type("ing");
    assertThat(pilot.state().line().text()).isEqualTo("20m drilling");
  }

  @Test
  void a_closed_terminal_ends_it() {
    pilot.tell(new Message.Pressed(Key.of(Key.Name.CLOSED)));
    assertThat(pilot.state().over()).isTrue();
  }
}
