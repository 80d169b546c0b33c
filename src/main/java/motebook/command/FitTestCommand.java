package motebook.command;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Method;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Text;
import motebook.reference.ProtectionFactor.Seal;
import motebook.report.ActionText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "record",
    description = {
      "Writes down a fit test of a respirator on a face.",
      "Examples:",
      "  motebook fit record --respirator \"half mask\" --factors 200,180,150,120,90,110,210",
      "  motebook fit record --respirator \"half mask\" --agent saccharin --result pass"
    })
final class FitTestCommand implements Callable<Integer> {
  private static final String QUANTITATIVE = "quantitative";
  private static final String QUALITATIVE = "qualitative";
  private static final String UNWRITTEN =
      "Caution: the written protocols (29 CFR 1910.134, App. A) know isoamyl acetate, saccharin,"
          + " denatonium benzoate and irritant smoke. With another agent, ask who tests you by what rule.";

  private final Desk desk;
  @Mixin private FitCommand.WhoAndWhen who;

  @Option(
      names = "--respirator",
      required = true,
      paramLabel = "NAME",
      description = "What was worn.")
  private String respirator;

  @Option(
      names = "--method",
      paramLabel = "METHOD",
      description = "quantitative (it measures) or qualitative (by taste or smell).")
  private String method;

  @Option(
      names = "--factors",
      paramLabel = "F1,F2,…",
      description = "The fit factor of each exercise, grimace left out.")
  private String factors;

  @Option(
      names = "--agent",
      paramLabel = "AGENT",
      description = "What was tasted or smelled, such as saccharin.")
  private String agent;

  @Option(names = "--passed", description = "The same as --result pass.")
  private boolean passed;

  @Option(names = "--failed", description = "The same as --result fail.")
  private boolean failed;

  @Mixin private Outcome outcome;

  FitTestCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Method how = measured() ? quantitative() : qualitative();
    LocalDate day = who.on(desk);
    try (Book book = desk.open()) {
      Respirator worn = book.rack().respirator(respirator, day);
      requireSeal(worn);
      GearCommand.allowed().requireCounting(worn, how);
      FitTest test = new FitTest(0, worn.name(), who.person(desk, book), day, how);
      FitCommand.note(test, desk, book);
    }
    if (how instanceof Qualitative told && !told.written()) {
      desk.out().println(UNWRITTEN);
    }
    return ExitCode.DONE;
  }

  private boolean measured() {
    if (method == null) {
      return factors != null;
    }
    return switch (Text.clean(method).toLowerCase(Locale.ROOT)) {
      case QUANTITATIVE -> true;
      case QUALITATIVE -> false;
      default ->
          throw new Refusal(
              "\"%s\" is no method of a fit test: say quantitative or qualitative."
                  .formatted(Text.clean(method)));
    };
  }

  private Quantitative quantitative() {
    if (agent != null || passed || failed || outcome.given()) {
      throw new Refusal(
          "A test that measures is judged by its factors: leave --agent, --result, --passed and"
              + " --failed out.");
    }
    if (factors == null) {
      throw new Refusal(
          "A test that measures needs a factor for each exercise, like --factors 200,180,150.");
    }
    if (factors.equals(ActionText.FACTORS)) {
      throw new Refusal(
          "Give the factors that were measured in the place of %s, like --factors 200,180,150."
              .formatted(ActionText.FACTORS));
    }
    return new Quantitative(
        Arrays.stream(factors.split(",", -1))
            .map(factor -> Numbers.positive("A fit factor", factor))
            .toList());
  }

  private Qualitative qualitative() {
    if (factors != null) {
      throw new Refusal("A test by taste or smell has no factors: leave --factors out.");
    }
    if (agent == null) {
      throw new Refusal(
          "Say how it was tested: --factors 200,180,150 for a test that measures, or --agent"
              + " saccharin with --result pass or --result fail.");
    }
    if ((passed ? 1 : 0) + (failed ? 1 : 0) + (outcome.given() ? 1 : 0) != 1) {
      throw new Refusal("Say once how the test ended: --result pass or --result fail.");
    }
    return new Qualitative(agent, outcome.given() ? outcome.passed() : passed);
  }

  private static void requireSeal(Respirator worn) {
    if (GearCommand.allowed().seal(worn).filter(Seal.LOOSE::equals).isPresent()) {
      throw new Refusal(
          "\"%s\" is a %s and needs no seal on the face, so no fit test is asked for."
              .formatted(worn.name(), worn.facepiece()));
    }
  }
}
