package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import motebook.desk.Choice;
import motebook.desk.Choices;
import motebook.journal.Book;
import motebook.journal.Settings;
import motebook.model.Refusal;
import motebook.report.SettingsReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "settings",
    description = {
      "The owner's choices: all of them, one of them, or another value for one.",
      "Example: motebook settings cartridge-safety-fraction 0.5"
    })
final class SettingsCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(index = "0", arity = "0..1", paramLabel = "KEY", description = "Which; else all.")
  private String key;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "VALUE",
      description = "What it is from now on, with or without its unit.")
  private List<String> value = List.of();

  @Option(names = "--default", description = "Back to what is shipped.")
  private boolean shipped;

  SettingsCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (shipped && (key == null || !value.isEmpty())) {
      throw new Refusal(
          "--default goes with the one setting that it is for: settings KEY --default");
    }
    try (Book book = desk.open()) {
      if (key == null) {
        Settings settings = book.settings();
        desk.answer(
            answer.json(),
            () -> SettingsReport.object(settings),
            () -> SettingsReport.lines(settings, desk.program()));
      } else {
        one(Choices.of(key), book);
      }
    }
    return ExitCode.DONE;
  }

  private void one(Choice choice, Book book) {
    Settings before = book.settings();
    boolean asked = value.isEmpty() && !shipped;
    if (!asked) {
      Settings wanted = choice.set(before, wanted(choice));
      book.change(wanted, history(choice, before, wanted));
    }
    Settings after = book.settings();
    desk.answer(
        answer.json(),
        () -> SettingsReport.object(choice, after),
        () ->
            asked
                ? SettingsReport.lines(choice, after, desk.program())
                : changed(choice, before, after));
  }

  private String wanted(Choice choice) {
    if (!shipped) {
      return String.join(" ", value);
    }
    return choice
        .shipped()
        .orElseThrow(
            () ->
                new Refusal(
                    "The "
                        + choice.key()
                        + " has no shipped value: say which, "
                        + choice.allowed()
                        + "."));
  }

  private static String history(Choice choice, Settings before, Settings wanted) {
    return "Set %s to %s, was %s".formatted(choice.key(), choice.told(wanted), choice.told(before));
  }

  private static List<String> changed(Choice choice, Settings before, Settings after) {
    String now = choice.told(after);
    String was = choice.told(before);
    String told =
        choice.key()
            + ": "
            + now
            + (now.equals(was) ? ", as it was" : ", was " + was)
            + " ("
            + choice.what()
            + ")";
    return Stream.concat(
            Stream.of(told), SettingsReport.figures(choice, after).stream().map("  "::concat))
        .toList();
  }
}
