package motebook.reference;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads one shipped table; every complaint names table, row and column. */
final class Table {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Table() {}

  /**
   * @param name of the table, for complaints
   * @param columns that it must have
   * @param row makes a record of one row
   * @throws WrongTable at the first thing that is not as it must be
   */
  static <T> List<T> read(String name, Reader source, List<String> columns, Function<Row, T> row) {
    try (CSVParser parser = FORMAT.parse(source)) {
      requireColumns(name, parser.getHeaderNames(), columns);
      List<T> rows = new ArrayList<>();
      for (CSVRecord line : parser) {
        rows.add(row.apply(new Row(name, line)));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void requireColumns(String name, List<String> has, List<String> wants) {
    for (String column : wants) {
      if (!has.contains(column)) {
        throw new WrongTable(name, 1, column, "missing");
      }
    }
  }

  /** Sees to it that no key comes twice. */
  static final class Unique {
    private final Set<String> seen = new HashSet<>();

    String key(Row row) {
      String key = row.word("key");
      if (!seen.add(key)) {
        throw row.wrong("key", "\"" + key + "\" comes twice");
      }
      return key;
    }
  }
}
