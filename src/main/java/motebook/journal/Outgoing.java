package motebook.journal;

import java.util.ArrayList;
import java.util.List;

/** Reads the rows of one kind, each with what stands in its lists. */
final class Outgoing implements AutoCloseable {
  private final Kind kind;
  private final Cursor rows;
  private final List<Items> lists = new ArrayList<>();

  Outgoing(Store store, Kind kind) {
    this.kind = kind;
    rows = store.cursor("export-" + kind.name());
    kind.columns().stream()
        .filter(Column::list)
        .forEach(column -> lists.add(new Items(store, kind, column)));
  }

  boolean next() {
    return rows.next();
  }

  /** The row as it is exported: a value for each column, a list of items where it holds one. */
  List<Object> values() {
    List<Object> values = new ArrayList<>();
    long id = rows.told(Row::number);
    int plain = 0;
    int listed = 0;
    for (Column column : kind.columns()) {
      values.add(column.list() ? lists.get(listed++).of(id) : rows.value(++plain, column.form()));
    }
    return values;
  }

  @Override
  public void close() {
    lists.forEach(Items::close);
    rows.close();
  }

  /** What stands in the lists of one column, read along with the rows that it belongs to. */
  private static final class Items {
    private final Column column;
    private final Cursor items;
    private boolean more;

    Items(Store store, Kind kind, Column column) {
      this.column = column;
      items = store.cursor("export-" + kind.name() + "-" + column.name());
      more = items.next();
    }

    List<List<Object>> of(long owner) {
      List<List<Object>> all = new ArrayList<>();
      while (more && items.told(Row::number) == owner) {
        List<Object> item = new ArrayList<>();
        for (Column.Part part : column.parts()) {
          item.add(items.value(2 + item.size(), part.form()));
        }
        all.add(item);
        more = items.next();
      }
      return all;
    }

    void close() {
      items.close();
    }
  }
}
