package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Action;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddFinish;
import motebook.model.Action.AddPerson;
import motebook.model.Action.AddPlace;
import motebook.model.Action.AddRespirator;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.DiscardSpare;
import motebook.model.Action.EndHair;
import motebook.model.Action.GiveFlow;
import motebook.model.Action.OpenElement;
import motebook.model.Action.RecordFitTest;
import motebook.model.Action.RecordMedical;
import motebook.model.Action.RecordSealCheck;
import motebook.model.Action.RecordTraining;
import motebook.model.Action.RecordUpkeep;
import motebook.model.Action.RemoveFitRecord;
import motebook.model.Action.ReplaceFinish;
import motebook.model.Action.SeeCopies;
import motebook.model.Action.SeeFit;
import motebook.model.Action.SeeGearHelp;
import motebook.model.Action.WearInSession;
import motebook.model.Scheme;
import motebook.model.Upkeep.What;
import motebook.report.ActionText;
import motebook.report.Invocation;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every action has a command line, and the program understands it. */
class ActionTextTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final ActionText TEXT = new ActionText(Invocation.USUAL);

  @TempDir Path folder;
  private Shell shell;

  static Stream<Action> all() {
    return Stream.of(
        new RecordSealCheck(1),
        new WearInSession(1, "hood"),
        new AddRespirator("air line", Scheme.OSHA, "supplied air, demand", "half mask"),
        new AddElement("new pads", "half mask", "P100", DAY.minusDays(3), Optional.of(DAY)),
        new OpenElement("spare"),
        new ChangeElement("pads", DAY, 600, true),
        new DiscardSpare("spare"),
        new RecordUpkeep("bag", What.EMPTIED),
        new RecordUpkeep("bag", What.INSPECTED),
        new RecordFitTest("half mask", "me", DAY, true),
        new RecordFitTest("half mask", "me", DAY, false),
        new RecordMedical("me", DAY),
        new RecordTraining("me", DAY),
        new EndHair("me", Optional.of(DAY.minusDays(1))),
        new RemoveFitRecord(1),
        new SeeFit(),
        new SeeGearHelp(),
        new SeeCopies(),
        new AddPlace(),
        new AddPerson(),
        new AddFinish("lacquer thinner"),
        new ReplaceFinish("Quick Clear"),
        new GiveFlow("shop", Action.Flow.AIR_CLEANER),
        new GiveFlow("shop", Action.Flow.WINDOW_FAN));
  }

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
    List.of(
            "gear add respirator \"half mask\" --facepiece \"half mask\"",
            "gear add respirator hood --facepiece hood --kind powered",
            "gear add element pads --for \"half mask\" --class P100 --opened 2026-02-02",
            "gear add element spare --for \"half mask\" --class P100 --sealed-until 2027-01-01",
            "gear add filter bag --on collector --clean-every 10 --from 2026-02-02",
            "gear add finish \"Quick Clear\" --like lacquer --volatile 640 --solvents \"toluene 1\"",
            "fit hair --from 2026-02-20",
            "log 30m table saw oak at 9:00 wearing half mask")
        .forEach(line -> assertThat(shell.say(line).code()).as(line).isZero());
  }

  private Shell.Said run(String command) {
    return shell.say(command.substring("motebook ".length()));
  }

  @Test
  void no_kind_of_action_is_forgotten_here() {
    assertThat(all().map(Object::getClass).distinct())
        .hasSameSizeAs(Action.class.getPermittedSubclasses());
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_command_of_an_action_is_understood_once_its_result_is_filled_in(Action action) {
    String command = TEXT.command(action);
    Shell.Said said = run(Shell.filled(command));
    assertThat(said.code()).as(command + "\n" + said.err()).isZero();
  }

  @ParameterizedTest
  @MethodSource("all")
  void no_command_records_a_test_a_check_or_an_examination_as_it_stands(Action action) {
    String command = TEXT.command(action);
    boolean hasResult =
        action instanceof RecordSealCheck
            || action instanceof RecordFitTest
            || action instanceof RecordMedical
            || action instanceof RecordTraining
            || (action instanceof RecordUpkeep upkeep && upkeep.what() == What.INSPECTED);
    String before = shell.say("history --json").out();
    Shell.Said said = run(command);
    boolean toFill = hasResult || action instanceof ReplaceFinish || action instanceof AddFinish;
    assertThat(said.code()).as(command).isEqualTo(toFill ? ExitCode.NOT_UNDERSTOOD : 0);
    if (hasResult) {
      assertThat(said.err()).contains("in the place of");
      assertThat(shell.say("history --json").out()).isEqualTo(before);
    }
  }

  // A bar would end the command, so that a shell recorded what stands before it.
  @ParameterizedTest
  @MethodSource("all")
  void a_shell_takes_a_command_as_one_command(Action action) {
    assertThat(TEXT.command(action).replaceAll("\"[^\"]*\"", ""))
        .doesNotContainPattern("[|&;<>()]");
  }

  @Test
  void a_calendar_has_the_command_without_its_day() {
    assertThat(TEXT.undated(new ChangeElement("pads --on 2026-03-02", DAY, 600, false)))
        .isEqualTo("motebook gear change \"pads --on 2026-03-02\"");
    assertThat(TEXT.undated(new RecordTraining("me", DAY)))
        .isEqualTo("motebook fit training --person me --on DATE");
  }

  @Test
  void a_failed_check_a_failed_examination_and_no_clearance_record_nothing_as_passed() {
    assertThat(shell.say("fit checked 1 --result fail").out()).contains("did not hold");
    assertThat(shell.say("gear upkeep bag inspected --result fail").out()).contains("stays due");
    assertThat(shell.say("fit medical --result fail").out()).contains("Nothing is recorded");
    assertThat(shell.say("fit list").out()).doesNotContain("medical");
    assertThat(shell.say("day").out()).contains("No seal check is recorded");
  }
}
