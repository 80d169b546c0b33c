package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.FitRecord;
import motebook.report.FitReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "remove",
    description = "Takes out a record that was wrong, by its number in fit list.")
final class FitRemove implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NUMBER", description = "The number of the record.")
  private long id;

  FitRemove(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      FitReport report = new FitReport(GearCommand.allowed(), book.gear());
      FitRecord wrong = book.fits().remove(id);
      desk.out().println("Took out: " + report.line(wrong));
    }
    return ExitCode.DONE;
  }
}
