package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import motebook.journal.Book;
import motebook.report.Invocation;
import motebook.screen.plain.Plain;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import motebook.screen.state.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private final Clock clock = Clock.fixed(Pilot.NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

  /** What is told when these lines are typed one after another. */
  private String told(String... lines) throws IOException {
    StringWriter told = new StringWriter();
    try (Book book = Book.open(folder.resolve("book.db"), clock)) {
      Draft draft = Draft.beside(book.file());
      Clerk clerk = new Clerk(book, clock, draft, Invocation.USUAL);
      new Plain(
              State.opening(Size.USUAL, Look.ASCII, Pilot.NOON, TODAY, draft.read()),
              clerk::perform,
              () -> Pilot.NOON,
              new BufferedReader(new StringReader(String.join("\n", lines) + "\n")),
              new PrintWriter(told, true))
          .run();
    }
    return told.toString();
  }

  @Test
  void a_line_is_read_back_and_logged_by_an_empty_line() throws IOException {
    String told = told("esc", "60m orb sand of oak at 9:00", "", "quit");
    assertThat(told)
        .contains("1h orbital sanding of oak in shop by me at 09:00 on 2026-03-04")
        .contains("An empty line or yes logs it")
        .contains("Logged: 1h orbital sanding of oak")
        .contains("8-h mean  outside about 3.1");
    try (Book book = Book.open(folder.resolve("book.db"), clock)) {
      assertThat(book.sessionsOn(TODAY)).hasSize(1);
    }
  }

  @Test
  void the_words_of_a_line_are_told_wherever_they_are_asked_for() throws IOException {
    String told = told("esc", "words", "20m table saw with", "words controls", "no", "quit");
    assertThat(told)
        .contains("A line understands words of these kinds: durations, operations, materials,")
        .contains("tool vacuum: lets 15 % (6 % to 44 %) through at orbital sanding,")
        .doesNotContain("\"words");
  }

  @Test
  void nothing_is_drawn() throws IOException {
    String told = told("esc", "60m orb sand of oak at 9:00", "", "week", "day", "help", "esc", "q");
    assertThat(told.codePoints().filter(c -> c >= 0x2500 && c < 0x2600)).isEmpty();
    assertThat(told).doesNotContain("\u001b");
  }

  @Test
  void a_line_that_is_not_understood_can_be_said_again() throws IOException {
    String told = told("esc", "20m drillong of oak", "20m drilling of oak at 8:00", "", "q");
    assertThat(told).contains("did you mean drilling").contains("Logged: 20m drilling of oak");
  }

  @Test
  void the_first_run_asks_field_by_field() throws IOException {
    String told = told("Hedda", "", "us", "20 x 16 x 8", "yes", "no", "400 cfm", "save", "q");
    assertThat(told)
        .contains("Field 1 of 7, your name: me")
        .contains("Changed: name, units, equipment, shop");
    try (Book book = Book.open(folder.resolve("book.db"), clock)) {
      assertThat(book.settings().person()).isEqualTo("Hedda");
      assertThat(book.settings().equipment()).containsExactly("collector");
    }
  }

  @Test
  void a_question_is_answered_by_a_word() throws IOException {
    String told = told("esc", "20m drilling of oak at 8:00", "", "undo", "yes", "quit");
    assertThat(told).contains("Take this back?").contains("Taken back: Logged 2026-03-04 08:00");
  }

  @Test
  void a_word_that_is_none_is_told_those_that_are() throws IOException {
    assertThat(told("esc", "weak", "q")).contains("\"weak\"").contains("help lists the words");
  }

  @Test
  void the_stopwatch_and_the_week_are_told_in_lines() throws IOException {
    String told = told("esc", "stopwatch", "table saw of oak", "", "week", "q");
    assertThat(told)
        .contains("What are you starting?")
        .contains("The stopwatch runs: table saw of oak")
        .contains("Stopwatch 0 min: table saw of oak")
        .contains("Week from Monday 2 March 2026, me");
  }

  @Test
  void a_plan_is_told_in_lines() throws IOException {
    String told =
        told(
            "esc",
            "plan",
            "60m orb sand of oak",
            "another way",
            "60m orb sand of oak with tool vac",
            "close",
            "quit");
    assertThat(told)
        .contains("What may be done?")
        .contains("meanwhile 25.0 mg/m³ outside the mask")
        .contains("lowest    2, about 0.469 mg/m³ outside; then 1, 6.67 times that")
        .contains("None of this is written.");
    try (Book book = Book.open(folder.resolve("book.db"), clock)) {
      assertThat(book.hasSessions()).isFalse();
    }
  }

  @Test
  void yes_logs_what_was_read_back_and_no_drops_it() throws IOException {
    String told =
        told("esc", "20m drilling of oak at 8:00", "no", "30m assembly at 9:00", "y", "q");
    assertThat(told).contains("Logged: 30m assembly").doesNotContain("Logged: 20m");
    assertThat(told("quit")).doesNotContain("A line was left unfinished");
  }

  @Test
  void help_tells_the_words_anywhere_and_what_was_read_back_stays() throws IOException {
    String told = told("esc", "20m drilling of oak at 8:00", "help", "yes", "quit");
    assertThat(told).contains("On pages like this one").contains("Logged: 20m drilling of oak");
    assertThat(told).doesNotContain("is no word here").doesNotContain("is no duration");
    assertThat(told.indexOf("An empty line or yes", told.indexOf("In the line"))).isPositive();
  }

  @Test
  void quit_leaves_from_anywhere_and_a_line_is_kept() throws IOException {
    told("esc", "20m drilling of oak at 8:00", "quit", "yes");
    assertThat(told("help", "quit", "o")).contains("A line was left unfinished");
    assertThat(told("esc", "notes", "week", "quit")).contains("Week from Monday 2 March 2026");
  }

  @Test
  void each_answer_of_the_first_run_is_checked_at_once() throws IOException {
    String told = told("Ned", "", "imperial", "us", "", "", "", "", "save", "quit");
    String refused = told.substring(told.indexOf("Field 3 of 7"));
    assertThat(refused.substring(0, refused.indexOf("shop size"))).contains("\"imperial\"");
    assertThat(told).contains("All of it can be changed later: settings");
    assertThat(told).contains("Changed: name, units");
  }

  @Test
  void the_sessions_are_numbered_as_on_the_screen() throws IOException {
    String told =
        told("esc", "20m drilling of oak at 11:00", "", "20m assembly at 8:00", "", "week", "day");
    String day = told.substring(told.lastIndexOf("Wednesday 4 March 2026, me"));
    assertThat(day).contains("   1  08:00-08:20  assembly").contains("   2  11:00-11:20  drilling");
  }

  @Test
  void a_line_that_was_not_logged_is_kept_when_the_input_ends() throws IOException {
    told("esc", "20m drilling of oak at 8:00");
    assertThat(told("q")).contains("A line was left unfinished");
  }
}
