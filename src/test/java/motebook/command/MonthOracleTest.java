package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A month of an invented shop, 27 October to 25 November 2026, read on the morning after: two
 * people, a half mask that both wear, a powered hood, elements for dust and for vapour, three
 * filters of the shop, work side by side in one room, finishes that go on drying. What was typed
 * stands in {@code src/test/resources/month}, every value it is held against in {@code
 * expected.csv} there.
 *
 * <p>Those values do not come from the program. {@code src/test/python/month.py} reckons them from
 * the lines that were typed and the shipped figures alone: the room stepped by Runge and Kutta, six
 * seconds a step, instead of closed forms; the running filters counted minute by minute; the
 * cartridges from the printed table, the carbon-bed equation and the rule of thumb anew. It follows
 * the description of the model in DEVELOPERS.md, so what it confirms is the reckoning, not that
 * description: that is held against its published sources in the tests of each part.
 */
class MonthOracleTest {
  private static final Pattern COMMAND =
      Pattern.compile("motebook ((?:\"[^\"]*\"|[^\".])+)(?=\\. |\\.$)");

  @TempDir private Path folder;
  private Shell shell;

  @BeforeEach
  void work_the_month() throws IOException {
    shell = new Shell(folder.resolve("book.db")).at("2026-11-26T08:00");
    shell.typing(text("lines.txt"));
    text("commands.txt").lines().forEach(this::does);
  }

  private static String text(String file) throws IOException {
    try (Reader reader = reader(file)) {
      java.io.StringWriter all = new java.io.StringWriter();
      reader.transferTo(all);
      return all.toString();
    }
  }

  private static Reader reader(String file) {
    return new InputStreamReader(
        Objects.requireNonNull(MonthOracleTest.class.getResourceAsStream("/month/" + file), file),
        StandardCharsets.UTF_8);
  }

  private void does(String line) {
    Shell.Said said = shell.say(Shell.filled(line));
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
  }

