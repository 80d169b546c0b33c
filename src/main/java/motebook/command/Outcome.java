package motebook.command;

import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.ActionText;
import picocli.CommandLine.Option;

/** How a test, a check or an examination ended, where a command records one. */
final class Outcome {
  @Option(
      names = "--result",
      paramLabel = "pass|fail",
      description = "How it ended; passed unless given.")
  private String result;

  boolean given() {
    return result != null;
  }

  /**
   * Whether it was passed, as it is where nothing is said.
   *
   * @throws Refusal if it is neither, such as the words that stand where it is to be filled in
   */
  boolean passed() {
    if (result == null) {
      return true;
    }
    return switch (Text.folded(result)) {
      case "pass", "passed" -> true;
      case "fail", "failed" -> false;
      default ->
          throw new Refusal(
              Text.clean(result).equals(ActionText.RESULT)
                  ? "Say how it ended in the place of %s: --result pass or --result fail."
                      .formatted(ActionText.RESULT)
                  : "\"%s\" is not a result: say --result pass or --result fail."
                      .formatted(Text.clean(result)));
    };
  }
}
