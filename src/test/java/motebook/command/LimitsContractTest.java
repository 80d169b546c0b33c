package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How days stand to limits, as the commands say it and as JSON. */
class LimitsContractTest {
  private static final String INSTEAD =
      "Only wet hand methods, or a shrouded tool with a HEPA (class H) vacuum; have it tested.";

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db")).at("2026-03-04T18:00");
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isZero();
    return said.out();
  }

  @ParameterizedTest
  @ValueSource(strings = {"old paint", "treated wood"})
  void work_that_no_limit_covers_is_told_what_to_do_and_never_how_near_a_limit_it_is(String wood) {
    String logged = done("log 30m block sanding of " + wood + " at 9:00 on 2026-03-02");
    String plan = done("plan 30m orbital sanding of " + wood + " at 9:00 on 2026-03-09");
    for (String text : List.of(logged, done("day 2026-03-02"), plan)) {
      assertThat(text)
          .contains("No limit here covers the dust of ")
          .contains(INSTEAD)
          .contains("No dry sweeping, no blow-down. Follow your local rules for ")
          .doesNotContain("times the limit")
          .doesNotContain("chance of being over")
          .doesNotContain("reached")
          .doesNotContain("helps")
          .doesNotContain("outdoors");
    }
    String week = done("week 2026-03-02");
    assertThat(week)
        .contains("Monday: no limit here covers the dust of ")
        .contains(INSTEAD)
        .contains(", no limit covers it")
        .doesNotContain("times the limit")
        .doesNotContain("would help");
  }

  @Test
  void its_json_has_no_limit_and_no_chance() {
    done("log 30m block sanding of old paint at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(day).containsEntry("limit", null);
    assertThat(number(day, "uncovered_percent")).isEqualTo(100);
    assertThat(at(day, "twa", "outside", "chance_over_limit")).isNull();
    assertThat(at(day, "twa", "inside", "chance_over_limit")).isNull();
    assertThat(number(day, "twa", "outside", "central_mg_m3")).isPositive();
    Map<String, Object> plan = shell.json("plan 30m orbital sanding of old paint at 15:00");
    assertThat(at(plan, "plans", 0, "minutes_to_limit")).isNull();
    assertThat(at(plan, "plans", 0, "minutes_to_limit_1_in_20")).isNull();
    assertThat((List<?>) at(plan, "plans", 0, "helps")).isEmpty();
    Map<String, Object> week = shell.json("week 2026-03-02");
    assertThat(at(week, "days", 0, "limit")).isNull();
    assertThat(number(week, "days", 0, "uncovered_percent")).isEqualTo(100);
    assertThat(number(week, "days_over_limit")).isZero();
  }

  @Test
  void no_word_of_a_mixed_day_calls_it_under_its_limit() {
    done("log 5m drilling of oak at 9:00 on 2026-03-02");
    done("log 2m block sanding of old paint at 11:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(at(day, "limit", "key")).isEqualTo("acgih-wood");
    assertThat(number(day, "twa", "outside", "central_mg_m3")).isLessThan(1);
    assertThat(number(day, "uncovered_percent")).isBetween(1.0, 99.0);
    assertThat(number(day, "twa", "outside", "chance_over_limit")).isBetween(0.0, 0.5);
    for (String text :
        List.of(
            done("day 2026-03-02"),
            done("log 1m drilling of oak at 13:00 on 2026-03-02"),
            done("week 2026-03-02"))) {
      assertThat(text)
          .containsIgnoringCase("no limit here covers")
          .doesNotContainPattern("(?i)\\b(under|below|clear|within)\\b");
    }
  }

  @Test
  void red_cedar_beside_oak_is_an_index_in_json_and_a_sum_of_shares_in_words() {
    done("log 60m circular saw of red cedar at 9:00 on 2026-03-02");
    String text = done("log 60m circular saw of oak at 11:00 on 2026-03-02");
    assertThat(text)
        .contains(
            "limit     0.5 mg/m³ for red cedar and 1 mg/m³ for other wood, inhalable dust"
                + " (ACGIH TLV, advisory), shares added: about 3.84 times the limit");
    Map<String, Object> day = shell.json("day 2026-03-02");
    // Derived by src/test/python/limits.py.
    assertThat(number(day, "limit", "index")).isCloseTo(3.83784, within(1e-5));
    assertThat(number(day, "limit", "mg_m3")).isEqualTo(0.5);
    assertThat(number(day, "twa", "outside", "chance_over_limit"))
        .isCloseTo(0.886950, within(1e-6));
  }

  @Test
  void the_advisory_limit_stands_beside_the_legal_one_everywhere() {
    done("limits use osha");
    assertThat(done("log 60m orbital sanding of oak at 9:00 on 2026-03-02"))
        .contains("beside    1 mg/m³ inhalable dust (ACGIH TLV, advisory): about 3.13 times")
        .contains("beside    5 mg/m³ respirable dust (OSHA PEL, United States)")
        .contains("shown only, days are not judged by it");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(at(day, "limits_shown", 0, "key")).isEqualTo("acgih-wood");
    assertThat(number(day, "limits_shown", 0, "chance_over_outside"))
        .isCloseTo(0.808734, within(1e-6));
    assertThat(at(day, "limits_shown", 0, "judges")).isEqualTo(true);
    assertThat(at(day, "limits_shown", 1, "key")).isEqualTo("osha-pnor-respirable");
    assertThat(at(day, "limits_shown", 1, "judges")).isEqualTo(false);
    assertThat(done("week 2026-03-02")).contains("over the advisory limit 1 day");
    assertThat(number(shell.json("week 2026-03-02"), "days_over_advisory")).isEqualTo(1);
    assertThat(done("plan 60m orbital sanding of oak at 9:00 on 2026-03-09"))
        .contains("the advisory limit after 24 min (at 09:24) of this work");
  }

  @Test
  void the_list_of_limits_tells_which_of_them_judge() {
    List<?> limits = (List<?>) shell.json("limits list").get("limits");
    List<Object> shown =
        limits.stream()
            .filter(limit -> at(limit, "judges").equals(false))
            .map(limit -> at(limit, "key"))
            .toList();
    assertThat(shown).containsExactly("osha-pnor-respirable");
  }

  @Test
  void a_long_day_says_the_same_on_the_day_and_in_the_week() {
    done("log 6h assembly of oak at 6:00 on 2026-03-02");
    done("log 6h assembly of oak at 12:00 on 2026-03-02");
    String said =
        "the limit lowered to 0.750 mg/m³ for so long a day (Brief and Scala; practice, not law)";
    assertThat(done("day 2026-03-02")).contains("long day  12 h in the shop: ").contains(said);
    assertThat(done("week 2026-03-02")).contains("long day    Monday, 12 h").contains(said);
    assertThat(at(shell.json("day 2026-03-02"), "long_day"))
        .isEqualTo(at(shell.json("week 2026-03-02"), "days", 0, "long_day"));
  }

  @Test
  void work_over_midnight_is_told_as_one_shift_on_both_days() {
    done("log 60m orbital sanding of oak at 23:00 on 2026-03-02");
    done("log 60m orbital sanding of oak at 0:00 on 2026-03-03");
    // Derived by src/test/python/limits.py; each date alone is 3.125.
    for (String date : List.of("2026-03-02", "2026-03-03")) {
      assertThat(done("day " + date))
          .contains("night     Monday 23:00 to 01:00 held against 8 hours as one shift: outside")
          .contains("about 6.84 times the limit");
      assertThat(number(shell.json("day " + date), "nights", 0, "outside", "typical_mg_m3"))
          .isCloseTo(6.83926, within(1e-5));
    }
    assertThat(done("week 2026-03-02")).containsOnlyOnce("held against 8 hours as one shift");
  }

  @Test
  void the_sheet_of_a_week_of_old_paint_names_no_multiple() throws Exception {
    done("log 30m block sanding of old paint at 9:00 on 2026-03-02");
    Path sheet = folder.resolve("week.html");
    done("export --html " + sheet + " --week 2026-03-02");
    assertThat(Files.readString(sheet))
        .contains("No limit here covers this dust.")
        .contains("not covered")
        .contains(INSTEAD)
        .doesNotContain("times the limit");
  }

  @ParameterizedTest
  @ValueSource(strings = {"oak", "old paint"})
  void results_of_dust_that_no_limit_covers_are_held_against_none(String wood) {
    for (String date : List.of("2026-03-02", "2026-03-03", "2026-03-04")) {
      done("log 4h orbital sanding of " + wood + " at 8:00 on " + date);
      done(
          "sample add --yes --fraction inhalable --from 8:00 --to 12:00 --mg-m3 1"
              + date.charAt(9)
              + ".5 --on "
              + date);
    }
    Object group = at(shell.json("sample list"), "groups", 0);
    assertThat(at(group, "operation")).isEqualTo("orbital-sanding");
    assertThat(at(group, "limit") == null).isEqualTo(wood.equals("old paint"));
  }

  @Test
  void a_night_that_calls_for_more_than_its_days_is_what_the_mask_must_be_enough_for() {
    shell.say("log 90m orbital sanding of oak on 2026-03-02 at 22:30");
    shell.say("log 90m orbital sanding of oak on 2026-03-03 at 0:00");
    for (String date : List.of("2026-03-02", "2026-03-03")) {
      Map<String, Object> day = shell.json("day " + date);
      double night = number(day, "nights", 0, "outside", "central_mg_m3");
      double alone = number(day, "twa", "outside", "central_mg_m3");
      // One mg/m3 is the limit, so the night's mean is its factor too.
      assertThat(night).isGreaterThan(alone * 1.5);
      assertThat(shell.say("day " + date).out())
          .contains("dust needs a factor of %.1f (upper end".formatted(night))
          .contains(" over the night as one shift; no mask worn");
      assertThat(number(day, "required_protection", "dust", "central"))
          .isCloseTo(alone, within(1e-9));
    }
    assertThat(shell.say("week 2026-03-02").out())
        .containsPattern("worst day .*; the night from Monday as one shift about [0-9.]+ times");
  }
}
