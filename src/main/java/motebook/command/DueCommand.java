package motebook.command;

import java.util.concurrent.Callable;
import motebook.desk.DueReport;
import motebook.desk.Ledger;
import motebook.journal.Book;
import motebook.report.DueJson;
import motebook.report.DueText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "due",
    description = {
      "What is due of masks, filters and the people who wear them.",
      "Ends with 3 when something is due or overdue."
    })
final class DueCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(
      names = "--quiet",
      description = "One line for a shell prompt; nothing at all when nothing is due.")
  private boolean quiet;

  DueCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    DueReport report;
    try (Book book = desk.open()) {
      report = new Ledger(book).due(desk.today());
    }
    if (quiet) {
      DueText.quiet(report).ifPresent(desk.out()::println);
    } else {
      desk.answer(
          answer.json(),
          () -> DueJson.of(report),
          () -> DueText.of(report, desk.ink(), desk.program()));
    }
    return report.pressing() ? ExitCode.SOMETHING_DUE : ExitCode.DONE;
  }
}
