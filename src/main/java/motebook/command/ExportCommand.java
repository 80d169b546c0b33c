package motebook.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import motebook.desk.DueReport;
import motebook.desk.Ledger;
import motebook.journal.Book;
import motebook.report.CalendarFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
    name = "export",
    description = "Writes what the book holds into a file for other programs.")
final class ExportCommand implements Callable<Integer> {
  private final Desk desk;

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      required = true,
      description = {
        "An iCalendar of everything that has a date or a foreseen one, with alarms.",
        "Exported and read again, it moves what it held before and doubles nothing."
      })
  private Path calendar;

  ExportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    DueReport ahead;
    try (Book book = desk.open()) {
      ahead = new Ledger(book).care(desk.today()).ahead();
    }
    OutFile.replace(calendar, CalendarFile.of(ahead, desk.clock().instant()), "BEGIN:VCALENDAR");
    desk.out().println("Dates written to " + calendar + ": " + ahead.items().size());
    return ExitCode.DONE;
  }
}
