package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Work;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the screens say of limits beside the one that a day is judged by. */
class LimitScreensTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db"));
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void log(LocalDate date, int hour, int minutes, String operation) {
    pilot
        .book()
        .log(
            new Work(
                "me",
                "shop",
                date,
                LocalTime.of(hour, 0),
                minutes,
                operation,
                Optional.of("oak"),
                List.of(),
                Optional.empty(),
                ""));
  }

  private String screen() {
    return pilot.open().resize(120, 40).screen().replaceAll("\\s+", " ");
  }

  @Test
  void a_night_over_the_limit_as_one_shift_is_said_though_each_date_is_below_it() {
    log(TODAY.minusDays(1), 20, 240, "assembly");
    log(TODAY, 0, 240, "assembly");
    assertThat(screen())
        .contains("! Tuesday 20:00 to 04:00 held against 8 hours as one shift: outside about 1.")
        .contains("Probably below the limit");
  }

  @Test
  void a_long_day_over_its_lowered_limit_is_called_practice_and_not_law() {
    // 14 h of assembly are below 2 mg/m³ over 8 h and above (24 − 14)/16 of it.
    log(TODAY, 0, 840, "assembly");
    pilot.book().change(pilot.book().settings().withLimitSet("eu"), "eu");
    assertThat(screen())
        .contains("! 14 h in the shop: ")
        .contains("lowered to 1.25 mg/m³ for so long a day (Brief and Scala; practice, not law).")
        .contains("Limit: about 0.9");
  }

  @Test
  void the_advisory_limit_stands_beside_a_legal_one() {
    log(TODAY, 9, 60, "orbital-sanding");
    pilot.book().change(pilot.book().settings().withLimitSet("osha"), "osha");
    assertThat(screen())
        .contains("limit 15 mg/m³ total (OSHA PEL)")
        .contains("Limit: about 0.139 times, ")
        .contains("Advisory: about 3.13 times, 81 % likely over it.");
  }
}
