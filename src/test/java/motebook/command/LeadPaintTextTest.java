package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of days and weeks with dust that no limit covers. */
class LeadPaintTextTest {
  private static final String PAINT = "20m orbital sanding of old paint at 9:00";

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db")).at("2026-03-04T18:00");
  }

  private void log(String line) {
    Shell.Said said = shell.say("log " + line);
    assertThat(said.code()).as(said.err()).isZero();
  }

  private String week() {
    return shell.say("week").out();
  }

  @Test
  void a_week_of_it_alone_is_not_judged() {
    log(PAINT);
    assertThat(week())
        .contains("over limit  not judged: 1 day (dust that no limit covers)\n")
        .doesNotContain("over limit  no day");
  }

  @Test
  void a_week_with_other_days_counts_those_and_says_how_many_are_not_judged() {
    log("20m orbital sanding of old paint on 2026-03-03 at 9:00");
    log("5m hand planing of oak at 9:00");
    assertThat(week())
        .contains(
            "over limit  no day (best estimate, outside the mask);"
                + " not judged: 1 day (dust that no limit covers)\n");
    log("10m orbital sanding of old paint at 14:00");
    assertThat(week()).contains("; 1 day with some dust that no limit covers\n");
  }
}
