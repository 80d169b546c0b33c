package motebook.entry;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import motebook.journal.Column;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * Reads the values of a row of a JSON document. Whatever is wrong with a value, the parser stands
 * at its end afterwards, so that the rest of the row can be read.
 */
final class JsonCells {
  private final JsonParser in;

  JsonCells(JsonParser in) {
    this.in = in;
  }

  /**
   * The value that the parser stands on; null where it is empty.
   *
   * @throws Refusal if it cannot be one of the column, as a sentence without its subject
   */
  Object read(Column column) throws IOException {
    return column.list() ? list(column) : scalar(column.parts().get(0));
  }

  private Object scalar(Column.Part part) throws IOException {
    if (in.currentToken().isStructStart()) {
      in.skipChildren();
      throw new Refusal("holds no list and no object");
    }
    String text = in.currentToken() == JsonToken.VALUE_NULL ? "" : in.getText();
    return text.isEmpty() ? null : part.form().parse(text);
  }

  private List<List<Object>> list(Column column) throws IOException {
    if (in.currentToken() != JsonToken.START_ARRAY) {
      in.skipChildren();
      throw new Refusal("holds a list");
    }
    List<List<Object>> items = new ArrayList<>();
    Refusal first = null;
    while (in.nextToken() != JsonToken.END_ARRAY) {
      try {
        items.add(item(column));
      } catch (Refusal e) {
        first = first == null ? e : first;
      }
    }
    if (first != null) {
      throw first;
    }
    return items;
  }

  private List<Object> item(Column column) throws IOException {
    List<Column.Part> parts = column.parts();
    Object[] item = new Object[parts.size()];
    if (parts.size() == 1) {
      item[0] = scalar(parts.get(0));
    } else {
      fields(parts, item);
    }
    if (item[0] == null) {
      throw new Refusal("holds an item without " + parts.get(0).name());
    }
    return Arrays.asList(item);
  }

  private void fields(List<Column.Part> parts, Object[] item) throws IOException {
    if (in.currentToken() != JsonToken.START_OBJECT) {
      in.skipChildren();
      throw new Refusal("holds items in { and }");
    }
    Refusal first = null;
    for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
      int at = parts.stream().map(Column.Part::name).toList().indexOf(name);
      in.nextToken();
      try {
        if (at < 0) {
          in.skipChildren();
          throw new Refusal("knows no \"" + Text.clean(name) + "\"");
        }
        item[at] = scalar(parts.get(at));
      } catch (Refusal e) {
        first = first == null ? e : first;
      }
    }
    if (first != null) {
      throw first;
    }
  }
}
