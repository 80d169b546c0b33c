package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The vapour of a week, told beside its dust. */
class WeekVapourTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db")).at("2026-03-06T18:00");
  }

  private void said(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isZero();
  }

  @Test
  void a_week_without_vapour_says_nothing_of_it() {
    said("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    assertThat(at(shell.json("week"), "vapour")).isNull();
    assertThat(shell.say("week").out()).doesNotContain("vapour");
  }

  @Test
  void each_day_with_vapour_stands_as_the_day_itself_has_it_and_the_worst_is_named() {
    said("log 25m finishing with doors open using 250ml lacquer at 9:00 on 2026-03-02");
    said("log 60m finishing using 1500ml contact cement at 9:00 on 2026-03-04");
    Map<String, Object> week = shell.json("week");
    Map<String, Object> worst = shell.json("day 2026-03-04");
    assertThat((List<?>) at(week, "vapour", "days")).hasSize(2);
    for (int day = 0; day < 2; day++) {
      String date = (String) at(week, "vapour", "days", day, "date");
      Map<String, Object> alone = shell.json("day " + date);
      for (String key :
          List.of(
              "mixture_index_outside_central",
              "mixture_index_outside_low90",
              "mixture_index_outside_high90",
              "mixture_index_inside_central")) {
        assertThat(number(week, "vapour", "days", day, key))
            .isEqualTo(number(alone, "vapour", key));
      }
    }
    assertThat(at(week, "vapour", "worst_date")).isEqualTo("2026-03-04");
    assertThat(number(week, "vapour", "worst_mixture_index_outside_central"))
        .isEqualTo(number(worst, "vapour", "mixture_index_outside_central"))
        .isGreaterThan(1);
    assertThat(number(week, "vapour", "days_over_limit")).isEqualTo(1);
    assertThat(shell.say("week").out())
        .contains("vapour      limit 1 for all together: worst outside about ")
        .contains(" on Wed 4 Mar, no mask worn; 2 days with vapour, 1 over 1");
  }

  @Test
  void the_printed_week_tells_its_vapour_too() throws Exception {
    said("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    said("export --html " + folder.resolve("dry.html") + " --week 2026-03-02");
    said("log 60m finishing using 1500ml contact cement at 9:00 on 2026-03-04");
    said("export --html " + folder.resolve("wet.html") + " --week 2026-03-02");
    assertThat(Files.readString(folder.resolve("dry.html"))).doesNotContain("Vapour, limit");
    assertThat(Files.readString(folder.resolve("wet.html")))
        .contains("Vapour, limit 1 in all: worst outside about ")
        .contains(" on Wed 4 Mar, 1 day over.");
  }

  @Test
  void what_has_no_figure_is_told_beside_it() {
    said("log 30m finishing using 200ml two-part polyurethane at 9:00 on 2026-03-02");
    assertThat(at(shell.json("week"), "vapour", "days", 0, "not_all_has_a_figure")).isEqualTo(true);
    assertThat(shell.say("week").out()).contains("; some of it has no figure");
  }

  @Test
  void the_owners_choice_of_limits_judges_the_week_too() {
    said("log 30m finishing using 200ml lacquer at 9:00 on 2026-03-02");
    double stricter = number(shell.json("week"), "vapour", "worst_mixture_index_outside_central");
    said("settings vapour-limits osha");
    assertThat(at(shell.json("week"), "vapour", "limits")).isEqualTo("osha");
    assertThat(number(shell.json("week"), "vapour", "worst_mixture_index_outside_central"))
        .isLessThan(stricter);
  }

  @Test
  void a_week_says_first_whatever_a_day_of_it_warns_of_and_counts_its_days_over_vapour_limits() {
    said("log 60m orbital sanding of oak with tool vacuum at 9:00 on 2026-03-03");
    said("log 60m finishing using 1500ml lacquer at 9:00 on 2026-03-04");
    Map<String, Object> week = shell.json("week");
    Map<String, Object> day = shell.json("day 2026-03-04");
    assertThat(at(week, "days", 2, "warnings")).isEqualTo(day.get("warnings"));
    assertThat(at(week, "days", 2, "acute")).isEqualTo(day.get("acute"));
    assertThat((List<?>) day.get("warnings")).hasSize(2);
    assertThat((List<?>) day.get("acute")).isNotEmpty();
    assertThat(at(week, "days", 1, "warnings")).isEqualTo(List.of());
    assertThat(at(week, "days", 1, "acute")).isEqualTo(List.of());
    String text = shell.say("week").out();
    assertThat(text)
        .contains("warning     Wed 4 Mar: Leave the area and ventilate: toluene may reach")
        .contains("warning     Wed 4 Mar: Stop, ventilate, no ignition source")
        .contains("warning     Wed 4 Mar: toluene over 15 min ", " times NIOSH's short-term limit")
        .contains("over limit  no day by dust, 1 day by vapour over 8 h, 1 day by vapour over 15")
        .doesNotContain("would help");
    assertThat(text.indexOf("warning ")).isLessThan(text.indexOf("Mon 2 Mar"));
    assertThat(week.get("best_change")).isNull();
  }

  @Test
  void a_week_whose_dust_is_nearer_its_limit_still_hears_what_would_help_against_it() {
    said("log 60m orbital sanding of oak at 9:00 on 2026-03-03");
    said("log 20m finishing using 20ml lacquer at 9:00 on 2026-03-04");
    assertThat(shell.say("week").out()).contains("would help  With ").doesNotContain("warning ");
    assertThat(shell.json("week").get("best_change")).isNotNull();
  }

  @Test
  void the_printed_week_gives_the_warnings_of_its_days() throws Exception {
    said("log 60m finishing using 1500ml lacquer at 9:00 on 2026-03-04");
    said("export --html " + folder.resolve("wet.html") + " --week 2026-03-02");
    assertThat(Files.readString(folder.resolve("wet.html")))
        .contains("Wed 4 Mar: Leave the area and ventilate: toluene may reach");
  }
}
