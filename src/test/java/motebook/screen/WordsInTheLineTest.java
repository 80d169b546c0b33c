package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import motebook.reference.Reference;
import motebook.screen.state.Act;
import motebook.screen.state.Acts;
import motebook.screen.state.Focus;
import motebook.screen.state.Form;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words in the line that name a page or an act, questions, and the line that is closed. */
class WordsInTheLineTest {
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

  private int changes() {
    return pilot.book().changes().history(1000).size();
  }

  private String words() {
    return pilot.screen().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource({
    "week, WEEK",
    "masks, CARE",
    "due, CARE",
    "filters, CARE",
    "plan, PROMPT",
    "evidence, EVIDENCE",
    "notes, NOTES",
    "favourites, FAVOURITES",
    "settings, FORM",
    "form, FORM",
    "add mask, FORM",
    "find, PROMPT",
    "go to, PROMPT",
    "start, PROMPT",
    "words, WORDS",
    "HELP, HELP",
    "  Week , WEEK"
  })
  void a_word_that_names_a_page_goes_there_and_leaves_the_line_empty(String word, Focus page) {
    pilot.say(word);
    assertThat(pilot.state().focus()).isEqualTo(page);
    assertThat(pilot.state().line().text()).isEmpty();
    assertThat(changes()).isZero();
  }

  @Test
  void every_word_is_told_before_enter_and_in_the_help() {
    pilot.type("masks");
    assertThat(pilot.screen()).contains("Enter: masks and filters, and what is due.");
    String help = pilot.press("Ctrl-U", "?").resize(120, 350).screen();
    for (Act act : Acts.ALL) {
      assertThat(help).contains(String.join(", ", act.words()) + ": " + act.help());
    }
  }

  @Test
  void no_word_is_the_exact_name_of_an_operation_for_that_would_begin_work() {
    List<String> operations =
        Reference.shipped().operations().stream()
            .flatMap(
                row ->
                    Stream.concat(
                        Stream.of(row.key(), row.name(), row.spoken()), row.also().stream()))
            .map(name -> name.toLowerCase(Locale.ROOT))
            .toList();
    assertThat(operations).contains("dry sweeping");
    assertThat(Acts.ALL)
        .flatMap(Act::words)
        .doesNotContainAnyElementsOf(operations)
        .doesNotHaveDuplicates();
  }

  @Test
  void a_line_that_only_begins_with_a_word_is_work_or_is_answered_and_does_nothing() {
    pilot.say("20m drilling of oak at 8:00");
    int before = changes();
    pilot.say("undo it");
    assertThat(words()).contains("The word \"undo\" alone does this: take back the last change");
    assertThat(pilot.state().line().text()).isEqualTo("undo it");
    assertThat(pilot.state().question()).isEmpty();
    pilot.press("Ctrl-U").say("delete the sweeping");
    assertThat(words()).contains("Nothing was done. The word \"delete\" alone does this");
    assertThat(changes()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "y", "no", "yes please", "ok"})
  void an_answer_to_no_question_is_told_how_one_is_answered(String answer) {
    pilot.say(answer);
    assertThat(words()).contains("Nothing is being asked. A question is answered by y and then");
    assertThat(changes()).isZero();
  }

  @Test
  void whatever_else_is_typed_at_a_question_closes_it_and_goes_into_the_line() {
    pilot.say("20m drilling of oak at 8:00").press("Ctrl-Z");
    assertThat(words())
        .contains("Take this back? Logged 2026-03-04 08:00")
        .contains("Press y, then Enter.");
    pilot.type("yard");
    assertThat(pilot.state().question()).isEmpty();
    assertThat(pilot.state().line().text()).isEqualTo("yard");
    pilot.press("Ctrl-U", "Ctrl-Z").type("y");
    assertThat(words()).contains("Enter: yes.");
    pilot.press("Backspace");
    assertThat(pilot.state().question()).isEmpty();
    assertThat(pilot.state().line().text()).isEmpty();
    pilot.press("Ctrl-Z", "Enter");
    assertThat(words()).contains("Nothing was taken back.");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).hasSize(1);
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).isEmpty();
  }

  @Test
  void enter_alone_at_a_question_never_logs_the_line_that_stands_there() {
    pilot.say("20m drilling of oak at 8:00").type("30m assembly at 9:00");
    pilot.press("Escape", "Ctrl-Z", "Enter");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).hasSize(1);
    assertThat(pilot.state().line().text()).isEqualTo("30m assembly at 9:00");
    pilot.press("Escape", "Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).isEmpty();
    assertThat(pilot.state().line().text()).isEqualTo("30m assembly at 9:00");
  }

  @Test
  void escape_closes_the_line_and_opens_it_again_and_a_digit_opens_it_and_goes_in() {
    pilot.press("Escape");
    assertThat(pilot.screen()).contains("closed: letters go to the page").contains("w week");
    pilot.press("w");
    assertThat(pilot.state().focus()).isEqualTo(Focus.WEEK);
    assertThat(pilot.state().line().text()).isEmpty();
    pilot.press("Escape").type("week");
    assertThat(pilot.state().line().text()).isEqualTo("week");
    pilot.press("Ctrl-U", "Escape").type("40m drilling");
    assertThat(pilot.state().line().text()).isEqualTo("40m drilling");
  }

  @Test
  void enter_on_a_closed_line_logs_nothing() {
    pilot.type("20m drilling of oak at 8:00").press("Escape", "Enter");
    assertThat(changes()).isZero();
    pilot.press("Escape", "Enter");
    assertThat(changes()).isEqualTo(1);
    pilot.type("20m").press("Escape", "Ctrl-U");
    assertThat(pilot.state().line().text()).isEmpty();
  }

  @Test
  void the_stop_key_and_its_word_stand_in_the_footer_while_the_stopwatch_runs() {
    assertThat(pilot.screen()).doesNotContain("Ctrl-X");
    pilot.say("start").say("table saw of oak");
    for (String page : List.of("day", "week", "masks", "evidence", "notes", "help")) {
      for (int columns : List.of(80, 60)) {
        assertThat(pilot.resize(columns, columns == 80 ? 24 : 15).screen()).contains("Ctrl-X stop");
      }
      pilot.say(page);
    }
    pilot.pass(10).say("day").press("Left");
    assertThat(pilot.screen()).contains("yesterday").contains("Ctrl-X stop");
    pilot.say("stop");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).hasSize(1);
    assertThat(pilot.screen()).doesNotContain("Ctrl-X");
  }

  @Test
  void pause_and_go_on_do_what_they_say_and_never_the_other() {
    pilot.say("start").say("table saw of oak");
    pilot.pass(5).say("go on");
    assertThat(words()).contains("The stopwatch runs already.");
    pilot.say("pause").say("pause");
    assertThat(words()).contains("The stopwatch is paused already.");
    pilot.say("go on");
    assertThat(pilot.book().stopwatches().all().get(0).running()).isTrue();
  }

  @Test
  void tab_goes_round_the_pages_while_the_line_is_empty() {
    for (Focus focus : List.of(Focus.WEEK, Focus.CARE, Focus.PLAN, Focus.EVIDENCE, Focus.DAY)) {
      assertThat(pilot.press("Tab").state().focus()).isEqualTo(focus);
    }
    assertThat(pilot.press("Back-Tab").state().focus()).isEqualTo(Focus.EVIDENCE);
    assertThat(pilot.press("Home").state().focus()).isEqualTo(Focus.DAY);
  }

  @Test
  void a_name_that_reads_like_work_renames_nobody() {
    pilot.say("settings");
    assertThat(pilot.state().pages().form().orElseThrow().kind()).isEqualTo(Form.Kind.SETTINGS);
    for (String work : List.of("dry sweeping 10 min", "assembly 30m", "jointer oak", "undo it")) {
      pilot.press("Ctrl-U").type(work).press("Enter");
      assertThat(words()).contains("reads like work, not like a name");
    }
    assertThat(pilot.book().settings().person()).isEqualTo("me");
    pilot.press("Ctrl-U").type("Jo Turner").press("Enter");
    assertThat(pilot.book().settings().person()).isEqualTo("Jo Turner");
  }
}
