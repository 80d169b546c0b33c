package motebook.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.desk.DueReport;
import motebook.desk.Ledger;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.report.CalendarFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "export", description = "Puts what the book says into files for others to read.")
final class ExportCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private BookExport whole;
  @Mixin private SheetExport sheet;

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      description = {
        "An iCalendar of everything that has a date or a foreseen one, with alarms.",
        "Exported and read again, it moves what it held before and doubles nothing."
      })
  private Path calendar;

  @Option(names = "--force", description = "Replace a file that this program did not write, too.")
  private boolean force;

  ExportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (!whole.asked() && !sheet.asked() && calendar == null) {
      throw new Refusal(
          "Say what to write: the whole book with --csv DIR or --json FILE, the week's sheet with"
              + " --pdf FILE or --html FILE, or what has a date with --calendar FILE. Several may be"
              + " named.");
    }
    // A week without work has no sheet; that is told before anything is written.
    if (sheet.asked()) {
      sheet.write(desk, force);
    }
    if (whole.asked()) {
      whole.write(desk, force);
    }
    Optional.ofNullable(calendar).ifPresent(this::dates);
    return ExitCode.DONE;
  }

  private void dates(Path file) {
    DueReport ahead;
    try (Book book = desk.open()) {
      ahead = new Ledger(book).care(desk.today()).ahead();
    }
    String text = CalendarFile.of(ahead, desk.clock().instant(), desk.program());
    SheetFile.write(
        file, CalendarFile.MARK, force, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    desk.out()
        .println(
            ahead.items().isEmpty()
                ? "Nothing has a date yet: " + file + " is a calendar without an event"
                : "Dates written to " + file + ": " + ahead.items().size());
  }
}
