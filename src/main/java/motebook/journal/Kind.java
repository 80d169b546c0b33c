package motebook.journal;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One kind of thing on record: a file of an export.
 *
 * @param name of the file, without its ending
 */
public record Kind(String name, List<Column> columns) {
  public Kind {
    columns = List.copyOf(columns);
  }

  /** The name of its part in a JSON document. */
  public String key() {
    return name.replace('-', '_');
  }

  /** Where a column stands among the columns. */
  int index(String column) {
    return IntStream.range(0, columns.size())
        .filter(i -> columns.get(i).name().equals(column))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " has no column " + column));
  }

  /** The columns that were there in a version of the form already. */
  public List<Column> columnsOf(int version) {
    return columns.stream().filter(column -> column.since() <= version).toList();
  }

  /** Whether its rows go by a name. */
  boolean named() {
    return columns.stream().anyMatch(column -> column.form() == Form.NAME);
  }
}
