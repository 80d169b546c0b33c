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

  @Test
  void where_it_comes_first_it_is_what_would_help_and_no_other_control_is_named() {
    log("40m orbital sanding of old paint at 9:00");
    log("30m orbital sanding of oak at 13:00");
    assertThat(week())
        .contains(
            "would help  First the wood with old paint, whose dust no limit here covers. Only wet"
                + " hand methods, or a shrouded tool with a HEPA (class H) vacuum; have it tested.\n")
        .doesNotContain("would have been");
    assertThat(shell.json("week").get("best_change")).isNull();
  }

  @Test
  void where_other_work_comes_first_its_best_control_is_named_still() {
    log("5m block sanding of old paint at 9:00");
    log("60m orbital sanding of oak at 13:00");
    assertThat(week()).contains("would help  With ").contains("orbital sanding of oak the mean");
  }

  @Test
  void what_is_passed_already_is_told_so_after_it() {
    log("10m orbital sanding of old paint at 9:00");
    assertThat(shell.say("plan 10m dry sweeping at 10:00").out())
        .contains("with a chance of 1 in 20 before this work\n")
        .doesNotContain("after 1 min");
    log("3h orbital sanding of old paint at 10:30");
    assertThat(shell.say("plan 10m dry sweeping at 14:00").out())
        .contains("reached   over the dust limit before this work, more likely than not\n")
        .doesNotContain("after 1 min");
  }

  @Test
  void its_dust_is_not_swept_up_dry_by_anybody_in_that_place_that_day() {
    shell.say("person add Ana");
    log(PAINT + " by Ana");
    String sentence = "note      Dust of wood with old paint is left in shop: no dry sweeping,";
    assertThat(shell.say("plan 10m dry sweeping at 17:00").out())
        .contains(sentence)
        .contains("Follow your local rules for lead.");
    assertThat(shell.say("plan 10m dry sweeping at 8:00").out()).doesNotContain("is left in");
    assertThat(shell.say("plan 10m dry sweeping outdoors at 17:00").out())
        .doesNotContain("is left in");
    assertThat(shell.say("plan 10m damp sweeping at 17:00").out()).doesNotContain("is left in");
  }
}
