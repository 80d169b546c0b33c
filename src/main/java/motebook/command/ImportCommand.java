package motebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import motebook.entry.BookDocumentReader;
import motebook.entry.BookFolderReader;
import motebook.journal.Book;
import motebook.journal.Exchange;
import motebook.model.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "import",
    description = {
      "Brings in what export wrote: a whole book, into a fresh one.",
      "Everything comes in, or nothing; undo takes it back. The history is not carried over.",
      "Example: motebook import book-folder --book new.db"
    })
final class ImportCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(
      paramLabel = "PATH",
      description = "A folder that export --csv wrote, or a .json file that export --json wrote.")
  private Path path;

  ImportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (!Files.exists(path)) {
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
    throw new Refusal(
        path + " is neither a folder nor a .json file; name one that motebook export wrote.");
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
      desk.out().println("The book from " + path + " is in " + book.file() + ": " + rows + " rows");
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
