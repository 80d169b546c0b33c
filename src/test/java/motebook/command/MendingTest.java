package motebook.command;

import static motebook.command.Shell.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A credit is refused with the command that mends it, and running that mends it. */
class MendingTest {
  private static final Pattern COMMAND =
      Pattern.compile("motebook ((?:\"[^\"]*\"|[^\".])+)(?=\\. |\\.$)");
  private static final LocalDate FRIDAY = LocalDate.parse("2026-03-27");

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db")).at("2026-03-27T18:00");
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + "\n" + said.err()).isZero();
    return said.out().strip();
  }

  private void hood(String... elements) {
    done("gear add respirator hood --facepiece hood --kind powered");
    for (String element : elements) {
      done("gear add element " + element);
    }
  }

  private List<?> sessions(LocalDate day) {
    return (List<?>) shell.json("day " + day).get("sessions");
  }

  private String refused(LocalDate day, int index) {
    return (String) at(sessions(day).get(index), "credit_refused");
  }

  private static Set<String> commands(String refused) {
    Set<String> commands = new LinkedHashSet<>();
    COMMAND.matcher(refused).results().forEach(found -> commands.add(found.group(1)));
    return commands;
  }

  /** Does what a day's refusals say, one after the other, until none is left. */
  private void mend(LocalDate day) {
    Set<String> heard = new LinkedHashSet<>();
    for (int i = 0; i < sessions(day).size(); ) {
      String why = refused(day, i);
      if (why == null) {
        i++;
        continue;
      }
      String id = ((Map<?, ?>) sessions(day).get(i)).get("id").toString();
      assertThat(heard.add(id + why)).as("is told only once: " + why).isTrue();
      assertThat(commands(why)).as(why).isNotEmpty();
      commands(why).forEach(one -> done(Shell.filled(one)));
    }
  }

  @Test
  void what_the_morning_used_up_is_changed_for_the_afternoon() {
    hood(
        "carts --for hood --class \"organic vapour\" --opened 2026-03-01",
        "pads --for hood --class HE --opened 2026-03-01");
    done("log 150m finishing using 700ml acrylic lacquer at 9:00 wearing hood");
    done("log 20m finishing using 50ml acrylic lacquer at 14:00 wearing hood");
    assertThat(refused(FRIDAY, 1))
        .contains("carts was used up on 2026-03-27")
        .contains("motebook gear change carts --on 2026-03-27 --at 14:00");
    done("gear change carts --on 2026-03-27 --at 14:00");
    assertThat(at(sessions(FRIDAY).get(1), "credited_apf_vapour")).isEqualTo(25.0);
    assertThat(at(sessions(FRIDAY).get(0), "credited_apf_vapour")).isEqualTo(25.0);
  }

  @Test
  void a_change_that_was_forgotten_goes_between_two_others() {
    hood("pads --for hood --class HE --limit-hours 2 --opened 2026-03-02");
    for (int day = 23; day <= 26; day++) {
      done("log 90m table saw oak at 9:00 wearing hood on 2026-03-" + day);
    }
    done("gear change pads --on 2026-03-26");
    LocalDate wednesday = LocalDate.parse("2026-03-25");
    assertThat(refused(wednesday, 0)).contains("motebook gear change pads --on 2026-03-25.");
    assertThat(done("gear change pads --on 2026-03-25"))
        .isEqualTo(
            "Changed pads: a fresh one was on hood from 2026-03-25 until 2026-03-26 (changed).");
    assertThat(refused(wednesday, 0)).isNull();
    assertThat(done("gear list")).contains("pads: HE, opened 2026-03-26");
    assertThat(shell.say("gear change pads --on 2026-03-01").err()).contains("opened on");
  }

  @Test
  void a_disposable_mask_is_a_fresh_one_each_day_without_a_word() {
    done("gear add respirator mask --facepiece \"filtering facepiece\" --scheme uk --for me");
    done("fit record --respirator mask --agent saccharin --passed --on 2026-03-02");
    done("fit medical --on 2026-03-02");
    done("fit training --on 2026-03-02");
    done("gear add element ffp3 --for mask --class FFP3 --single-use --opened 2026-03-02");
    for (int day = 23; day <= 27; day++) {
      done("log 60m orbital sanding oak at 9:00 wearing mask checked on 2026-03-" + day);
      assertThat(refused(LocalDate.of(2026, 3, day), 0)).isNull();
    }
    assertThat(done("gear list")).contains("ffp3: FFP3, opened 2026-03-02, a fresh one each day");
    assertThat(done("due")).isEqualTo("Nothing is due.");
    assertThat(done("gear clocks")).contains("ffp3 on mask: 1.00 h worn");
  }

  @Test
  void what_was_on_a_mask_before_its_element_has_the_class_of_that_element() {
    done("gear add respirator mask --facepiece \"filtering facepiece\" --for me");
    done("fit record --respirator mask --agent saccharin --passed --on 2026-03-02");
    done("gear add element n95 --for mask --class N95 --opened 2026-03-26");
    done("log 60m orbital sanding oak at 9:00 wearing mask checked on 2026-03-25");
    LocalDate day = LocalDate.parse("2026-03-25");
    assertThat(refused(day, 0)).contains("--class N95").doesNotContain("P100");
    mend(day);
    assertThat(refused(day, 0)).isNull();
  }

  @Test
  void a_cartridge_alone_at_a_finish_is_not_refused_for_wood_dust() {
    done("gear add respirator half --facepiece \"half mask\" --for me");
    done("fit record --respirator half --agent saccharin --passed --on 2026-03-02");
    done("gear add element ov --for half --class OV --opened 2026-03-25");
    String said =
        done("log 1h spraying using 100ml lacquer wearing half checked on 2026-03-26 at 9:00");
    assertThat(said)
        .contains("The mist of a sprayed finish and the dust in the air need a particulate filter")
        .contains("note      Overspray mist is not estimated; a particulate filter (R or P)")
        .doesNotContain("Wood dust wants");
    String brushed = "log 1h brushing on using 100ml lacquer on 2026-03-26 at 12:00 note no spray";
    assertThat(done(brushed)).doesNotContain("Overspray");
  }

  @Test
  void a_mask_for_one_shift_is_told_how_a_fresh_one_each_day_is_said() {
    done("gear add respirator mask --facepiece \"filtering facepiece\" --scheme uk --for me");
    done("fit record --respirator mask --agent saccharin --passed --on 2026-03-02");
    done("gear add element ffp3 --for mask --class \"FFP3 NR\" --opened 2026-03-02");
    for (int day = 25; day <= 27; day++) {
      done("log 60m orbital sanding oak at 9:00 wearing mask checked on 2026-03-" + day);
    }
    assertThat(refused(LocalDate.parse("2026-03-26"), 0)).contains("add --single-use to that");
    done("gear change ffp3 --on 2026-03-26 --single-use");
    assertThat(refused(LocalDate.parse("2026-03-26"), 0)).isNull();
    assertThat(refused(FRIDAY, 0)).isNull();
  }

  @Test
  void what_was_worn_before_it_was_damaged_keeps_its_credit() {
    hood("pads --for hood --class HE --opened 2026-03-02");
    done("log 30m table saw oak at 9:00 wearing hood");
    done("gear retire pads --because damaged");
    assertThat(at(sessions(FRIDAY).get(0), "credited_apf")).isEqualTo(25.0);
    done("gear retire hood --because perished");
    assertThat(at(sessions(FRIDAY).get(0), "credited_apf")).isEqualTo(25.0);
  }

  @Test
  void supplied_air_that_was_worn_is_said_so() {
    hood("carts --for hood --class \"organic vapour\" --opened 2026-03-26");
    done(
        "gear add finish \"red tin\" --like \"lacquer thinner\" --volatile 830 --solvents"
            + " \"toluene 90%, methanol 10%\"");
    done("log 20m finishing using 30ml red tin at 9:00 wearing hood");
    assertThat(refused(FRIDAY, 0)).contains("wants supplied air").contains("gear add respirator");
    mend(FRIDAY);
    assertThat(at(sessions(FRIDAY).get(0), "respirator")).isEqualTo("air line");
    assertThat(at(sessions(FRIDAY).get(0), "credited_apf_vapour")).isEqualTo(25.0);
  }

  @Test
  void of_methanol_in_a_shipped_thinner_the_product_s_own_sheet_is_asked_for_first() {
    hood(
        "carts --for hood --class \"organic vapour\" --opened 2026-03-26",
        "pads --for hood --class HE --opened 2026-03-26");
    done("log 20m finishing using 30ml lacquer thinner at 9:00 wearing hood");
    String why = refused(FRIDAY, 0);
    assertThat(why)
        .contains("data sheet of the product itself decides whether there is methanol")
        .endsWith("it would count as 25 against dust and vapour.");
    List<String> commands = List.copyOf(commands(why));
    assertThat(commands.get(0))
        .isEqualTo(
            "gear add finish \"lacquer thinner\" --like \"lacquer thinner\" --volatile G/L"
                + " --solvents SHARES");
    assertThat(commands.get(1)).startsWith("gear add respirator \"air line\"");
    done(Shell.filled(commands.get(0)));
    assertThat(refused(FRIDAY, 0)).isNull();
    assertThat(at(sessions(FRIDAY).get(0), "credited_apf_vapour")).isEqualTo(25.0);
  }

  @Test
  void a_wrong_record_of_hair_is_taken_out() {
    done("gear add respirator half --facepiece \"half mask\"");
    done("gear add element pads --for half --class P100 --opened 2026-03-02");
    done("fit record --respirator half --factors 200,200 --on 2026-03-02");
    done("fit hair --from 2026-03-26 --to 2026-03-27");
    done("log 30m table saw oak at 9:00 wearing half checked");
    assertThat(refused(FRIDAY, 0)).contains("from 2026-03-26 to 2026-03-27");
    mend(FRIDAY);
    assertThat(done("fit list")).doesNotContain("hair");
    assertThat(done("undo")).contains("Took out hair under the seal of me on 2026-03-26");
    assertThat(done("fit list")).contains("hair");
    assertThat(shell.say("fit remove 99").err()).contains("no record of fit with the number 99");
  }

  @ParameterizedTest
  @CsvSource({"1, false", "2, true", "3, false", "4, true"})
  void every_refusal_of_any_month_is_mended_in_either_order(int seed, boolean backward) {
    List<LocalDate> days = new ArrayList<>(month(new Random(seed)));
    if (backward) {
      java.util.Collections.reverse(days);
    }
    days.forEach(this::mend);
    for (LocalDate day : days) {
      for (int i = 0; i < sessions(day).size(); i++) {
        assertThat(refused(day, i)).isNull();
      }
    }
  }

  private Set<LocalDate> month(Random random) {
    hood("filter --for hood --class HE --limit-mg 40 --opened 2026-03-10");
    done("gear add respirator half --facepiece \"half mask\"");
    done("gear add element pads --for half --class N95 --pair --opened 2026-03-04");
    done("gear add element carts --for half --class \"organic vapour\" --opened 2026-03-16");
    done("fit record --respirator half --factors 200,150 --on 2026-03-05");
    done("fit hair --from 2026-03-11 --to 2026-03-12");
    done("fit change --what dental --on 2026-03-19");
    List<String> work =
        List.of(
            "90m orbital sanding oak",
            "60m hand router mdf",
            "30m finishing using 200ml acrylic lacquer",
            "20m finishing using 50ml shellac",
            "25m finishing using 60ml wiping oil",
            "120m table saw pine");
    Set<LocalDate> days = new LinkedHashSet<>();
    for (LocalDate day = LocalDate.parse("2026-03-02"); day.isBefore(FRIDAY); ) {
      for (int hour : List.of(8, 11, 14)) {
        String mask = random.nextBoolean() ? "hood" : "half";
        String checked = random.nextInt(4) == 0 ? "" : " checked";
        String what = work.get(random.nextInt(work.size()));
        done("log " + what + " wearing " + mask + checked + " at " + hour + ":00 on " + day);
      }
      days.add(day);
      day = day.plusDays(1 + random.nextInt(3));
    }
    done("gear change pads --on 2026-03-18");
    return days;
  }
}
