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
import org.junit.jupiter.params.provider.ValueSource;

/** Masks and filters at the command line. */
class GearCommandTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + "\n" + said.err()).isZero();
    return said.out().strip();
  }

  private void refused(String line, String why) {
    Map<String, Object> before = shell.json("history");
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + "\n" + said.out()).isEqualTo(2);
    assertThat(said.err()).contains(why);
    assertThat(said.out()).isEmpty();
    assertThat(shell.json("history")).isEqualTo(before);
  }

  private void halfMask() {
    done("gear add respirator \"half mask\" --facepiece \"half mask\" --size M --for me");
    done("gear add element \"dust pads\" --for \"half mask\" --class P100 --pair --limit-mg 200");
  }

  @Test
  void a_rack_is_listed_as_it_was_hung() {
    halfMask();
    done("gear add element spare --for \"half mask\" --class P100 --sealed-until 2028-01-01");
    done("gear add filter bag --on collector --clean-every 10 --gauge-clean 1 --gauge-change 2.5");
    assertThat(done("gear list"))
        .isEqualTo(
            """
            half mask: half mask, air-purifying, osha, factor 10, size M, for me
              dust pads: P100, a pair, opened 2026-03-02, at most 200 mg
              spare: P100, sealed, good until 2028-01-01
            bag: collector in shop, from 2026-03-02, cleaned every 10 h, gauge 1 clean, 2.5 at the\
             change""");
    Map<String, Object> gear = shell.json("gear list");
    assertThat(at(gear, "respirators", 0, "people")).isEqualTo(List.of("me"));
    assertThat(number(gear, "respirators", 0, "assigned_factor")).isEqualTo(10);
    assertThat(at(gear, "elements", 0, "class")).isEqualTo("p100");
    assertThat(at(gear, "elements", 0, "worn_from")).isEqualTo("2026-03-02");
    assertThat(at(gear, "elements", 1, "worn_from")).isNull();
    assertThat(at(gear, "filters", 0, "on")).isEqualTo("collector");
    assertThat(number(gear, "filters", 0, "gauge_change")).isEqualTo(2.5);
    assertThat(at(gear, "filters", 0, "retired_on")).isNull();
  }

  @Test
  void a_line_says_what_was_worn_once_the_book_holds_it() {
    halfMask();
    assertThat(done("log 40m table saw oak wearing half mask checked 95% at 9:00"))
        .startsWith(
            "Logged as session 1: 40m table saw of oak in shop wearing half mask checked 95%"
                + " by me at 09:00 on 2026-03-02");
    assertThat(done("log 10m table saw oak wearing HALF at 10:00")).contains("wearing half mask");
    assertThat(at(shell.json("day"), "sessions", 0, "respirator")).isEqualTo("half mask");
  }

  @Test
  void a_retired_respirator_is_known_on_the_days_it_was_there_and_on_no_later_one() {
    halfMask();
    shell.at("2026-03-04T18:00");
    assertThat(done("gear retire \"half mask\" --on 2026-03-03 --because \"hard to breathe\""))
        .isEqualTo("Retired half mask on 2026-03-03 (hard to breathe).");
    done("log 40m table saw oak wearing half mask at 9:00 on 2026-03-03");
    refused(
        "log 40m table saw oak wearing half mask at 9:00 on 2026-03-04",
        "\"half mask\" was retired on 2026-03-03 and cannot have been worn on 2026-03-04.");
    assertThat(done("gear list")).startsWith("No masks or filters yet");
    assertThat(done("gear list --all"))
        .contains("retired 2026-03-03 (hard to breathe)", "retired 2026-03-03 (with its");
  }

  @Test
  void a_dust_filter_without_a_clock_says_what_ends_it() {
    done("gear add respirator mask --facepiece \"half mask\"");
    done("gear add element pads --for mask --class P100 --pair --opened 2026-03-02");
    assertThat(done("gear clocks"))
        .contains(
            "  rule   change it when damaged, soiled or hard to breathe through; where there is"
                + " oil, after the time that the maker gives");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"full facepiece\"|air-purifying|osha|50",
        "\"full mask\"|powered|osha|1000",
        "hood|\"powered air-purifying\"|osha|25",
        "\"filtering facepiece\"|air-purifying|osha|10",
        "\"full facepiece\"|\"supplied air, demand\"|osha|50",
        "\"half mask\"|\"Supplied air, pressure-demand\"|OSHA|50",
      })
  void the_factor_is_the_tables_by_scheme_kind_and_facepiece(
      String part, String kind, String scheme, double factor) {
    done(
        "gear add respirator it --facepiece %s --kind %s --scheme %s"
            .formatted(part, kind, scheme));
    assertThat(number(shell.json("gear list"), "respirators", 0, "assigned_factor"))
        .isEqualTo(factor);
  }

  /** HSG53: half mask P3 20, gas 10, gas and P3 10; full mask P3 40; hood TH2 20. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"half mask\"|air-purifying|P3|20",
        "\"half mask\"|air-purifying|\"organic vapour\"|10",
        "\"half mask\"|air-purifying|A2P3|10",
        "\"full mask\"|air-purifying|P3|40",
        "\"filtering facepiece\"|air-purifying|FFP3|20",
        "hood|\"powered air-purifying\"|TH2|20",
      })
  void the_uk_factor_is_the_elements(String part, String kind, String one, double factor) {
    done("gear add respirator it --scheme uk --facepiece %s --kind %s".formatted(part, kind));
    done("gear add element pads --for it --class %s".formatted(one));
    Map<String, Object> gear = shell.json("gear list");
    assertThat(at(gear, "respirators", 0, "assigned_factor")).isNull();
    assertThat(number(gear, "elements", 0, "assigned_factor")).isEqualTo(factor);
  }

  @Test
  void a_class_that_does_not_exist_or_does_not_fit_is_refused_with_those_that_do() {
    halfMask();
    done("gear add respirator line --kind \"supplied air, demand\" --facepiece \"half mask\"");
    done("gear add respirator hood --scheme uk --kind powered --facepiece hood");
    refused(
        "gear add element pads --for \"half mask\" --class P101",
        "\"P101\" is no class of element for \"half mask\" (half mask, osha). There are: N95,");
    refused("gear add element pads --for \"half mask\" --class FFP3", "is no class of element");
    refused("gear add element pads --for hood --class P3", "There are: TH1, TH2, TH3.");
    refused("gear add element pads --for line --class P100", "takes no element");
  }

  @Test
  void changes_before_the_opening_and_days_to_come_are_refused() {
    halfMask();
    refused("gear change \"dust pads\" --on 2026-03-01", "was opened on 2026-03-02");
    refused("gear change \"dust pads\" --on 2026-03-03", "today is 2026-03-02");
    refused("gear change \"half mask\"", "changed by their own names: dust pads.");
    done("gear add filter bag --on collector");
    refused("gear change bag", "is a shop filter. Enter what was done to it: motebook gear");
    refused("gear retire \"dust pads\" --on 2026-03-03", "today is 2026-03-02");
    refused(
        "gear add element new --for \"half mask\" --class P100 --opened 2026-03-03",
        "Nothing can have been opened on 2026-03-03");
    refused(
        "gear add element new --for \"half mask\" --class P100 --opened 2026-03-02"
            + " --from 2026-03-01",
        "cannot have been on the mask from 2026-03-01");
    refused("gear add element new --for hood --class P100", "It holds: half mask.");
    refused(
        "gear add element new --for \"half mask\" --class P100 --limit-mg 0", "must be above 0");
    refused("gear add element \"dust pads\" --for \"half mask\" --class N95", "already");
  }

  @Test
  void an_element_is_changed_and_undo_brings_the_old_one_back() {
    halfMask();
    shell.at("2026-03-09T18:00");
    assertThat(done("gear change \"dust pads\""))
        .isEqualTo("Changed dust pads: a fresh one is on half mask from 2026-03-09.");
    Map<String, Object> all = shell.json("gear list --all");
    assertThat(at(all, "elements", 0, "retired_because")).isEqualTo("changed");
    assertThat(at(all, "elements", 1, "limit_mg")).isEqualTo(200.0);
    assertThat(done("undo")).isEqualTo("Taken back: Changed dust pads on 2026-03-09");
    assertThat(done("gear list --all")).contains("opened 2026-03-02").doesNotContain("2026-03-09");
  }

  @Test
  void a_respirator_goes_to_other_people_and_back() {
    halfMask();
    done("person add Ana");
    assertThat(done("gear give \"half mask\" --to ana --to me"))
        .isEqualTo("half mask is for Ana and me now.");
    assertThat(done("gear give \"half mask\" --to-anybody"))
        .isEqualTo("half mask is anybody's now.");
    assertThat(at(shell.json("gear list"), "respirators", 0, "people")).isEqualTo(List.of());
    done("undo");
    done("undo");
    assertThat(at(shell.json("gear list"), "respirators", 0, "people")).isEqualTo(List.of("me"));
    refused("gear give \"half mask\" --to Nobody", "Nobody");
    refused("gear give \"half mask\" --to me --to-anybody", "--to PERSON");
  }

  @Test
  void a_spare_is_opened_when_its_time_comes() {
    halfMask();
    done("gear add element spare --for \"half mask\" --class P100 --sealed-until 2028-01-01");
    refused("gear change spare", "still sealed");
    assertThat(done("gear open spare --on 2026-03-02"))
        .isEqualTo("Opened spare on 2026-03-02: it is on half mask now.");
  }

  @Test
  void what_sessions_refer_to_is_retired_instead_of_deleted() {
    halfMask();
    assertThat(done("gear remove \"dust pads\"")).isEqualTo("Deleted dust pads.");
    done("log 40m table saw oak wearing half mask at 9:00");
    assertThat(done("gear remove \"half mask\""))
        .isEqualTo(
            "The book refers to half mask, so it was retired on 2026-03-02 instead of deleted.");
  }

  @Test
  void upkeep_is_written_down_with_day_time_and_reading() {
    done("gear add filter \"collector bag\" --on \"dust collector\"");
    assertThat(done("gear upkeep \"collector bag\" gauge 1.4 --at 7:30"))
        .isEqualTo("collector bag: gauge read 1.4 on 2026-03-02 at 07:30");
    assertThat(done("gear upkeep \"Collector Bag\" emptied"))
        .isEqualTo("collector bag: emptied on 2026-03-02");
    Map<String, Object> gear = shell.json("gear list");
    assertThat(at(gear, "filters", 0, "upkeep", 0, "time")).isEqualTo("07:30");
    assertThat(at(gear, "filters", 0, "upkeep", 1, "what")).isEqualTo("emptied");
    refused("gear upkeep \"collector bag\" polished", "say cleaned, replaced, emptied,");
    refused("gear upkeep \"collector bag\" gauge", "Say what the gauge shows");
    refused("gear upkeep \"collector bag\" emptied 3", "\"emptied\" stands alone");
    refused("gear upkeep \"collector bag\" emptied --at noon", "say it as 17:30");
    refused("gear upkeep \"collector bag\" emptied --on 2026-03-03", "today is 2026-03-02");
    refused("gear upkeep \"collector bag\" emptied --on 2026-03-01", "was put to use on");
  }

  @ParameterizedTest
  @ValueSource(strings = {"vacuum", "tool-vacuum", "\"shop vacuum\"", "\"vacuum on the tool\""})
  void a_filter_sits_in_a_control_by_any_of_its_names(String name) {
    done("gear add filter bag --on " + name);
    assertThat(at(shell.json("gear list"), "filters", 0, "on")).isEqualTo("vacuum");
  }

  @Test
  void a_measured_fit_test_is_the_harmonic_mean_of_its_exercises() {
    halfMask();
    assertThat(
            done(
                "fit record --respirator \"half mask\" --person me --on 2026-03-01"
                    + " --method quantitative --factors 200,180,150,120,90,110,210"))
        .isEqualTo(
            "Wrote down: 2026-03-01  me  fit test with half mask: overall fit factor 139,"
                + " passed (100 is asked)");
    Map<String, Object> list = shell.json("fit list");
    // n/Σ(1/FF) of the seven factors, derived
    assertThat(number(list, "records", 0, "fit_factor")).isCloseTo(138.56, within(0.005));
    assertThat(at(list, "records", 0, "passed")).isEqualTo(true);
    assertThat(at(list, "records", 0, "method")).isEqualTo("quantitative");
  }

  /** OSHA asks 500 of the overall factor of a full facepiece, the UK 2000 of every exercise. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "osha|full mask|200,180,150,120,90,110,210|not passed (500 is asked)",
        "osha|full mask|500,500,500,500,500,500,50|not passed (500 is asked)",
        "osha|half mask|500,500,500,500,500,500,50|219, passed (100 is asked)",
        "uk|half mask|500,500,500,500,500,500,50|219, not passed (100 is asked in every exercise)",
        "uk|half mask|100,100|passed (100 is asked in every exercise)",
        "uk|full mask|2500,1999|not passed (2000 is asked in every exercise)",
        "uk|full mask|2500,2000|passed (2000 is asked in every exercise)",
      })
  void each_scheme_judges_a_test_in_its_own_way(
      String scheme, String part, String factors, String told) {
    done("gear add respirator it --scheme %s --facepiece \"%s\"".formatted(scheme, part));
    assertThat(done("fit record --respirator it --factors " + factors)).endsWith(told);
  }

  @Test
  void a_test_by_taste_says_what_it_is_worth() {
    halfMask();
    done("gear add respirator \"full mask\" --facepiece \"full facepiece\"");
    assertThat(
            done(
                "fit record --respirator \"half mask\" --method qualitative --agent saccharin"
                    + " --passed"))
        .endsWith("fit test with half mask: saccharin, passed");
    assertThat(done("fit record --respirator \"full mask\" --agent saccharin --passed"))
        .endsWith("passed (so tested, a full facepiece is credited 10 at most)");
    assertThat(done("fit record --respirator \"full mask\" --agent saccharin --failed"))
        .endsWith("saccharin, not passed");
  }

  @ParameterizedTest
  @CsvSource({
    "full,        air-purifying, full facepiece",
    "quarter,     air-purifying, quarter mask",
    "disposable,  air-purifying, filtering facepiece",
    "loose,       powered,       loose-fitting facepiece"
  })
  void the_beginning_of_a_facepiece_is_enough_where_it_is_clear(
      String begun, String kind, String facepiece) {
    Shell.Said said = shell.say("gear add respirator n --facepiece " + begun + " --kind " + kind);
    assertThat(said.out()).as(said.err()).startsWith("Added n: " + facepiece + ", ");
  }

  @Test
  void a_beginning_that_several_facepieces_share_names_none() {
    refused("gear add respirator n --facepiece h --kind powered", "half mask, full facepiece");
    refused("gear add respirator n --facepiece \"\"", "assigns no factor");
  }

  @ParameterizedTest
  @CsvSource({
    "filtering facepiece FFP3, air-purifying, filtering facepiece",
    "full mask P3, air-purifying, full facepiece",
    "hood TH2, powered, helmet or hood"
  })
  void a_facepiece_may_be_called_with_the_rating_of_its_element(
      String said, String kind, String facepiece) {
    assertThat(
            done(
                "gear add respirator m --scheme uk --kind %s --facepiece \"%s\""
                    .formatted(kind, said)))
        .startsWith("Added m: " + facepiece);
    refused("gear add respirator n --scheme uk --facepiece \"half mask P9\"", "assigns no factor");
  }

  @ParameterizedTest
  @ValueSource(strings = {"weight", "20lb", "\"25 lbs\"", "9kg", "\"9.5 kg\""})
  void losing_20_lb_or_9_kg_asks_for_a_new_fit_test(String lost) {
    assertThat(done("fit change --what " + lost)).contains("change of weight: a new fit test");
  }

  @Test
  void losing_less_asks_for_none() {
    refused("fit change --what 19lb", "19lb is less than the 20 lb (9 kg)");
    refused("fit change --what 8.9kg", "less than the 20 lb (9 kg)");
    refused("fit change --what beard", "say weight, dental, face, or how much was lost, like 25lb");
    assertThat(done("fit change --what teeth")).contains("change of teeth: a new fit test");
  }

  @Test
  void what_needs_no_seal_needs_no_fit_test() {
    done("gear add respirator hood --kind powered --facepiece hood");
    refused("fit record --respirator hood --factors 2000", "no fit test is asked for");
    refused("fit record --respirator visor --factors 2000", "It holds: hood.");
  }

  @Test
  void everything_of_a_face_is_listed_by_date_and_person() {
    done("person add Ana");
    done("fit medical --person ana --on 2026-01-05");
    done("fit training --person Ana --on yesterday");
    done("fit hair --person Ana --from 2026-02-01");
    done("fit change --person Ana --on 2026-02-20 --what dental");
    done("fit medical");
    assertThat(done("fit list --person Ana"))
        .isEqualTo(
            """
            1  2026-01-05  Ana  medical clearance
               3  2026-02-01  Ana  hair under the seal, still there
               4  2026-02-20  Ana  change of teeth: a new fit test is asked for
               2  2026-03-01  Ana  training""");
    assertThat(done("fit hair --person Ana --to 2026-02-10"))
        .isEqualTo("Hair under the seal of Ana was there from 2026-02-01 to 2026-02-10.");
    done("fit hair --person Ana --from 2026-02-01 --to 2026-02-09");
    Map<String, Object> list = shell.json("fit list");
    assertThat(at(list, "records", 1, "to")).isEqualTo("2026-02-09");
    assertThat(at(list, "records", 2, "what")).isEqualTo("dental");
    assertThat(at(list, "records", 4, "kind")).isEqualTo("medical");
    assertThat(at(list, "records", 4, "person")).isEqualTo("me");
  }

  @Test
  void a_seal_check_that_the_line_left_out_is_said_later() {
    halfMask();
    done("log 40m table saw oak wearing half mask 90% at 9:00");
    done("log 40m table saw oak at 10:00");
    assertThat(done("fit checked 1")).isEqualTo("Session 1: the seal of half mask was checked.");
    refused("fit checked 2", "No respirator was worn in session 2.");
    assertThat(number(shell.json("day"), "sessions", 0, "worn_percent")).isEqualTo(90);
    assertThat(done("undo")).startsWith("Taken back: Changed a session");
  }

  @Test
  void gas_classes_and_odour_layers_are_refused_on_a_filtering_facepiece() {
    shell.say("gear add respirator cup --facepiece \"filtering facepiece\"");
    for (String wrong :
        List.of("OV/N95", "organic vapour", "multi-gas and P100", "N95 nuisance odor")) {
      refused(
          "gear add element pad --for cup --class \"" + wrong + "\"",
          "\"cup\" is a filtering facepiece and holds particles only");
    }
    assertThat(shell.say("gear add element pad --for cup --class N95").code()).isZero();
  }
}
