package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What little vapour asks of a mask that holds dust alone, and what asks however little it is. */
class VapourNeedsTest {
  private static final String ON = " on 2026-03-02";

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
    done("gear add respirator \"half mask\" --facepiece \"half mask\"");
    done("gear add element pads --for \"half mask\" --class P100 --opened 2026-02-02");
    done("fit record --respirator \"half mask\" --factors 200,200 --on 2026-02-02");
  }

  private void done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + "\n" + said.err()).isZero();
  }

  private void wore(String work) {
    done("log " + work + " wearing half mask checked" + ON);
  }

  private Object refused(int session) {
    return at(shell.json("day 2026-03-02"), "sessions", session, "credit_refused");
  }

  @Test
  void below_a_tenth_of_every_limit_nothing_about_elements_is_asked() {
    wore("25m finishing using 2ml spirits at 9:00");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "required_protection", "vapour", "high90")).isLessThan(0.1);
    assertThat(at(day, "acute").toString()).isEqualTo("[]");
    assertThat(refused(0)).isNull();
    assertThat(number(day, "sessions", 0, "credited_apf")).isEqualTo(10);
    assertThat(number(day, "sessions", 0, "credited_apf_vapour")).isEqualTo(1);
  }

  @Test
  void above_a_tenth_of_a_short_term_limit_alone_it_is_asked() {
    wore("15m finishing using 30ml lacquer at 9:00");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "required_protection", "vapour", "high90")).isLessThan(0.1);
    assertThat(number(day, "acute", 0, "ppm_15_min_high90"))
        .isGreaterThan(0.1 * number(day, "acute", 0, "limit_ppm"));
    assertThat(refused(0)).asString().contains("organic-vapour element");
  }

  @Test
  void a_cartridge_that_is_in_order_counts_all_the_same() {
    done(
        "gear add element cans --for \"half mask\" --class \"organic vapour\" --opened 2026-02-02");
    wore("25m finishing using 2ml spirits at 9:00");
    assertThat(number(shell.json("day 2026-03-02"), "sessions", 0, "credited_apf_vapour"))
        .isEqualTo(10);
  }

  @Test
  void isocyanates_ask_until_three_air_changes_after_the_work() {
    wore("30m finishing using 2ml two-part polyurethane at 9:00");
    // closed, one air change an hour: from 9:30 to 12:30
    wore("20m orbital sanding of oak at 12:00");
    wore("20m orbital sanding of oak at 12:30");
    assertThat(refused(0)).asString().contains("socyanate");
    assertThat(refused(1)).asString().contains("socyanate");
    assertThat(refused(2)).isNull();
  }

  @Test
  void open_doors_change_the_air_sooner() {
    wore("30m finishing using 2ml two-part polyurethane at 9:00");
    // three an hour for half an hour, then one an hour: three changes by 11:30, not by 12:30
    wore("30m orbital sanding of oak with doors open at 9:30");
    wore("20m orbital sanding of oak at 11:00");
    wore("20m orbital sanding of oak at 11:30");
    assertThat(refused(1)).asString().contains("socyanate");
    assertThat(refused(2)).asString().contains("socyanate");
    assertThat(refused(3)).isNull();
  }

  @Test
  void what_has_no_limit_in_the_chosen_set_asks_until_it_is_gone() {
    done("settings vapour-limits niosh");
    done("gear add finish \"bright\" --like lacquer --volatile 100 --solvents \"butanol 1\"");
    wore("10m finishing using 0.1ml bright at 9:00");
    assertThat(refused(0)).asString().contains("organic-vapour element");
    // NIOSH has a ceiling for it and no 8-hour limit; OSHA has one
    done("settings vapour-limits osha");
    assertThat(refused(0)).isNull();
  }

  @Test
  void methylene_chloride_keeps_its_rule_however_little_there_is() {
    wore("10m finishing using 0.1ml stripper at 9:00");
    assertThat(refused(0)).asString().contains("Methylene chloride wants supplied air");
  }
}
