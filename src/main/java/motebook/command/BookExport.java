package motebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import motebook.journal.Book;
import motebook.journal.Exchange;
import motebook.model.Refusal;
import motebook.report.BookDocument;
import motebook.report.BookFolder;
import picocli.CommandLine.Option;

/** The whole book as a folder of CSV files or as one JSON document. */
final class BookExport {
  @Option(
      names = "--csv",
      paramLabel = "DIR",
      description = {
        "The whole book as a folder of CSV files, one for each kind of thing;",
        "its columns.csv tells what each column holds, and in which unit."
      })
  private Path csv;

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "The whole book as one JSON document, with the same columns.")
  private Path json;

  /** Whether the book is wanted. */
  boolean asked() {
    return csv != null || json != null;
  }

  /** Writes the folder, the document, or both, and says so. */
  void write(Desk desk, boolean force) {
    try (Book book = desk.open()) {
      if (csv != null) {
        folder(book.exchange(), desk);
      }
      if (json != null) {
        document(book.exchange(), desk, force);
      }
    }
  }

  private void folder(Exchange exchange, Desk desk) {
    try {
      Path target = Files.exists(csv) ? csv.toRealPath() : csv.toAbsolutePath().normalize();
      refuseOther(target);
      try (Unfinished half = Unfinished.folder(target)) {
        try (BookFolder folder = new BookFolder(half.path())) {
          pour(exchange, folder, desk);
        }
        half.finish();
      }
    } catch (NoSuchFileException e) {
      throw new Unwritable("The folder " + csv + " cannot be written: there is no folder for it.");
    } catch (IOException e) {
      throw unwritable(e);
    } catch (UncheckedIOException e) {
      throw unwritable(e.getCause());
    }
    desk.out().println("The book is in the folder " + csv + ": " + told(exchange.rows()));
  }

  private Unwritable unwritable(IOException e) {
    return new Unwritable("The folder " + csv + " cannot be written: " + SheetFile.reason(e) + ".");
  }

  /** Only an earlier export gives way, and only if nothing else was put into it. */
  private void refuseOther(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new Refusal(csv + " is a file; name a folder.");
    }
    List<String> held;
    try (Stream<Path> all = Files.list(folder)) {
      held = all.map(path -> path.getFileName().toString()).sorted().toList();
    }
    Set<String> ours = BookFolder.files();
    String other =
        held.isEmpty() || held.contains(BookFolder.FORM)
            ? held.stream().filter(name -> !ours.contains(name)).findFirst().orElse("")
            : held.get(0);
    if (!other.isEmpty()) {
      throw new Refusal(
          "The folder %s holds something that no export put there: %s. Name another folder;"
                  .formatted(csv, other)
              + " nothing was written.");
    }
  }

  private void document(Exchange exchange, Desk desk, boolean force) {
    SheetFile.write(
        json,
        BookDocument.BEGINS,
        force,
        out -> {
          try (BookDocument document = new BookDocument(out)) {
            pour(exchange, document, desk);
          }
        });
    desk.out().println("The book is in " + json + ": " + told(exchange.rows()));
  }

  private static void pour(Exchange exchange, Exchange.Sink sink, Desk desk) {
    try (Progress progress = Progress.over(desk.world(), "Writing the book out", exchange.rows())) {
      exchange.writeTo(sink, progress::step);
    }
  }

  private static String told(long rows) {
    return rows + " rows";
  }
}
