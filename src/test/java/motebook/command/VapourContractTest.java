package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import motebook.model.Figures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The keys and figures of finishes and their vapour that other programs may rely on. */
class VapourContractTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  private void said(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isZero();
  }

  @Test
  void a_cartridge_has_one_figure_of_its_use_on_every_page_of_a_day() {
    said("gear add respirator mask --facepiece \"half mask\" --for me");
    said("gear add element carts --for mask --class \"organic vapour\" --pair --opened 2026-03-02");
    said("log 25m finishing using 60ml lacquer wearing mask checked at 9:00 on 2026-03-02");
    Map<String, Object> clock = vapourClock();
    double hours = number(clock, "hours_left_like_last");
    assertThat(hours).isPositive();
    String words = "vapour life " + left(clock);
    assertThat(shell.say("week 2026-03-02").out()).contains("carts: 0.417 h worn, " + words);
    assertThat(shell.say("gear clocks").out()).contains("(" + left(clock) + ")");
    // The typical share is in JSON alone.
    assertThat(number(shell.json("gear clocks"), "elements", 0, "vapour_used_typical_percent"))
        .isBetween(0.001, 100 * number(clock, "used"));
    assertThat(shell.say("week 2026-03-02").out()).doesNotContain("% of its vapour life");

    said("log 4h finishing using 3000ml lacquer wearing mask checked at 10:00 on 2026-03-02");
    assertThat(shell.say("gear clocks").out()).contains("vapour life").contains("(used up), over");
    assertThat(shell.say("due").out()).contains("(used up)");
    assertThat(shell.say("week 2026-03-02").out())
        .contains("came to its end Mon (vapour life")
        .doesNotContain("left of work like its last");
  }

  private static String left(Map<String, Object> clock) {
    double days = number(clock, "working_days_left_like_last");
    return (days < 1
            ? "about " + Figures.rounded(number(clock, "hours_left_like_last")) + " h"
            : "about " + Figures.count((long) days, "working day"))
        + " left of work like its last";
  }

  private Map<String, Object> vapourClock() {
    List<?> clocks = (List<?>) at(shell.json("gear clocks"), "elements", 0, "clocks");
    for (Object each : clocks) {
      @SuppressWarnings("unchecked")
      Map<String, Object> clock = (Map<String, Object>) each;
      if (clock.get("clock").equals("vapour")) {
        return clock;
      }
    }
    throw new AssertionError("no clock of vapour");
  }

  @Test
  void a_day_with_vapour_answers_with_its_keys_and_the_derived_figures() {
    said(
        "log 25m finishing with doors open using 250ml lacquer and 50ml lacquer thinner at 9:00"
            + " on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(at(day, "sessions", 0, "finishes"))
        .isEqualTo(
            List.of(
                Map.of("finish", "lacquer", "ml", 250.0),
                Map.of("finish", "lacquer-thinner", "ml", 50.0)));
    assertThat(number(day, "sessions", 0, "credited_apf_vapour")).isEqualTo(1);
    assertThat(at(day, "sessions", 0, "credit_refused_vapour")).isNull();
    // Derived on the model's equations in small steps: src/test/python/vapour.py.
    assertThat(at(day, "vapour", "limits")).isEqualTo("stricter");
    assertThat(at(day, "vapour", "solvents", 0, "solvent")).isEqualTo("toluene");
    assertThat(number(day, "vapour", "solvents", 0, "twa_outside_ppm"))
        .isCloseTo(5.72403, within(1e-4));
    assertThat(number(day, "vapour", "solvents", 0, "twa_inside_ppm"))
        .isCloseTo(5.72403, within(1e-4));
    assertThat(number(day, "vapour", "solvents", 0, "limit_ppm")).isEqualTo(100);
    assertThat(at(day, "vapour", "solvents", 0, "limit_body")).isEqualTo("NIOSH REL");
    for (String side : List.of("outside", "inside")) {
      String key = "mixture_index_" + side;
      assertThat(number(day, "vapour", key)).isCloseTo(0.155469, within(1e-6));
      assertThat(number(day, "vapour", key + "_low90"))
          .isLessThan(number(day, "vapour", key + "_central"));
      assertThat(number(day, "vapour", key + "_high90"))
          .isGreaterThan(number(day, "vapour", key + "_central"));
    }
    assertThat(at(day, "vapour", "not_judged")).isEqualTo(List.of());
    assertThat(at(day, "vapour", "not_estimated")).isEqualTo(List.of());
    assertThat(number(day, "vapour", "lower_flammable_limit_percent_high90")).isGreaterThan(10);
    assertThat(at(day, "vapour", "remarks")).isEqualTo(List.of());
    assertThat(at(day, "cautions").toString()).contains("pools at the floor and at the can");
  }

  @Test
  void a_day_answers_how_much_protection_it_needs_and_how_much_counts() {
    said("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    said("log 25m finishing using 250ml lacquer and 50ml lacquer thinner at 11:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    Object limit = at(day, "limit", "mg_m3");
    assertThat(limit).isEqualTo(1.0);
    assertThat(number(day, "required_protection", "dust", "central"))
        .isCloseTo(number(day, "twa", "outside", "central_mg_m3"), within(1e-9));
    assertThat(number(day, "required_protection", "dust", "high90"))
        .isCloseTo(number(day, "twa", "outside", "high90_mg_m3"), within(1e-9));
    assertThat(number(day, "required_protection", "dust", "counted")).isEqualTo(1);
    assertThat(number(day, "required_protection", "vapour", "central"))
        .isEqualTo(number(day, "vapour", "mixture_index_outside_central"));
    assertThat(number(day, "required_protection", "vapour", "high90"))
        .isEqualTo(number(day, "vapour", "mixture_index_outside_high90"));
    assertThat(shell.say("day 2026-03-02").out())
        .contains("dust needs a factor of 3.20 (upper end 27.3)");
  }

  @Test
  void a_mask_that_counts_is_held_against_what_the_day_needs() {
    said("gear add respirator \"half mask\" --facepiece \"half mask\"");
    said("gear add element pads --for \"half mask\" --class P100 --opened 2026-02-02");
    said(
        "fit record --respirator \"half mask\" --person me --on 2026-02-02 --method quantitative"
            + " --factors 200,180,150,120,90,110,210");
    said("log 60m orbital sanding of oak wearing half mask checked at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "required_protection", "dust", "counted")).isCloseTo(10, within(1e-9));
    assertThat(shell.say("day 2026-03-02").out())
        .contains("dust needs a factor of 3.13 (upper end 26.7); yours counts 10");
    // Derived: eight hours of it are 25 mg/m3 and more against 1 mg/m3, over the factor of 10.
    said("log 8h orbital sanding of oak wearing half mask checked at 10:00 on 2026-03-02");
    assertThat(at(shell.json("day 2026-03-02"), "warnings").toString())
        .contains("This mask is not enough: half mask counts as 10", "the day's dust needs");
    assertThat(number(shell.json("day 2026-03-02"), "sessions", 1, "credited_apf")).isEqualTo(10);
  }

  @Test
  void dust_of_two_limits_needs_what_their_shares_add_up_to_and_lead_paint_has_no_figure() {
    said("log 60m table saw of red cedar at 9:00 on 2026-03-02");
    said("log 60m table saw of oak at 11:00 on 2026-03-02");
    Map<String, Object> mixed = shell.json("day 2026-03-02");
    assertThat(number(mixed, "required_protection", "dust", "central"))
        .isEqualTo(number(mixed, "limit", "index"));
    said("log 30m block sanding of old paint at 9:00 on 2026-03-01");
    assertThat(at(shell.json("day 2026-03-01"), "required_protection", "dust")).isNull();
    assertThat(shell.say("day 2026-03-01").out()).doesNotContain("needs a factor");
  }

  @Test
  void without_dust_that_a_limit_judges_or_without_vapour_there_is_nothing_to_need() {
    said("limits use eu");
    said("log 30m orbital sanding of pine at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(at(day, "required_protection", "dust")).isNull();
    assertThat(at(day, "required_protection", "vapour")).isNull();
    assertThat(at(day, "acute")).isEqualTo(List.of());
  }

  @Test
  void the_worst_quarter_of_an_hour_is_held_against_every_short_term_limit_it_comes_near() {
    said(
        "log 25m finishing with doors open using 250ml lacquer and 50ml lacquer thinner at 9:00"
            + " on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat((List<?>) at(day, "acute"))
        .extracting(row -> at(row, "solvent") + " " + at(row, "authority") + " " + at(row, "kind"))
        .startsWith("toluene NIOSH stel", "toluene OSHA ceiling", "butanol NIOSH ceiling")
        .contains("mineral-spirits NIOSH ceiling");
    // src/test/python/short_term.py: 128.6721 ppm typical; the median of two finishes is as high
    // within a thousandth.
    assertThat(number(day, "acute", 0, "ppm_15_min_central")).isCloseTo(128.6721, within(0.2));
    assertThat(number(day, "acute", 0, "ppm_15_min_high90")).isBetween(390.0, 410.0);
    assertThat(number(day, "acute", 0, "limit_ppm")).isEqualTo(150);
    assertThat(at(day, "acute", 0).toString()).doesNotContain("inside");
    assertThat(shell.say("day 2026-03-02").out())
        .contains(
            "15 min    toluene about 129 ppm (40.8 to 406): 0.859 times NIOSH's short-term limit")
        .contains("0.429 times OSHA's ceiling of 300")
        .contains("n-butanol about 21.4 ppm", "NIOSH's ceiling of 50");
  }

  @Test
  void no_page_shows_more_vapour_than_air_can_hold() {
    said("log 4h finishing using 20000ml mineral spirits at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    // Derived: 0.11 kPa of 101.325 are 1085.6 ppm.
    assertThat(number(day, "acute", 0, "ppm_15_min_high90")).isCloseTo(1085.6, within(0.1));
    assertThat(number(day, "acute", 0, "ppm_15_min_central")).isLessThanOrEqualTo(1085.7);
    assertThat(at(day, "acute", 0, "capped_at_saturation")).isEqualTo(true);
    assertThat(shell.say("day 2026-03-02").out().replaceAll("\\s+", " "))
        .contains("capped at the 1090 ppm that air of 25 °C can hold");
  }

  @Test
  void air_that_may_be_immediately_dangerous_is_to_be_left() {
    said("log 25m finishing using 500ml contact cement at 9:00 on 2026-03-02");
    String warnings = at(shell.json("day 2026-03-02"), "warnings").toString();
    assertThat(warnings)
        .contains("Leave the area and ventilate: toluene may reach")
        .contains("above 500 ppm it is immediately dangerous")
        .contains("entering such air is licensed work")
        .doesNotContain("gear add");
    assertThat(shell.say("day 2026-03-02").out()).contains("warning   Leave the area");
  }

  @Test
  void from_a_quarter_of_the_flammable_limit_on_work_stops() {
    said("log 20m finishing using 1l contact cement at 9:00 on 2026-03-02");
    assertThat(shell.say("day 2026-03-02").out())
        .contains("Stop, ventilate, no ignition source: the air within arm's length may reach")
        .contains("at the wet film it is always higher");
  }

  @Test
  void rags_are_warned_of_wherever_a_finish_may_dry_by_oxidation() {
    for (String work :
        List.of("oiling", "staining", "finishing", "finishing using 50ml oil stain")) {
      Shell other = new Shell(folder.resolve(work.replace(' ', '-') + ".db"));
      assertThat(other.say("log 20m " + work + " at 9:00").code()).isZero();
      assertThat(at(other.json("day"), "cautions").toString())
          .as(work)
          .contains("Rags with a drying oil or varnish heat themselves");
    }
    said("log 20m finishing using 50ml waterborne at 9:00");
    said("log 20m assembly at 10:00");
    assertThat(at(shell.json("day"), "cautions").toString()).doesNotContain("Rags");
  }

  @Test
  void a_low_share_of_the_flammable_limit_is_null_and_not_shown() {
    said("log 25m finishing using 20ml lacquer at 9:00 on 2026-03-02");
    assertThat(at(shell.json("day 2026-03-02"), "vapour", "lower_flammable_limit_percent_high90"))
        .isNull();
    assertThat(shell.say("day 2026-03-02").out())
        .doesNotContain("flammable limit")
        .contains("no flame, pilot light, heater or spark");
  }

  @Test
  void a_day_without_vapour_has_none_of_its_keys() {
    said("log 60m orbital sanding of oak at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(day).doesNotContainKey("vapour");
    assertThat(at(day, "sessions", 0).toString()).doesNotContain("vapour", "finishes");
  }

  @Test
  void what_is_warned_of_and_never_estimated_is_named() {
    said("log 25m finishing using 100ml two-part polyurethane at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(at(day, "vapour", "not_estimated")).isEqualTo(List.of("isocyanates"));
    assertThat(shell.say("day 2026-03-02").out())
        .contains("warned of and not estimated: isocyanates");
  }

  @Test
  void a_data_sheet_is_entered_said_listed_replaced_and_taken_back() {
    String sheet = "gear add finish \"Quick Clear\" --like lacquer --volatile 640 --solvents ";
    said(sheet + "\"toluene 20%, mineral spirits 80%\"");
    said("log 25m finishing using 100ml quick clear at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    double before = number(day, "vapour", "mixture_index_outside");
    Map<String, Object> listed = shell.json("gear finishes");
    assertThat(at(listed, "finishes", 16, "finish")).isEqualTo("quick-clear");
    assertThat(number(listed, "finishes", 16, "volatile_g_l")).isEqualTo(640);
    assertThat(at(listed, "finishes", 16, "solvent_weight_shares"))
        .isEqualTo(Map.of("toluene", 0.2, "mineral-spirits", 0.8));
    assertThat(at(listed, "finishes", 16, "own")).isEqualTo(true);
    assertThat(shell.say(sheet + "\"acetone 1\"").err()).contains("\"Quick Clear\" already");
    said(sheet.replace("640", "320") + "\"toluene 0.2 mineral spirits 0.8\" --replace");
    assertThat(number(shell.json("day 2026-03-02"), "vapour", "mixture_index_outside"))
        .isCloseTo(before / 2, within(1e-9));
    said("undo");
    assertThat(number(shell.json("day 2026-03-02"), "vapour", "mixture_index_outside"))
        .isCloseTo(before, within(1e-12));
  }

  @Test
  void one_finish_has_one_data_sheet_whichever_of_its_names_it_is_given() {
    String rest = " --like lacquer --volatile 640 --solvents \"toluene 1\"";
    said("gear add finish lacquer" + rest);
    assertThat(shell.say("gear add finish \"nitrocellulose lacquer\"" + rest).err())
        .contains("is another name of \"lacquer\"");
    assertThat(shell.say("gear finishes").out())
        .contains("lacquer: 640 g/L of vapour (toluene 100 %)");
  }

  @Test
  void a_data_sheet_that_sessions_used_is_retired_for_work_to_come() {
    said("gear add finish \"Quick Clear\" --like lacquer --volatile 640 --solvents \"toluene 1\"");
    said("log 10m finishing using 80ml quick clear at 9:00 on 2026-03-02");
    double before = number(shell.json("day"), "vapour", "mixture_index_outside");
    Shell.Said gone = shell.say("gear remove \"quick clear\"");
    assertThat(gone.code()).isZero();
    assertThat(gone.out()).startsWith("Sessions used quick clear, so it was retired on 2026-03-02");
    assertThat(number(shell.json("day"), "vapour", "mixture_index_outside")).isEqualTo(before);
    shell.at("2026-03-03T18:00");
    assertThat(shell.say("gear finishes").out()).doesNotContain("Quick Clear");
    Shell.Said refused = shell.say("log 10m finishing using 80ml quick clear at 9:00");
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err())
        .contains("Quick Clear was retired on 2026-03-02")
        .contains("motebook gear add finish \"Quick Clear\" --replace");
    // forgotten work of a day on which it was still in use may be said later
    said("log 10m finishing using 80ml quick clear at 11:00 on 2026-03-02");
    said(
        "gear add finish \"Quick Clear\" --like lacquer --volatile 500 --solvents \"toluene 1\""
            + " --replace");
    said("log 10m finishing using 80ml quick clear at 9:00");
  }

  @Test
  void a_removed_sheet_gives_a_shipped_finish_its_figures_back() {
    said("log 10m finishing using 80ml lacquer at 9:00");
    double shipped = number(shell.json("day"), "vapour", "mixture_index_outside");
    said("gear add finish lacquer --like lacquer --volatile 100 --solvents \"acetone 1\"");
    assertThat(number(shell.json("day"), "vapour", "mixture_index_outside")).isLessThan(shipped);
    assertThat(shell.say("gear remove lacquer").out())
        .isEqualTo(
            "Deleted the data sheet of lacquer: the shipped figures count again, on past days too.\n");
    assertThat(number(shell.json("day"), "vapour", "mixture_index_outside")).isEqualTo(shipped);
  }

  @Test
  void an_amount_in_ounces_is_told_with_its_millilitres() {
    said("log 20m finishing using 3 fl oz wiping oil and 250ml lacquer at 9:00");
    assertThat(shell.say("day").out())
        .contains("finishing using 3 fl oz (89 ml) wiping oil and 250 ml lacquer");
    // a US gallon is 231 cubic inches of 2.54 cm, 128 ounces to it
    assertThat(number(shell.json("day"), "sessions", 0, "finishes", 0, "ml")).isEqualTo(88.720589);
  }

  @Test
  void warnings_stand_before_the_dose_wherever_a_day_is_read() {
    String line = "20m finishing using 1l contact cement at 9:00 on 2026-03-02";
    for (String command : List.of("plan " + line, "log " + line, "day 2026-03-02")) {
      String said = shell.say(command).out();
      assertThat(said).as(command).contains("warning   Stop, ventilate", "8-h mean  outside");
      assertThat(said.lastIndexOf("warning   ")).isLessThan(said.indexOf("8-h mean  outside"));
    }
  }

  @Test
  void the_factor_that_vapour_needs_is_the_largest_over_each_limits_own_time() {
    said("log 60m finishing using 500ml lacquer at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    double quarter =
        number(day, "acute", 0, "ppm_15_min_central") / number(day, "acute", 0, "limit_ppm");
    assertThat(number(day, "required_protection", "vapour", "central"))
        .isEqualTo(number(day, "vapour", "mixture_index_outside_central"))
        .isLessThan(quarter);
    assertThat(shell.say("day 2026-03-02").out())
        .contains(
            "vapour (toluene, NIOSH's short-term limit) needs a factor of "
                + Figures.rounded(quarter));
  }

  @Test
  void epas_limit_over_8_hours_is_one_of_those_that_a_factor_is_needed_for() {
    said(
        "gear add finish \"Strip\" --like lacquer --volatile 800 --solvents \"methylene chloride 1\"");
    said("log 4h finishing using 30ml Strip at 9:00 on 2026-03-02");
    assertThat(shell.say("day 2026-03-02").out()).contains("EPA's limit over 8 h) needs a factor");
  }

  @Test
  void a_mask_that_the_upper_end_of_15_minutes_is_too_much_for_may_not_be_enough() {
    said("gear add respirator mask --facepiece \"half mask\" --for me");
    said("gear add element carts --for mask --class \"organic vapour\" --pair --opened 2026-03-02");
    said("gear add element pads --for mask --class P100 --opened 2026-03-02");
    said(
        "fit record --respirator mask --person me --on 2026-02-02 --method quantitative"
            + " --factors 200,180,150,120,90,110,210");
    said("gear add finish \"Clear\" --like lacquer --volatile 500 --solvents \"butanol 1\"");
    said("log 60m finishing using 300ml Clear wearing mask checked at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "sessions", 0, "credited_apf_vapour")).isEqualTo(10);
    // NIOSH's ceiling of n-butanol, 50 ppm, ten times over.
    assertThat(number(day, "acute", 0, "limit_ppm")).isEqualTo(50);
    assertThat(number(day, "acute", 0, "ppm_15_min_central")).isLessThan(500);
    assertThat(number(day, "acute", 0, "ppm_15_min_high90")).isGreaterThan(500);
    assertThat(at(day, "warnings").toString())
        .contains("This mask may not be enough: mask counts as 10, good for 500 ppm of n-butanol")
        .contains("the worst 15 minutes may reach", "(upper end of the range)")
        .doesNotContain("This mask is not enough");
  }
}
