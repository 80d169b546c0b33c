package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import motebook.screen.state.Focus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What work would bring, asked on the screens. */
class PlanKeysTest {
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

  private Pilot plan(String line) {
    return pilot.say("plan").type(line).press("Enter");
  }

  @Test
  void a_plan_is_shown_with_what_would_help_and_writes_nothing() {
    // 60 min of orbital sanding of oak from clean air are 25 mg/m³ by the definition of its figure.
    plan("60m orbital sanding of oak");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PLAN);
    assertThat(pilot.screen())
        .contains("1h orbital sanding of oak in shop by me at 12:00 on 2026-03-04")
        .contains("25.0 mg/m³ outside the mask")
        .contains("with tool vacuum: about");
    assertThat(pilot.book().hasSessions()).isFalse();
    assertThat(pilot.press("Home").screen()).contains("Nothing is in this book yet");
  }

  @Test
  void several_ways_are_held_against_each_other() {
    plan("60m orbital sanding of oak");
    pilot.press("Enter").type("60m orbital sanding of oak with tool vac").press("Enter");
    assertThat(pilot.screen())
        .contains("> 2  1h orbital sanding of oak with tool va")
        .contains("lowest    2, about 0.469 mg/m³ outside; then 1, 6.67 times that");
    pilot.press("Delete");
    assertThat(pilot.screen()).contains("> 1  1h orbital sanding of oak ").doesNotContain("lowest");
    pilot.press("Delete");
    assertThat(pilot.screen()).contains("No plan is left");
  }

  @Test
  void plans_stay_and_begin_when_they_are_looked_at() {
    plan("60m orbital sanding of oak");
    pilot.press("Home").pass(30).say("plan");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PLAN);
    assertThat(pilot.screen()).contains("at 12:30 on 2026-03-04");
    pilot.say("week").say("plan");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PLAN);
    pilot.press("Back-Tab", "Back-Tab");
    assertThat(pilot.state().focus()).isEqualTo(Focus.WEEK);
  }

  @Test
  void a_line_that_cannot_be_read_stays_with_what_is_wrong() {
    plan("60m orbitel sanding of oak");
    assertThat(pilot.state().focus()).isEqualTo(Focus.PROMPT);
    assertThat(pilot.screen()).contains("orbitel").contains("did you mean orbital sanding?");
    pilot.press("Escape");
    assertThat(pilot.state().pages().plan().lines()).isEmpty();
  }

  @Test
  void the_line_of_a_plan_completes_with_what_is_to_come() {
    pilot.say("plan").type("40m assembly tom");
    assertThat(pilot.screen()).doesNotContain("yesterday");
    pilot.press("Ctrl-U").type("40m assembly tomorrow at 9:00").press("Enter");
    assertThat(pilot.screen()).contains("at 09:00 on 2026-03-05");
  }

  @Test
  void a_plan_goes_into_the_line_to_be_logged() {
    plan("20m orbital sanding of oak tomorrow at 9:00").press("Ctrl-L");
    assertThat(pilot.state().focus()).isEqualTo(Focus.DAY);
    assertThat(pilot.state().typing()).isTrue();
    assertThat(pilot.state().line().text()).isEqualTo("20m orbital sanding of oak");
    pilot.press("Enter");
    assertThat(pilot.book().sessionsOn(Pilot.NOON.toLocalDate())).hasSize(1);
  }

  @Test
  void a_way_that_is_typed_on_the_page_is_compared_and_never_logged() {
    plan("60m orbital sanding of oak");
    pilot.type("60m orbital sanding of oak with tool vac");
    assertThat(pilot.screen()).contains("Enter compare").doesNotContain("Enter log it");
    pilot.press("Enter");
    assertThat(pilot.book().hasSessions()).isFalse();
    assertThat(pilot.state().focus()).isEqualTo(Focus.PLAN);
    assertThat(pilot.state().line().text()).isEmpty();
    assertThat(pilot.screen()).contains("lowest    2, about 0.469 mg/m³ outside");
    pilot.say("20m drilling of oak tomorrow at 9:00");
    assertThat(pilot.state().pages().plan().lines()).hasSize(3);
    assertThat(pilot.draft().read()).isEmpty();
  }

  @Test
  void a_way_that_cannot_be_read_stays_in_the_line_of_the_page_with_what_is_wrong() {
    plan("60m orbital sanding of oak");
    pilot.say("60m orbitel sanding of oak");
    assertThat(pilot.screen()).contains("did you mean orbital sanding?");
    assertThat(pilot.state().line().text()).isEqualTo("60m orbitel sanding of oak");
    pilot.press("Ctrl-U").say("week");
    assertThat(pilot.state().focus()).isEqualTo(Focus.WEEK);
  }

  @Test
  void with_work_logged_at_that_time_it_comes_in_its_place() {
    pilot.type("60m orbital sanding of oak at 9:00").press("Enter");
    plan("60m orbital sanding of oak with tool vac at 9:00");
    assertThat(pilot.screen())
        .contains("instead   of session 1, 09:00-10:00")
        .contains("takes off");
  }
}
