package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The keys, figures and exit codes that other programs may rely on. */
class ContractTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  @Test
  void the_day_of_one_hour_answers_with_every_key_and_the_derived_figures() {
    assertThat(shell.say("log 60m orbital sanding of oak at 9:00 on 2026-03-02").code()).isZero();
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(day)
        .containsKeys(
            "date",
            "person",
            "limit",
            "sessions",
            "twa",
            "others",
            "minutes_logged",
            "minutes_between_counted")
        .containsEntry("date", "2026-03-02")
        .containsEntry("person", "me")
        .containsEntry("minutes_logged", 60)
        .containsEntry("minutes_between_counted", 0)
        .containsEntry("others", List.of());
    assertThat(at(day, "limit"))
        .isEqualTo(Map.of("key", "acgih-wood", "mg_m3", 1.0, "fraction", "inhalable"));
    @SuppressWarnings("unchecked")
    Map<String, Object> session = (Map<String, Object>) at(day, "sessions", 0);
    assertThat(session)
        .containsEntry("id", 1)
        .containsEntry("start", "09:00")
        .containsEntry("minutes", 60)
        .containsEntry("operation", "orbital-sanding")
        .containsEntry("material", "oak")
        .containsEntry("controls", List.of())
        .containsEntry("place", "shop")
        .containsEntry("respirator", null)
        .containsEntry("credit_refused", null)
        .containsEntry("rough", false);
    assertThat(number(session, "worn_percent")).isZero();
    assertThat(number(session, "credited_apf")).isEqualTo(1);
    assertThat(number(session, "mean_outside_mg_m3")).isCloseTo(25, within(1e-9));
    assertThat(number(session, "share_percent")).isCloseTo(100, within(1e-9));
    for (String side : List.of("outside", "inside")) {
      assertThat(number(day, "twa", side, "typical_mg_m3")).isCloseTo(3.125, within(1e-9));
      assertThat(number(day, "twa", side, "central_mg_m3")).isCloseTo(3.125, within(1e-9));
      assertThat(number(day, "twa", side, "low90_mg_m3")).isCloseTo(0.365307, within(1e-6));
      assertThat(number(day, "twa", side, "high90_mg_m3")).isCloseTo(26.7326, within(1e-4));
      assertThat(number(day, "twa", side, "chance_over_limit")).isCloseTo(0.808734, within(1e-6));
    }
    assertThat(number(day, "twa", "respirable_outside_typical_mg_m3"))
        .isCloseTo(0.521875, within(1e-9));
  }

  @Test
  void what_is_due_answers_with_every_key_and_ends_with_3() {
    assertThat(shell.json("due"))
        .containsEntry("due", List.of())
        .containsEntry("cautions", List.of());
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    Shell.Said said = shell.say("due --json");
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.out())
        .contains("\"what\":\"medical evaluation\",\"kind\":\"medical\",\"whose\":\"me\"")
        .contains("\"when\":\"2026-03-02\",\"state\":\"due\",\"working_days_left\":null")
        .contains(
            "\"why\":",
            "\"settle\":\"motebook fit medical --person me --on 2026-03-02"
                + " --result PASS-OR-FAIL\"");
    assertThat(shell.say("due --quiet").code()).isEqualTo(3);
  }

  @Test
  void the_clocks_answer_with_every_key() {
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    shell.say("gear add element pads --for mask --class N95 --opened 2026-03-01");
    shell.say("gear add filter bag --on collector --clean-every 10");
    shell.say("log 60m orbital sanding of oak wearing mask 50% at 9:00 on 2026-03-02");
    Map<String, Object> clocks = shell.json("gear clocks");
    Map<?, ?> pads = (Map<?, ?>) at(clocks, "elements", 0);
    assertThat(number(pads, "hours_worn")).isEqualTo(0.5);
    // half of 25 mg/m³ for an hour at 40 L/min
    assertThat(number(pads, "load_typical_mg")).isCloseTo(30, within(1e-9));
    assertThat(at(pads, "first")).isEqualTo(at(pads, "clocks", 0, "clock"));
    assertThat((Map<?, ?>) at(pads, "clocks", 0)).hasSize(8);
    assertThat(at(clocks, "filters", 0, "clocks", 0, "clock")).isEqualTo("cleaning");
    assertThat(number(clocks, "filters", 0, "run_hours")).isZero();
  }

  @Test
  void a_mask_in_a_session_with_vapour_answers_for_both() {
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    shell.say("gear add element pads --for mask --class P100 --opened 2026-03-01");
    shell.say("fit record --respirator mask --agent saccharin --passed --on 2026-03-01");
    shell.say("log 60m orbital sanding of oak wearing mask checked at 9:00 on 2026-03-02");
    shell.say("log 60m finishing wearing mask checked at 11:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "sessions", 0, "credited_apf")).isEqualTo(10);
    assertThat(at(day, "sessions", 0, "credited_apf_vapour")).isNull();
    assertThat(number(day, "sessions", 1, "credited_apf")).isEqualTo(10);
    assertThat(number(day, "sessions", 1, "credited_apf_vapour")).isEqualTo(1);
    assertThat((String) at(day, "sessions", 1, "credit_refused")).contains("organic vapour");
  }

  @Test
  void where_no_limit_applies_the_limit_and_the_chance_are_null() {
    shell.say("limits use eu");
    shell.say("log 60m table saw pine at 9:00 on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(day).containsEntry("limit", null);
    assertThat(at(day, "twa", "outside", "chance_over_limit")).isNull();
  }

  @Test
  void others_are_listed_with_session_person_and_share() {
    shell.say("person add Ana");
    shell.say("log 60m assembly of oak at 9:00 on 2026-03-02");
    shell.say("log 60m orbital sanding of oak at 9:00 by Ana on 2026-03-02");
    Map<String, Object> day = shell.json("day 2026-03-02");
    assertThat(number(day, "others", 0, "session")).isEqualTo(2);
    assertThat(at(day, "others", 0, "person")).isEqualTo("Ana");
    assertThat(number(day, "others", 0, "share_percent")).isCloseTo(95.2172, within(1e-3));
    assertThat(shell.json("day 2026-03-02 --person ana")).containsEntry("person", "Ana");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "log 40m orbitel sanding of oak | orbitel",
        "log | ",
        "log 0m assembly | minute",
        "log 30m assembly at 25:00 | 25:00",
        "log 40m sweeping with collector | sweeping",
        "log 40m table saw oak wearing half mask | respirator",
        "log 40m table saw oak with air cleaner | --cleaner-flow",
        "day 2026-13-01 | 2026-13-01",
        "day --person Nobody | Nobody",
        "limits use mars | mars",
        "place change shop | --volume",
        "place change attic --volume 20 | attic",
        "place add attic | --volume",
        "place add attic --volume 20 --length 4 | not both",
        "place add attic --length 4 --width 2 | three sides",
        "place add attic --volume 20parsecs | parsecs",
        "place add attic --volume -3 | --volume",
        "place change yard --volume 20 | Outdoors",
        "place change shop --outdoor still | --outdoor",
        "place change yard --outdoor hurricane | light-breeze",
        "person add me | me",
        "gear | add",
        "gear add | respirator",
        "gear add respirator mask | --facepiece",
        "gear add respirator mask --facepiece monocle | not allowed",
        "gear add respirator mask --facepiece hood | not allowed",
        "gear add respirator mask --facepiece hood --kind magic | powered air-purifying",
        "gear add respirator mask --facepiece hood --scheme mars | osha or uk",
        "gear add respirator mask --facepiece \"half mask\" --for Nobody | Nobody",
        "gear add element pads --for mask --class P100 | The book holds no respirator",
        "gear add filter bag --on toaster | collector, vacuum, air-cleaner",
        "gear add filter bag --on collector --place attic | attic",
        "gear add filter bag --on collector --clean-every 0 | --clean-every must be above 0",
        "gear add filter bag --on collector --gauge-clean 1 | both readings",
        "gear add filter bag --on collector --from 2027-01-01 | today is",
        "gear give mask | --to PERSON",
        "gear give mask --to me | The book holds no respirator",
        "gear add finish blue | --like",
        "gear add finish blue --like laquer --volatile 640 --solvents \"toluene 1\" | Did you mean lacquer",
        "gear add finish blue --like lacquer --volatile 0 --solvents \"toluene 1\" | volatile content",
        "gear add finish blue --like lacquer --volatile 6oz --solvents \"toluene 1\" | lb/gal",
        "gear add finish blue --like lacquer --volatile 640 --solvents \"toluene 0.5\" | must add to 1",
        "gear add finish blue --like lacquer --volatile 640 --solvents \"tolune 1\" | Did you mean toluene",
        "gear add finish blue --like lacquer --volatile 640 --solvents toluene | no list of solvents",
        "gear add finish blue --like lacquer --volatile 640 --solvents \"isocyanates 1\" | no solvent with a molar mass",
        "gear add finish blue --replace --like lacquer --volatile 640 --solvents \"toluene 1\" | knows no finish",
        "log 40m table saw using 250ml lacquer at 9:00 | No finish is used at table saw",
        "log 40m finishing using lacquer at 9:00 | does not begin with an amount",
        "log 40m finishing using 250ml laquer at 9:00 | did you mean lacquer",
        "gear change pads | The book holds no element",
        "gear retire pads | The book holds no mask or filter",
        "gear remove pads | The book holds no mask or filter",
        "gear open pads | The book holds no element",
        "gear upkeep bag emptied | The book holds no shop filter",
        "fit | record",
        "fit record --respirator mask | --factors",
        "fit record --respirator mask --factors 200,0 | must be above 0",
        "fit record --respirator mask --factors 200,x | needs a number",
        "fit record --respirator mask --agent saccharin | --result pass or --result fail",
        "fit record --respirator mask --agent saccharin --passed --failed | Say once",
        "fit record --respirator mask --factors 200 --passed | leave --agent",
        "fit record --respirator mask --method qualitative --factors 200 | no factors",
        "fit record --respirator mask --method quantitative | a factor for each exercise",
        "fit record --respirator mask --method hearsay | quantitative or qualitative",
        "fit record --respirator mask --factors 200 | The book holds no respirator",
        "fit medical --on 2027-01-01 | today is 2026-03-02",
        "fit training --person Nobody | Nobody",
        "fit hair --to 2026-03-01 | without an end",
        "fit hair --from 2026-03-01 --to 2026-02-01 | cannot have gone",
        "fit change --what haircut | weight, dental, face",
        "fit change --what 5kg | less than the 20 lb",
        "fit remove 99 | no record of fit with the number 99",
        "fit wore 99 hood | no session with the number 99",
        "gear change pads --at noon | a time of day like 9:15",
        "fit checked 7 | no session with the number 7",
        "due --jsn | --jsn",
        "export --calendar . | name a file",
        "export --json | --json",
        "import | PATH",
        "import nowhere | There is no file or folder nowhere",
        "import pom.xml | No row heads the columns",
        "import src | is no export of a book",
        "import pom.xml --dates backwards | day-first or month-first",
        "backup --list here | leave here out",
        "backup . --lst | --lst",
        "restore | FILE",
        "restore none.db | backup --list",
        "restore 2020-01-01 | There is no copy of 2020-01-01",
        "reckon | twa",
        "week 2026-13-01 | 2026-13-01",
        "export | --csv DIR or --json FILE, the week's sheet with --pdf FILE or --html FILE, or what has a date with --calendar",
        "export --pdf week.pdf | Nothing is logged",
        "export --pdf week.pdf --week 2026-03-02 --from 2026-03-02 | not both",
        "export --pdf week.pdf --to 2026-03-02 | --from",
        "export --pdf week.pdf --from 2026-03-09 --to 2026-03-02 | before",
        "export --pdf week.pdf --from 1950-01-02 --to 2026-03-02 | ten years",
        "export --pdf week.pdf --paper a3 | a3",
        "export --html week.html --person Nobody | Nobody",
        "nonsense | nonsense",
        "day --jsn | --jsn",
      })
  void what_is_not_understood_ends_with_2_says_why_and_writes_nothing(String line, String why) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isEqualTo(2);
    assertThat(said.err()).isNotBlank().contains(why == null ? "" : why).doesNotContain("\tat ");
    assertThat(said.out()).isEmpty();
    assertThat(shell.json("history")).containsEntry("changes", List.of());
  }

  @Test
  void a_file_that_is_no_book_ends_with_4() throws Exception {
    Path file = folder.resolve("letter.txt");
    java.nio.file.Files.writeString(file, "Dear reader, this is no book at all. ".repeat(100));
    Shell.Said said = shell.run("day", "--book", file.toString());
    assertThat(said.code()).isEqualTo(4);
    assertThat(said.err()).contains("letter.txt").doesNotContain("Exception");
    assertThat(java.nio.file.Files.readString(file)).startsWith("Dear reader");
  }

  @Test
  void every_command_has_help_that_ends_well() {
    for (String line :
        List.of(
            "",
            "log",
            "day",
            "week",
            "due",
            "export",
            "import",
            "backup",
            "restore",
            "gear clocks",
            "undo",
            "history",
            "verify",
            "place",
            "place add",
            "place change",
            "place list",
            "person",
            "person add",
            "person list",
            "limits",
            "limits list",
            "limits use",
            "words",
            "settings",
            "gear",
            "gear add",
            "gear add respirator",
            "gear add element",
            "gear add filter",
            "gear add finish",
            "gear finishes",
            "gear list",
            "gear give",
            "gear open",
            "gear change",
            "gear retire",
            "gear remove",
            "gear upkeep",
            "fit",
            "fit record",
            "fit medical",
            "fit training",
            "fit hair",
            "fit change",
            "fit wore",
            "fit remove",
            "fit checked",
            "fit list",
            "sample",
            "sample add",
            "sample list",
            "sample remove",
            "sample import",
            "reckon",
            "reckon twa",
            "reckon mixture",
            "reckon clear",
            "reckon air",
            "reckon shift",
            "reckon wear",
            "reckon fit",
            "reckon cartridge",
            "reckon filter",
            "reckon sample",
            "reckon duct",
            "reckon stats",
            "reckon trend",
            "plan",
            "sample-shop")) {
      Shell.Said said = shell.say((line + " --help").strip());
      assertThat(said.code()).as(line).isZero();
      assertThat(said.out()).as(line).startsWith("Usage: motebook");
    }
  }

  @Test
  void alone_it_opens_the_screen_on_the_book() {
    assertThat(shell.run().code()).isZero();
    assertThat(shell.screenOpened).contains(folder.resolve("book.db"));
  }

  /**
   * 29 CFR 1910.134, App. A, part I B: isoamyl acetate, saccharin, denatonium benzoate, irritant
   * smoke.
   */
  @ParameterizedTest
  @CsvSource({
    "saccharin, false",
    "Saccharin solution, false",
    "denatonium benzoate, false",
    "isoamyl acetate, false",
    "banana oil, false",
    "irritant smoke, false",
    "bananas, true",
    "perfume, true"
  })
  void an_agent_outside_the_written_protocols_is_kept_with_a_caution(
      String agent, boolean cautioned) {
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    Shell.Said said =
        shell.say(
            "fit record --respirator mask --agent \"" + agent + "\" --passed --on 2026-03-01");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains(agent);
    assertThat(said.out().contains("Caution: the written protocols")).isEqualTo(cautioned);
  }

  @Test
  void denatonium_by_its_trade_name_is_written_down_as_the_substance() {
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    Shell.Said said =
        shell.say("fit record --respirator mask --agent Bitrex --passed --on 2026-03-01");
    assertThat(said.out()).contains("denatonium benzoate, passed").doesNotContain("Caution");
  }

  @Test
  void a_passed_test_by_taste_is_refused_where_the_uk_rule_asks_for_one_that_measures() {
    shell.say("gear add respirator full --facepiece \"full facepiece\" --scheme uk --for me");
    String record = "fit record --respirator full --on 2026-03-01 ";
    Shell.Said said = shell.say(record + "--agent saccharin --result pass");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err())
        .contains("under the UK rule a full facepiece (air-purifying) needs a quantitative test");
    assertThat(shell.say("fit list --json").out()).doesNotContain("saccharin");
    assertThat(shell.say(record + "--agent saccharin --result fail").code()).isZero();
    assertThat(shell.say(record + "--factors 2500,3000,2100").out()).contains("passed");
  }

  @Test
  void commands_that_are_told_of_a_named_book_work_on_that_book() {
    Path other = folder.resolve("my other.db");
    String book = " --book \"" + other + "\"";
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me" + book);
    String due = shell.say("due" + book).out();
    List<String> told =
        due.lines().map(String::strip).filter(l -> l.startsWith("motebook")).toList();
    assertThat(told).isNotEmpty().allMatch(line -> line.startsWith("motebook" + book + " "));
    assertThat(shell.say(Shell.filled(told.get(0)).substring("motebook ".length())).code())
        .isZero();
    assertThat(shell.say("due" + book).out()).doesNotContain(told.get(0));
    assertThat(shell.say("log 40m oak in barn" + book).err())
        .contains("Add one with: motebook" + book + " place add NAME");
    assertThat(shell.say("due").out()).doesNotContain("--book");
    assertThat(shell.say("due --json" + book).out()).doesNotContain("--book");
  }

  @Test
  void a_note_that_reads_like_a_command_is_shown_as_it_was_typed() {
    String book = " --book \"" + folder.resolve("other.db") + "\"";
    String note = "motebook day. Then motebook gear change pads --on 2026-03-02";
    for (String asked :
        List.of("log 20m table saw oak at 9:00 note " + note, "day", "day --json", "week")) {
      Shell.Said said = shell.say(asked + book);
      assertThat(said.err()).isEmpty();
      assertThat(said.out()).as(asked).doesNotContain("--book");
      assertThat(said.out().contains(note)).as(asked).isEqualTo(!asked.equals("week"));
    }
  }
}
