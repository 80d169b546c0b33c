package motebook.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import motebook.entry.Cells;
import motebook.journal.BookForm;
import motebook.journal.Column;
import motebook.journal.Exchange;
import motebook.journal.Kind;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a whole book as a folder of CSV files (RFC 4180, UTF-8): one for each kind of thing, one
 * that tells the form, and the table of what each column holds.
 */
public final class BookFolder implements Exchange.Sink, AutoCloseable {
  /** The file that tells the form and its version. */
  public static final String FORM = "format.csv";

  private static final String COLUMNS = "columns.csv";

  private final Path folder;
  private Kind kind;
  private CSVPrinter out;

  /**
   * @param folder which is there and empty
   */
  public BookFolder(Path folder) throws IOException {
    this.folder = folder;
    Files.writeString(
        folder.resolve(FORM),
        "format,version\r\n" + BookForm.FORMAT + "," + BookForm.VERSION + "\r\n");
    Files.writeString(folder.resolve(COLUMNS), BookForm.table().replace("\n", "\r\n"));
  }

  /** The names of all the files of an export. */
  public static Set<String> files() {
    Set<String> files = new TreeSet<>(List.of(FORM, COLUMNS));
    BookForm.kinds().forEach(kind -> files.add(kind.name() + ".csv"));
    return files;
  }

  @Override
  public void begin(Kind next) {
    try {
      close();
      kind = next;
      BufferedWriter file = Files.newBufferedWriter(folder.resolve(next.name() + ".csv"));
      out = new CSVPrinter(file, CSVFormat.RFC4180);
      out.printRecord(next.columns().stream().map(Column::name).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void row(List<Object> values) {
    List<String> cells = new ArrayList<>(values.size());
    for (int i = 0; i < values.size(); i++) {
      cells.add(Cells.write(kind.columns().get(i), values.get(i)));
    }
    try {
      out.printRecord(cells);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    if (out != null) {
      out.close();
    }
  }
}
