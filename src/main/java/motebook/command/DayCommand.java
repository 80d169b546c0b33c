package motebook.command;

import java.util.concurrent.Callable;
import motebook.desk.DayReport;
import motebook.desk.Ledger;
import motebook.journal.Book;
import motebook.report.DayJson;
import motebook.report.DayText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "day", description = "What one person breathed on a day, and where it came from.")
final class DayCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(names = "--person", paramLabel = "P", description = "Whose day (else the book's own).")
  private String person;

  @Option(
      names = "--published",
      description = "By the published figures alone, without what the shop's samples taught.")
  private boolean published;

  @Parameters(
      arity = "0..1",
      paramLabel = "DATE",
      description = "2026-03-02, today (the default), yesterday or a weekday.")
  private String date;

  DayCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      DayReport day = new Ledger(book, !published).day(desk.date(date), desk.person(person, book));
      desk.answer(
          answer.json(), () -> DayJson.of(day), () -> DayText.of(day, desk.ink(), desk.program()));
    }
    return 0;
  }
}
