package motebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.entry.BookDocumentReader;
import motebook.entry.BookFolderReader;
import motebook.entry.SheetDateOrder;
import motebook.journal.Book;
import motebook.journal.Exchange;
import motebook.model.Refusal;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "import",
    description = {
      "Brings in a sheet of sessions kept by hand (CSV), shown first, or what export wrote: a whole"
          + " book, into a fresh one.",
      "Columns of a sheet, in any order: date, start, end or minutes, operation, material, controls,"
          + " place, person, respirator, checked, worn %%, using, note.",
      "Everything comes in, or nothing; undo takes it back. The history is not carried over.",
      "Example: motebook import sessions.csv",
      "Example: motebook import book-folder --book new.db"
    })
final class ImportCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(
      paramLabel = "PATH",
      description =
          "A sheet (- for standard input), a folder that export --csv wrote, or a .json file that"
              + " export --json wrote.")
  private Path path;

  @Option(names = "--yes", description = "Write a sheet without asking; else it is only shown.")
  private boolean yes;

  @Option(
      names = "--dates",
      paramLabel = "ORDER",
      description = "day-first or month-first, for dates of a sheet with slashes.")
  private String dates;

  @Mixin private Answer answer;

  ImportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (!Files.exists(path) && !path.equals(SessionsImport.STANDARD_INPUT)) {
      throw new Refusal("There is no file or folder " + path + ".");
    }
    if (Files.isDirectory(path)) {
      return book(BookFolderReader.size(path), this::folder);
    }
    if (ends(".json")) {
      return book(path.toFile().length(), this::document);
    }
    return sheet();
  }

  private boolean ends(String ending) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /** A single sheet made by hand. */
  private Integer sheet() {
    Optional<SheetDateOrder> order = SessionsImport.order(Optional.ofNullable(dates));
    return new SessionsImport(desk, path, order, yes, answer.json()).run();
  }

  /** Reads what came out of a book. */
  @FunctionalInterface
  private interface Reading {
    void read(Exchange.Receiver receiver, Progress progress);
  }

  private void folder(Exchange.Receiver receiver, Progress progress) {
    BookFolderReader.read(path, receiver, progress::step);
  }

  private void document(Exchange.Receiver receiver, Progress progress) {
    BookDocumentReader.read(path, receiver, progress::step);
  }

  private Integer book(long bytes, Reading reading) {
    try (Book book = desk.open()) {
      long rows = takeIn(book.exchange(), bytes, reading);
      desk.answer(
          answer.json(),
          () -> Json.object("rows", rows),
          () -> List.of("The book from " + path + " is in " + book.file() + ": " + rows + " rows"));
    }
    return ExitCode.DONE;
  }

  private long takeIn(Exchange exchange, long bytes, Reading reading) {
    try (Progress progress = Progress.over(desk.world(), "Reading the book in", bytes)) {
      return exchange.takeIn(
          receiver -> reading.read(receiver, progress), "Imported the book from " + path);
    }
  }
}
