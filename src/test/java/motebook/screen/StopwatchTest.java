package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import motebook.model.Work;
import motebook.screen.state.Focus;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stopwatch that the clock cannot be trusted with: one set back, one left running. */
class StopwatchTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void start() {
    pilot = new Pilot(folder.resolve("book.db")).open();
    pilot.press("Ctrl-T").type("table saw of oak").press("Enter");
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void reopen(int minutesLater) {
    pilot.close();
    pilot = new Pilot(folder.resolve("book.db"));
    pilot.pass(minutesLater).open();
  }

  private List<Work> worked(LocalDate date) {
    return pilot.book().sessionsOn(date).stream().map(session -> session.work()).toList();
  }

  private String words() {
    return pilot.screen().replaceAll("\\s+", " ");
  }

  @Test
  void the_screens_open_on_a_stopwatch_that_starts_after_now_and_say_that_the_clock_was_set() {
    reopen(-90);
    assertThat(words()).contains("Stopwatch: table saw of oak. The clock was set back");
    pilot.resize(60, 15);
    assertThat(words()).contains("the clock was set back; stop asks");
  }

  @Test
  void one_that_starts_after_now_asks_how_long_the_work_took_and_loses_nothing() {
    reopen(-90);
    pilot.press("Ctrl-X");
    assertThat(words()).contains("How long did the work take, or from when to when?");
    pilot.press("Escape");
    assertThat(pilot.book().stopwatches().all()).hasSize(1);
    pilot.press("Ctrl-X").type("25m").press("Enter");
    assertThat(worked(TODAY))
        .extracting(work -> work.start().toString(), Work::minutes, Work::operation)
        .containsExactly(Tuple.tuple("10:05", 25, "table-saw"));
    assertThat(pilot.book().stopwatches().all()).isEmpty();
  }

  @Test
  void one_that_starts_after_now_can_be_paused_at_what_the_work_really_was() {
    reopen(-90);
    pilot.press("Ctrl-T").type("9:40-10:20").press("Enter");
    assertThat(words()).contains("Stopwatch paused at 40 min");
    assertThat(worked(TODAY)).isEmpty();
    pilot.press("Ctrl-X");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(40);
  }

  @Test
  void going_on_before_the_pause_by_a_clock_set_back_asks_too() {
    pilot.pass(60).press("Ctrl-T").pass(-30).press("Ctrl-T").pass(20).press("Ctrl-X");
    assertThat(words()).contains("How long did the work take");
    pilot.type("11:00-11:10").press("Enter");
    assertThat(words()).contains("That overlaps the work before the pause, which ended at 13:00.");
    pilot.press("Escape").pass(60).press("Ctrl-X").type("13:20-13:40").press("Enter");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(60, 20);
  }

  @Test
  void four_hours_are_logged_without_asking() {
    pilot.pass(4 * 60).press("Ctrl-X");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(240);
  }

  @Test
  void one_that_ran_for_over_four_hours_asks_when_the_work_ended() {
    pilot.pass(9 * 60 + 12);
    assertThat(words()).contains("Stopwatch 9 h 12: table saw of oak. Still at it?");
    pilot.press("Ctrl-X");
    assertThat(words())
        .contains("The stopwatch has run for 9 h 12, since 12:00. When did the work end?");
    assertThat(worked(TODAY)).isEmpty();
    pilot.type("12:30").press("Enter");
    assertThat(worked(TODAY))
        .extracting(work -> work.start().toString(), Work::minutes)
        .containsExactly(Tuple.tuple("12:00", 30));
  }

  @Test
  void the_end_may_be_told_by_how_long_it_took_and_now_keeps_all_of_it() {
    pilot.pass(5 * 60).press("Ctrl-X").type("2h10").press("Enter");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(130);
    pilot.press("Ctrl-T").type("drilling of oak").press("Enter").pass(6 * 60).press("Ctrl-X");
    pilot.type("now").press("Enter");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(130, 360);
  }

  @Test
  void one_forgotten_over_night_ends_on_the_day_it_began() {
    pilot.pass(20 * 60).press("Ctrl-X");
    assertThat(words()).contains("since 12:00 on 2026-03-04. When did the work end?");
    pilot.type("16:15").press("Enter");
    assertThat(worked(TODAY)).extracting(Work::minutes).containsExactly(255);
    assertThat(worked(TODAY.plusDays(1))).isEmpty();
  }

  @Test
  void an_end_that_is_still_to_come_or_says_nothing_is_refused_and_asked_again() {
    pilot.pass(5 * 60).press("Ctrl-X").type("18:30").press("Enter");
    assertThat(words()).contains("That ends at 18:30, which is still to come.");
    pilot.press("Ctrl-U").type("lately").press("Enter");
    assertThat(words()).contains("\"lately\" does not say how long");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PROMPT);
    pilot.press("Escape");
    assertThat(pilot.book().stopwatches().all()).hasSize(1);
    assertThat(worked(TODAY)).isEmpty();
  }
}
