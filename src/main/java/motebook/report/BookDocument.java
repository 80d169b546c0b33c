package motebook.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import motebook.journal.BookForm;
import motebook.journal.Column;
import motebook.journal.Exchange;
import motebook.journal.Form;
import motebook.journal.Kind;

/** Writes a whole book as one JSON document, a row of the book in each line. */
public final class BookDocument implements Exchange.Sink, AutoCloseable {
  /** What every such document begins with. */
  public static final String BEGINS = "{\"format\":\"" + BookForm.FORMAT + "\"";

  private final JsonGenerator out;
  private Kind kind;

  public BookDocument(OutputStream file) throws IOException {
    out = new JsonFactory().createGenerator(file);
    out.setPrettyPrinter(new RowInEachLine());
    out.writeStartObject();
    out.writeStringField("format", BookForm.FORMAT);
    out.writeNumberField("version", BookForm.VERSION);
  }

  @Override
  public void begin(Kind next) {
    try {
      endRows();
      kind = next;
      out.writeFieldName(next.key());
      out.writeStartArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void endRows() throws IOException {
    if (kind != null) {
      out.writeEndArray();
    }
  }

  @Override
  public void row(List<Object> values) {
    try {
      out.writeStartObject();
      for (int i = 0; i < values.size(); i++) {
        Column column = kind.columns().get(i);
        out.writeFieldName(column.name());
        if (column.list()) {
          list(column, (List<?>) values.get(i));
        } else {
          value(column.form(), values.get(i));
        }
      }
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void list(Column column, List<?> items) throws IOException {
    out.writeStartArray();
    for (Object item : items) {
      List<?> parts = (List<?>) item;
      if (parts.size() == 1) {
        value(column.form(), parts.get(0));
      } else {
        item(column, parts);
      }
    }
    out.writeEndArray();
  }

  private void item(Column column, List<?> parts) throws IOException {
    out.writeStartObject();
    for (int i = 0; i < parts.size(); i++) {
      Column.Part part = column.parts().get(i);
      out.writeFieldName(part.name());
      value(part.form(), parts.get(i));
    }
    out.writeEndObject();
  }

  private void value(Form form, Object value) throws IOException {
    if (value == null) {
      out.writeNull();
    } else if (form == Form.WHOLE || form == Form.NUMBER) {
      out.writeNumber(form.text(value));
    } else if (form == Form.FLAG) {
      out.writeBoolean((Boolean) value);
    } else {
      out.writeString(form.text(value));
    }
  }

  @Override
  public void close() throws IOException {
    endRows();
    out.writeEndObject();
    out.writeRaw('\n');
    out.close();
  }

  /** Breaks the line before each row and each list of rows, and nowhere else. */
  private static final class RowInEachLine extends MinimalPrettyPrinter {
    private static final long serialVersionUID = 1L;
    private int depth;

    @Override
    public void writeObjectEntrySeparator(JsonGenerator to) throws IOException {
      to.writeRaw(depth == 0 ? ",\n" : ",");
    }

    @Override
    public void writeStartArray(JsonGenerator to) throws IOException {
      to.writeRaw('[');
      depth++;
    }

    @Override
    public void beforeArrayValues(JsonGenerator to) throws IOException {
      breakLine(to);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator to) throws IOException {
      to.writeRaw(',');
      breakLine(to);
    }

    @Override
    public void writeEndArray(JsonGenerator to, int count) throws IOException {
      depth--;
      to.writeRaw(']');
    }

    private void breakLine(JsonGenerator to) throws IOException {
      if (depth == 1) {
        to.writeRaw('\n');
      }
    }
  }
}
