package motebook.entry;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongConsumer;
import motebook.journal.BookForm;
import motebook.journal.Column;
import motebook.journal.Exchange;
import motebook.journal.Kind;
import motebook.model.Refusal;
import motebook.model.Text;

/** Reads a book out of a JSON document, as {@code export --json} writes it. */
public final class BookDocumentReader {
  private final Path file;
  private final JsonParser in;
  private final JsonCells cells;
  private final Exchange.Receiver receiver;
  private final ImportedKeys keys = new ImportedKeys();
  private boolean whole;

  private BookDocumentReader(Path file, JsonParser in, Exchange.Receiver receiver) {
    this.file = file;
    this.in = in;
    cells = new JsonCells(in);
    this.receiver = receiver;
  }

  /**
   * Hands over all rows, and complaints about those that cannot be read.
   *
   * @param bytes is told how many bytes were read
   * @throws Refusal if the file is no export of a book, or is not whole
   */
  public static void read(Path file, Exchange.Receiver receiver, LongConsumer bytes) {
    try (InputStream stream = new CountedInput(Files.newInputStream(file), bytes);
        JsonParser in = new JsonFactory().createParser(stream)) {
      new BookDocumentReader(file, in, receiver).read();
    } catch (IOException e) {
      throw new Refusal(
          "The file " + file + " cannot be read: " + Text.clean(String.valueOf(e.getMessage())));
    }
  }

  private void read() throws IOException {
    try {
      document();
    } catch (JsonProcessingException e) {
      // Some of its complaints, such as of lists in lists without end, bear no place.
      JsonLocation at = e.getLocation() == null ? in.currentLocation() : e.getLocation();
      throw new Refusal(
          "The file %s is no whole JSON: at line %d, column %d: %s"
              .formatted(
                  file, at.getLineNr(), at.getColumnNr(), Text.clean(e.getOriginalMessage())));
    }
  }

  private void document() throws IOException {
    if (in.nextToken() != JsonToken.START_OBJECT
        || !"format".equals(in.nextFieldName())
        || !BookForm.FORMAT.equals(in.nextTextValue())) {
      throw notOurs();
    }
    if (!"version".equals(in.nextFieldName())) {
      throw notOurs();
    }
    int version = in.nextIntValue(0);
    BookForm.requireKnown(version);
    for (Kind kind : BookForm.kinds()) {
      expect(kind.key(), in.nextFieldName());
      if (in.nextToken() != JsonToken.START_ARRAY) {
        throw new Refusal(where() + ": \"" + kind.key() + "\" is no list of rows.");
      }
      while (in.nextToken() != JsonToken.END_ARRAY) {
        row(kind, version);
      }
    }
    expect(null, in.nextFieldName());
  }

  private Refusal notOurs() {
    return new Refusal(
        "The file %s is no export of a book: it does not begin with %s and a version. Name one that"
                .formatted(file, BookForm.FORMAT)
            + " export --json wrote.");
  }

  private void expect(String wanted, String found) {
    if (wanted == null ? found != null : !wanted.equals(found)) {
      String got = found == null ? "the end" : "\"" + Text.clean(found) + "\"";
      String should = wanted == null ? "the end" : "\"" + wanted + "\"";
      throw new Refusal("%s: %s should stand where %s stands.".formatted(where(), should, got));
    }
  }

  private String where() {
    return file.getFileName() + ", line " + in.currentTokenLocation().getLineNr();
  }

  private void row(Kind kind, int version) throws IOException {
    String where = where();
    if (in.currentToken() != JsonToken.START_OBJECT) {
      receiver.wrong(where, "A row of " + kind.key() + " stands in { and }.");
      in.skipChildren();
      return;
    }
    whole = true;
    Object[] values = new Object[kind.columns().size()];
    boolean[] there = new boolean[values.length];
    for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
      int at = kind.columns().stream().map(Column::name).toList().indexOf(name);
      in.nextToken();
      if (at < 0 || there[at]) {
        wrong(where, name, at < 0 ? "is not known" : "comes twice");
        in.skipChildren();
      } else {
        there[at] = true;
        values[at] = value(where, kind, kind.columns().get(at));
      }
    }
    missing(kind, version, where, there, values);
    if (whole) {
      receiver.row(kind, where, BookForm.upToDate(kind, version, Arrays.asList(values)));
    }
  }

  private void missing(Kind kind, int version, String where, boolean[] there, Object[] values) {
    for (int i = 0; i < there.length; i++) {
      Column column = kind.columns().get(i);
      if (!there[i] && column.since() <= version) {
        wrong(where, column.name(), "is missing");
      } else if (column.list() && values[i] == null) {
        values[i] = List.of();
      }
    }
  }

  private void wrong(String where, String column, String what) {
    whole = false;
    receiver.wrong(where + ", column " + Text.clean(column), "It " + what + ".");
  }

  private Object value(String where, Kind kind, Column column) throws IOException {
    try {
      Object value = cells.read(column);
      keys.check(kind, column, value);
      boolean empty = value == null || value.equals(List.of());
      if (empty && column.required()) {
        wrong(where, column.name(), "must not be empty");
      }
      return value;
    } catch (Refusal e) {
      wrong(where, column.name(), e.getMessage());
      return null;
    }
  }
}
