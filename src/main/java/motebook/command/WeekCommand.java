package motebook.command;

import java.util.concurrent.Callable;
import motebook.desk.Ledger;
import motebook.desk.WeekReview;
import motebook.journal.Book;
import motebook.report.WeekJson;
import motebook.report.WeekText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "week",
    description =
        "Monday to Sunday: each day, the mean over 40 h, where the dust came from, the trend.")
final class WeekCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(names = "--person", paramLabel = "P", description = "Whose week (else the book's own).")
  private String person;

  @Option(
      names = "--published",
      description = "By the published figures alone, without what the shop's samples taught.")
  private boolean published;

  @Parameters(
      arity = "0..1",
      paramLabel = "DATE",
      description = "Any day of the week: 2026-03-02, today (the default), yesterday, a weekday.")
  private String date;

  WeekCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      WeekReview week =
          new Ledger(book, !published).review(desk.date(date), desk.person(person, book));
      desk.answer(answer.json(), () -> WeekJson.of(week), () -> WeekText.of(week, desk.ink()));
    }
    return 0;
  }
}
