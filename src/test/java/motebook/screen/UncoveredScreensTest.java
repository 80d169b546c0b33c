package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Work;
import motebook.screen.draw.Aloud;
import motebook.screen.state.Size;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dust of old paint on every screen: no multiple of a limit, no minutes left, no help. */
class UncoveredScreensTest {
  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db"));
    pilot.book().log(work(LocalTime.of(9, 0), "old-paint"));
    pilot.open();
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private static Work work(LocalTime start, String material) {
    return new Work(
        "me",
        "shop",
        Pilot.NOON.toLocalDate(),
        start,
        30,
        "orbital-sanding",
        Optional.of(material),
        List.of(),
        Optional.empty(),
        "");
  }

  private String screen() {
    return pilot.screen().replaceAll("\\s+", " ");
  }

  @Test
  void the_day_says_what_to_do_instead_of_how_near_a_limit_it_is() {
    assertThat(screen())
        .contains("no limit here covers this dust")
        .contains("! Only wet hand methods, or a shrouded tool with a HEPA (class H) vacuum;")
        .contains("! No dry sweeping, no blow-down. Follow your local rules for lead.")
        .doesNotContain("chance over")
        .doesNotContain("Probably")
        .doesNotContain("limit 1");
    pilot.resize(60, 15);
    assertThat(screen()).contains("no limit here covers this dust").doesNotContain("chance over");
  }

  @Test
  void it_is_said_the_same_to_those_who_listen() {
    assertThat(String.join(" ", Aloud.page(pilot.state())))
        .contains("No limit here covers the dust of wood with old paint. ")
        .contains("Only wet hand methods, or a shrouded tool")
        .doesNotContain("times the limit")
        .doesNotContain("chance of being over");
  }

  @Test
  void the_week_counts_it_apart_and_advises_nothing_for_it() {
    pilot.resize(120, 40).say("week");
    assertThat(screen())
        .contains("over the limit: not judged: 1 day (dust that no limit covers)")
        .doesNotContain("would have been");
  }

  @Test
  void a_stopwatch_on_it_gives_no_minutes_left() {
    pilot.press("Ctrl-T").type("orbital sanding of old paint").press("Enter").pass(10);
    assertThat(screen())
        .contains("No limit here covers this dust: no minutes left can be given.")
        .doesNotContain("left before");
  }

  @Test
  void a_plan_of_it_offers_no_help() {
    pilot.say("plan").type("30m orbital sanding of old paint at 13:00").press("Enter");
    assertThat(screen())
        .contains("No limit here covers the dust of wood with old paint.")
        .doesNotContain("helps")
        .doesNotContain("outdoors")
        .doesNotContain("reached");
  }

  @Test
  void a_day_with_other_dust_too_keeps_saying_what_the_limit_does_not_cover() {
    pilot.book().log(work(LocalTime.of(10, 0), "oak"));
    pilot.resize(120, 40).say("week").say("day");
    assertThat(screen())
        .contains("of the dust no limit here covers: wood with old paint.")
        .contains("Probably over the limit (about ")
        .doesNotContain("elow the limit");
    assertThat(pilot.resize(Size.USUAL.columns(), Size.USUAL.rows()).screen())
        .contains("limit 1 mg/m³ inhalable");
  }
}