  private static List<CSVRecord> expected() throws IOException {
    CSVFormat form = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader = reader("expected.csv")) {
      return form.parse(reader).getRecords();
    }
  }

  /** Everything that the rows may ask for, under the first word of their paths. */
  private Map<String, Object> answers() {
    Map<String, Object> answers = new LinkedHashMap<>(shell.json("gear clocks"));
    Map<String, Object> sessions = new LinkedHashMap<>();
    for (Map<?, ?> session : sessions()) {
      sessions.put(session.get("id").toString(), session);
    }
    answers.put("sessions", sessions);
    Map<String, Object> fit = new LinkedHashMap<>();
    for (Object test : (List<?>) shell.json("fit list").get("records")) {
      if (Shell.at(test, "factors") != null) {
        fit.put((String) Shell.at(test, "person"), test);
      }
    }
    answers.put("fit", fit);
    return answers;
  }

  private List<Map<?, ?>> sessions() {
    List<Map<?, ?>> sessions = new ArrayList<>();
    for (String person : List.of("Ana", "Ben")) {
      for (int day = 0; day < 30; day++) {
        String date = java.time.LocalDate.of(2026, 10, 27).plusDays(day).toString();
        Object there = shell.json("day " + date + " --person " + person).get("sessions");
        ((List<?>) there).forEach(session -> sessions.add((Map<?, ?>) session));
      }
    }
    return sessions;
  }

  /** Follows a path of keys; a step into a list is the name, or the clock, of what is meant. */
  private static Object follow(Object from, String path) {
    Object here = from;
    for (String step : path.split("/", -1)) {
      here = here instanceof List<?> list ? called(list, step) : ((Map<?, ?>) here).get(step);
    }
    return here;
  }

  private static Object called(List<?> list, String name) {
    return list.stream()
        .map(item -> (Map<?, ?>) item)
        .filter(item -> name.equals(item.get("name")) || name.equals(item.get("clock")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is called " + name));
  }

  private static void compare(SoftAssertions soft, String what, String wanted, Object told) {
    if (told instanceof Number number && !wanted.isEmpty()) {
      double value = Double.parseDouble(wanted);
      soft.assertThat(number.doubleValue())
          .as(what)
          .isCloseTo(value, within(1e-6 * Math.abs(value) + 1e-9));
    } else {
      soft.assertThat(told == null ? "" : told.toString()).as(what).isEqualTo(wanted);
    }
  }

  @Test
  void every_clock_and_every_credit_is_what_the_other_reckoning_says() throws IOException {
    Map<String, Object> answers = answers();
    SoftAssertions soft = new SoftAssertions();
    int compared = 0;
    for (CSVRecord row : expected()) {
      if (!row.get("what").equals("due")) {
        compare(soft, row.get("what"), row.get("value"), follow(answers, row.get("what")));
        compared++;
      }
    }
    soft.assertAll();
    assertThat(compared).isGreaterThan(200);
  }

  @Test
  void no_clock_runs_that_the_other_reckoning_does_not_know() throws IOException {
    Set<String> known = new LinkedHashSet<>();
    for (CSVRecord row : expected()) {
      known.add(row.get("what"));
    }
    Map<String, Object> told = shell.json("gear clocks");
    for (String kind : List.of("elements", "filters")) {
      for (Object thing : (List<?>) told.get(kind)) {
        for (Object clock : (List<?>) Shell.at(thing, "clocks")) {
          if (!Shell.at(clock, "clock")
              .equals("shelf")) { // of a spare: dates only, in the due list
            assertThat(known)
                .contains(
                    kind
                        + "/"
                        + Shell.at(thing, "name")
                        + "/clocks/"
                        + Shell.at(clock, "clock")
                        + "/used");
          }
        }
      }
    }
  }

  @Test
  void the_due_list_is_the_one_of_the_other_reckoning() throws IOException {
    List<String> wanted =
        expected().stream()
            .filter(row -> row.get("what").equals("due"))
            .map(row -> row.get("value"))
            .toList();
    Shell.Said said = shell.say("due --json");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_DUE);
    List<?> due = (List<?>) JSON.std.mapFrom(said.out()).get("due");
    assertThat(due.stream().map(MonthOracleTest::told).toList())
        .containsExactlyInAnyOrderElementsOf(wanted);
  }

  private static String told(Object item) {
    return "%s %s %s: %s, %s"
        .formatted(
            Shell.at(item, "state"),
            Shell.at(item, "when"),
            Shell.at(item, "kind"),
            Shell.at(item, "what"),
            Shell.at(item, "whose"));
  }

  @Test
  void every_refusal_of_credit_is_mended_by_doing_what_it_says() {
    Set<String> heard = new LinkedHashSet<>();
    for (Map<?, ?> refused = refused(); refused != null; refused = refused()) {
      String why = (String) refused.get("credit_refused");
      assertThat(heard.add(refused.get("id") + why)).as("is told only once: " + why).isTrue();
      List<String> commands =
          COMMAND.matcher(why).results().map(found -> found.group(1)).distinct().toList();
      assertThat(commands).as(why).isNotEmpty();
      commands.forEach(this::does);
    }
    assertThat(heard).hasSizeGreaterThan(10);
    for (Map<?, ?> session : sessions()) {
      if (session.get("respirator") != null) {
        assertThat(Shell.number(session, "credited_apf"))
            .as(session.toString())
            .isIn(10.0, 25.0, 50.0, 1000.0);
      }
      Object vapour = session.get("credited_apf_vapour");
      if (vapour != null && session.get("respirator") != null) {
        assertThat(((Number) vapour).doubleValue())
            .as(session.toString())
            .isGreaterThanOrEqualTo(10);
      }
    }
  }

  private Map<?, ?> refused() {
    return sessions().stream()
        .filter(session -> session.get("credit_refused") != null)
        .findFirst()
        .orElse(null);
  }
}
