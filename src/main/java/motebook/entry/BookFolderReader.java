package motebook.entry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.LongConsumer;
import motebook.journal.BookForm;
import motebook.journal.Column;
import motebook.journal.Exchange;
import motebook.journal.Kind;
import motebook.model.Refusal;
import motebook.model.Text;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a book out of a folder of CSV files, as {@code export --csv} writes it. */
public final class BookFolderReader {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
  private static final String FORM = "format.csv";
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Path folder;
  private final Exchange.Receiver receiver;
  private final LongConsumer bytes;
  private final ImportedKeys keys = new ImportedKeys();

  private BookFolderReader(Path folder, Exchange.Receiver receiver, LongConsumer bytes) {
    this.folder = folder;
    this.receiver = receiver;
    this.bytes = bytes;
  }

  /** How many bytes there are to read. */
  public static long size(Path folder) {
    return BookForm.kinds().stream()
        .mapToLong(k -> folder.resolve(file(k)).toFile().length())
        .sum();
  }

  private static String file(Kind kind) {
    return kind.name() + ".csv";
  }

  /**
   * Hands over all rows, and complaints about those that cannot be read.
   *
   * @param bytes is told how many bytes were read
   * @throws Refusal if the folder is no export of a book, or is not whole
   */
  public static void read(Path folder, Exchange.Receiver receiver, LongConsumer bytes) {
    BookFolderReader reader = new BookFolderReader(folder, receiver, bytes);
    int version = reader.version();
    reader.requireFiles();
    BookForm.kinds().forEach(kind -> reader.read(kind, version));
  }

  private int version() {
    if (!Files.isRegularFile(folder.resolve(FORM))) {
      throw new Refusal(
          "The folder %s is no export of a book: it holds no %s. Name one that export"
                  .formatted(folder, FORM)
              + " --csv wrote.");
    }
    List<List<String>> rows = new ArrayList<>();
    each(FORM, any -> {}, (line, cells) -> rows.add(cells));
    if (rows.size() != 2
        || rows.get(1).size() != 2
        || !rows.get(1).get(0).equals(BookForm.FORMAT)
        || !rows.get(1).get(1).matches("\\d{1,9}")) {
      throw new Refusal(
          "The file %s does not tell %s and a version; the folder is no export of a book."
              .formatted(folder.resolve(FORM), BookForm.FORMAT));
    }
    int version = Integer.parseInt(rows.get(1).get(1));
    BookForm.requireKnown(version);
    return version;
  }

  private void requireFiles() {
    List<String> missing =
        BookForm.kinds().stream()
            .map(BookFolderReader::file)
            .filter(file -> !Files.isRegularFile(folder.resolve(file)))
            .toList();
    if (!missing.isEmpty()) {
      throw new Refusal(
          "The folder %s is not whole: it lacks %s. Export the book again."
              .formatted(folder, String.join(", ", missing)));
    }
  }

  private void read(Kind kind, int version) {
    String file = file(kind);
    List<String> head = new ArrayList<>();
    each(
        file,
        bytes,
        (line, cells) -> {
          if (head.isEmpty()) {
            head.addAll(cells);
            requireColumns(file, kind, version, head);
          } else {
            row(kind, version, file + ", line " + line, head, cells);
          }
        });
    if (head.isEmpty()) {
      throw new Refusal("The file " + file + " is empty; its first line names its columns.");
    }
  }

  private static void requireColumns(String file, Kind kind, int version, List<String> head) {
    List<String> known = kind.columns().stream().map(Column::name).toList();
    for (String name : head) {
      if (!known.contains(name) || head.indexOf(name) != head.lastIndexOf(name)) {
        throw new Refusal(
            "%s, line 1: the column \"%s\" %s. The columns are %s."
                .formatted(
                    file,
                    Text.clean(name),
                    known.contains(name) ? "comes twice" : "is not known",
                    String.join(", ", known)));
      }
    }
    for (Column column : kind.columnsOf(version)) {
      if (!head.contains(column.name())) {
        throw new Refusal(
            "%s, line 1: the column \"%s\" is missing.".formatted(file, column.name()));
      }
    }
  }

  private void row(Kind kind, int version, String where, List<String> head, List<String> cells) {
    if (cells.size() != head.size()) {
      receiver.wrong(where, "%d cells, but %d columns.".formatted(cells.size(), head.size()));
      return;
    }
    List<Object> values = new ArrayList<>();
    boolean whole = true;
    for (Column column : kind.columns()) {
      int at = head.indexOf(column.name());
      try {
        Object value = Cells.read(column, at < 0 ? "" : cells.get(at));
        keys.check(kind, column, value);
        values.add(value);
      } catch (Refusal e) {
        receiver.wrong(where + ", column " + column.name(), "It " + e.getMessage() + ".");
        whole = false;
      }
    }
    if (whole) {
      receiver.row(kind, where, BookForm.upToDate(kind, version, values));
    }
  }

  /** Does something with the cells of a line. */
  @FunctionalInterface
  private interface Line {
    void read(long number, List<String> cells);
  }

  private void each(String file, LongConsumer counted, Line line) {
    try (InputStream in = new CountedInput(Files.newInputStream(folder.resolve(file)), counted);
        BufferedReader text =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
        CSVParser rows = FORMAT.parse(withoutMark(text))) {
      Iterator<CSVRecord> records = rows.iterator();
      while (records.hasNext()) {
        List<String> cells = records.next().toList();
        line.read(Math.max(1, rows.getCurrentLineNumber()), cells);
      }
    } catch (IOException e) {
      throw unreadable(file, e);
    } catch (UncheckedIOException e) {
      throw unreadable(file, e.getCause());
    }
  }

  /** Spreadsheets like to put a mark in front of UTF-8. */
  private static BufferedReader withoutMark(BufferedReader text) throws IOException {
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
    return text;
  }

  private static Refusal unreadable(String file, IOException e) {
    return new Refusal(
        e instanceof CharacterCodingException
            ? "The file " + file + " is not UTF-8 text; save it as UTF-8."
            : "The file "
                + file
                + " cannot be read: "
                + Text.clean(String.valueOf(e.getMessage())));
  }
}
