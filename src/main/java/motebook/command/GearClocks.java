package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.desk.Care;
import motebook.desk.ElementStanding;
import motebook.desk.FilterStanding;
import motebook.desk.Ledger;
import motebook.journal.Book;
import motebook.model.Gear;
import motebook.report.ClocksReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
    name = "clocks",
    description = "How far each element and shop filter has run, and what runs out first.")
final class GearClocks implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  GearClocks(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Gear gear = book.gear();
      Care care = new Ledger(book).care(desk.today());
      List<ElementStanding> elements =
          gear.elements().stream()
              .filter(element -> element.retired().isEmpty())
              .map(care::standing)
              .toList();
      List<FilterStanding> filters =
          gear.filters().stream()
              .filter(filter -> filter.inUseOn(desk.today()))
              .map(care::standing)
              .toList();
      desk.answer(
          answer.json(),
          () -> ClocksReport.object(elements, filters),
          () -> ClocksReport.lines(elements, filters));
    }
    return ExitCode.DONE;
  }
}
