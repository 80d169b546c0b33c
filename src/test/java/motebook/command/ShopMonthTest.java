package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A month of an invented shop, February 2026: two people, a half mask and a powered hood, elements
 * for dust and for vapour, three filters. What is due is held against plain arithmetic.
 */
class ShopMonthTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);
  private static final LocalDate LAST = LocalDate.of(2026, 2, 27);
  private static final Pattern COMMAND = Pattern.compile("motebook ((?:[^.]|\\.(?! |$))*)\\.?");

  @TempDir private Path folder;
  private Shell shell;

  @BeforeEach
  void work_a_month() {
    shell = new Shell(folder.resolve("book.db")).at("2026-02-27T18:00");
    does("person add Ana");
    does("place change shop --cleaner-flow 10");
    does("gear add respirator \"half mask\" --facepiece \"half mask\" --scheme osha --for me");
    does("gear add respirator hood --facepiece hood --kind \"powered air-purifying\" --for Ana");
    does("gear add element pads --for \"half mask\" --class N95 --pair --opened 2026-02-02");
    does(
        "gear add element cans --for \"half mask\" --class \"organic vapour\" --pair"
            + " --opened 2025-08-20");
    does("gear add element cell --for hood --class HE --opened 2026-02-09 --limit-hours 10");
    does("gear add filter bag --on collector --clean-every 10 --from 2026-02-02");
    does("gear add filter hose --on vacuum --change-at 17 --from 2026-02-02");
    does(
        "gear add filter ceiling --on air-cleaner --from 2026-02-02"
            + " --gauge-clean 0.5 --gauge-change 2.5");
    does("fit medical --on 2024-05-01");
    does("fit training --on 2025-03-05");
    does("fit training --person Ana --on 2026-01-10");
    does("fit record --respirator \"half mask\" --on 2025-02-20 --agent saccharin --passed");
    does("fit hair --from 2026-01-20");
    shell.typing(String.join("\n", lines()));
    does("log --lines -");
    does("gear upkeep bag cleaned --on 2026-02-13");
    for (String day : List.of("02", "06", "13", "18")) {
      does("gear upkeep bag emptied --on 2026-02-" + day);
    }
    does("gear upkeep ceiling gauge 1.9 --on 2026-02-20");
  }

  private static List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (LocalDate day : workingDays(FIRST)) {
      String checked = day.equals(LocalDate.of(2026, 2, 10)) ? "" : " checked";
      lines.add("9:00-10:00 table saw of oak with collector wearing half mask" + checked + on(day));
      lines.add(
          "10:30-11:15 orbital sanding of oak with tool vacuum and air cleaner wearing hood 80%"
              + " by Ana"
              + on(day));
    }
    lines.add("14:00-14:30 finishing of oak wearing half mask checked" + on(LAST.minusDays(1)));
    return lines;
  }

  private static String on(LocalDate day) {
    return " on " + day;
  }

  private static List<LocalDate> workingDays(LocalDate from) {
    return from.datesUntil(LAST.plusDays(1))
        .filter(day -> day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) < 0)
        .toList();
  }

  private void does(String line) {
    Shell.Said said = shell.say(Shell.filled(line));
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
  }

  private List<Map<?, ?>> due() {
    Shell.Said said = shell.say("due --json");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_DUE);
    return items(said);
  }

  private static List<Map<?, ?>> items(Shell.Said said) {
    try {
      List<?> items = (List<?>) com.fasterxml.jackson.jr.ob.JSON.std.mapFrom(said.out()).get("due");
      return items.stream().<Map<?, ?>>map(item -> (Map<?, ?>) item).toList();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String told(Map<?, ?> item) {
    return item.get("state")
        + " "
        + item.get("when")
        + " "
        + item.get("kind")
        + ": "
        + item.get("what")
        + (item.get("whose").equals("") ? "" : ", " + item.get("whose"));
  }

  /**
   * The first day on whose evening the N95 pads have been worn 8 h or more and hold 200 mg or more
   * at the upper end of the 90 % range. An hour at the saw a day: 8 mg/m³ (3 to 18, geometric
   * standard deviation 3.0) through the collector's 0.5 (0.3 to 0.8), 40 L/min.
   */
  private static LocalDate endOfPads() {
    double mgADay = 8 * 0.5 * 40 * 60 / 1000;
    double operation = Math.pow(Math.log(18.0 / 3) / 3.29, 2);
    double control = Math.pow(Math.log(0.8 / 0.3) / 3.29, 2);
    double model = Math.pow(Math.log(2), 2);
    double own = Math.max(Math.pow(Math.log(3), 2) - operation, Math.pow(Math.log(1.67), 2));
    int days = 0;
    for (LocalDate day : workingDays(FIRST)) {
      days++;
      double shared = operation + control + model;
      double mean = days * mgADay * Math.exp((shared + own) / 2);
      double variance = shared + own / days;
      double high = mean * Math.exp(-variance / 2 + 1.645 * Math.sqrt(variance));
      if (days >= 8 && high >= 200) {
        return day;
      }
    }
    throw new AssertionError("the pads outlast the month");
  }

  @Test
  void what_is_due_is_what_plain_arithmetic_says() {
    // cans: six months from 2025-08-20. test: a year from 2025-02-20. training: from 2025-03-05.
    // bag: emptied after 4, 5 and 3 h, so every 4 h: 19, 20, 23 and 24 February since the 18th.
    // bag: ten hours since the 13th end on the 27th.
    // cell: 15 days of 45 min at 80 % are 9 of 10 h; 0.6 h a working day: 1.67 of them, and 20
    // working days in 26 make that 2 days.
    // ceiling: 70 % after 11.25 h, so 4.82 h more, of which 3.75 are gone: 1.43 working days.
    // hose: 15 of 17 h, 0.75 a working day: 2.67, which is 3 days.
    assertThat(due())
        .extracting(ShopMonthTest::told)
        .containsExactlyInAnyOrder(
            "overdue 2026-02-20 element: cans on half mask, me",
            "overdue 2026-02-20 fit-test: fit test with half mask, me",
            "overdue 2026-02-24 emptying: empty bag, shop",
            "overdue " + endOfPads() + " element: pads on half mask, me",
            "due 2026-02-27 cleaning: clean bag, shop",
            "due 2026-02-27 medical: medical evaluation, Ana",
            "soon 2026-03-01 element: cell on hood, Ana",
            "soon 2026-02-28 gauge: replace ceiling, shop",
            "soon 2026-03-02 replacing: replace hose, shop",
            "soon 2026-03-05 training: training in respirators, me");
    assertThat(due())
        .filteredOn(item -> item.get("what").equals("cell on hood"))
        .singleElement()
        .satisfies(
            cell ->
                assertThat(((Number) cell.get("working_days_left")).doubleValue())
                    .isCloseTo((10 - 15 * 0.75 * 0.8) / 0.6, within(1e-9)));
  }

  @Test
  void every_refusal_of_credit_is_mended_by_doing_what_it_says() {
    List<String> done = new ArrayList<>();
    for (LocalDate day : workingDays(FIRST)) {
      for (String person : List.of("me", "Ana")) {
        String ask = "day " + day + " --person " + person;
        for (String refused = refused(ask); refused != null; refused = refused(ask)) {
          Matcher command = COMMAND.matcher(refused);
          assertThat(command.find()).as(refused).isTrue();
          assertThat(done).as("said twice: " + refused).doesNotContain(command.group(1));
          done.add(command.group(1));
          does(command.group(1));
        }
        assertThat(Shell.number(shell.json(ask), "sessions", 0, "credited_apf"))
            .isEqualTo(person.equals("me") ? 10 : 25);
      }
    }
    Object finishing = Shell.at(shell.json("day 2026-02-26"), "sessions", 1);
    assertThat(Shell.number(finishing, "credited_apf_vapour")).isEqualTo(10);
    assertThat(done)
        .contains(
            "fit hair --person me --to 2026-02-01",
            "fit checked " + sessionOn("2026-02-10") + " --result PASS-OR-FAIL",
            "gear add element \"HE hood\" --for hood --class HE --opened 2026-02-02 --until 2026-02-09",
            "gear change cans --on 2026-02-26");
    assertThat(done).anySatisfy(command -> assertThat(command).startsWith("gear change pads"));
    assertThat(done).anySatisfy(command -> assertThat(command).startsWith("fit record"));
  }

  private String refused(String ask) {
    for (Object session : (List<?>) shell.json(ask).get("sessions")) {
      Object refused = Shell.at(session, "credit_refused");
      if (refused != null) {
        return (String) refused;
      }
    }
    return null;
  }

  private int sessionOn(String day) {
    return (int) Shell.number(shell.json("day " + day), "sessions", 0, "id");
  }

  @Test
  void nothing_presses_once_everything_is_settled_as_the_list_says() {
    for (int round = 0; round < 2; round++) {
      for (Map<?, ?> item : items(shell.say("due --json"))) {
        does(((String) item.get("settle")).substring("motebook ".length()));
      }
    }
    Shell.Said after = shell.say("due");
    assertThat(after.out()).isEqualTo("Nothing is due.\n");
    assertThat(after.code()).isZero();
    assertThat(shell.say("due --quiet").out()).isEmpty();
  }

  @Test
  void a_shell_prompt_is_told_in_one_line() {
    Shell.Said quiet = shell.say("due --quiet");
    assertThat(quiet.code()).isEqualTo(ExitCode.SOMETHING_DUE);
    assertThat(quiet.out().lines()).hasSize(1);
    assertThat(quiet.out()).startsWith("6 due: ").contains(" and 5 more");
  }

  @Test
  void a_calendar_read_again_moves_what_it_held_and_doubles_nothing() throws Exception {
    Path file = folder.resolve("due.ics");
    does("export --calendar " + file);
    List<String> before = uids(file);
    shell.at("2026-02-27T19:00");
    does("fit record --respirator \"half mask\" --agent saccharin --passed");
    does("export --calendar " + file);
    assertThat(uids(file)).isEqualTo(before).doesNotHaveDuplicates();
    Path other = folder.resolve("book.db");
    Shell.Said refused = shell.say("export --calendar " + other);
    assertThat(refused.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
  }

  @Test
  void a_book_without_dates_writes_a_calendar_without_events() throws java.io.IOException {
    Shell fresh = new Shell(folder.resolve("fresh.db"));
    Path file = folder.resolve("none.ics");
    Shell.Said said = fresh.say("export --calendar " + file);
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("Nothing has a date yet");
    assertThat(file).content().contains("BEGIN:VCALENDAR").doesNotContain("VEVENT");
  }

  private static List<String> uids(Path file) throws java.io.IOException {
    return java.nio.file.Files.readAllLines(file).stream()
        .filter(line -> line.startsWith("UID:"))
        .sorted()
        .toList();
  }
}
