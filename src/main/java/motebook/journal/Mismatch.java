package motebook.journal;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A row of a table that is not what the history last held of it.
 *
 * @param table the table
 * @param now the row as JSON; empty where there is none
 * @param past what the history last held, as JSON; empty where it holds no such row
 * @param cells what differs of a row that both hold
 */
record Mismatch(String table, Optional<String> now, Optional<String> past, List<Cell> cells) {
  private static final String SESSION = "session";
  private static final String SESSION_ID = "session_id";
  private static final String POSITION = "position";
  private static final Map<String, String> PARTS =
      Map.of("session_control", "control", "session_finish", "finish");

  /** A column with what stands in it and what the history holds. */
  record Cell(String column, Object now, Object past) {
    @Override
    public String toString() {
      return column + " is " + shown(now) + ", the history holds " + shown(past);
    }

    private static String shown(Object value) {
      return value == null ? "empty" : value instanceof String ? "\"" + value + "\"" : "" + value;
    }
  }

  /**
   * Holds a row against its image.
   *
   * @param defaults what stands in the columns that an image of an earlier form lacks, as JSON
   * @return empty where they agree
   */
  static Optional<Mismatch> of(
      String table, Optional<String> now, Optional<String> past, String defaults) {
    List<Cell> cells =
        now.isPresent() && past.isPresent()
            ? differing(object(now.get()), object(past.get()), object(defaults))
            : List.of();
    return now.isPresent() && past.isPresent() && cells.isEmpty()
        ? Optional.empty()
        : Optional.of(new Mismatch(table, now, past, cells));
  }

  private static List<Cell> differing(
      Map<String, Object> now, Map<String, Object> past, Map<String, Object> defaults) {
    List<Cell> cells = new ArrayList<>();
    now.forEach(
        (column, value) -> {
          Object image = past.containsKey(column) ? past.get(column) : defaults.get(column);
          if (!same(value, image)) {
            cells.add(new Cell(column, value, image));
          }
        });
    return cells;
  }

  private static boolean same(Object one, Object other) {
    return (one instanceof Number a && other instanceof Number b)
        ? a.doubleValue() == b.doubleValue()
        : Objects.equals(one, other);
  }

  private static Map<String, Object> object(String json) {
    try {
      return JSON.std.mapFrom(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the row stands in the book and nowhere in the history. */
  boolean unrecorded() {
    return past.isEmpty();
  }

  /** Whether the history holds the row and the book does not. */
  boolean missing() {
    return now.isEmpty();
  }

  /** What stands in the row beside what it goes by. */
  Map<String, Object> content() {
    Map<String, Object> content = object(now.or(() -> past).orElseThrow());
    content.keySet().removeAll(keys(content));
    return content;
  }

  /** A row goes by its number, or by its owner's and its place. */
  private static List<String> keys(Map<String, Object> row) {
    return row.keySet().stream().limit(row.containsKey("id") ? 1 : 2).toList();
  }

  /** What a person reads of it: which row of which day, what it holds and what it should hold. */
  String sentence() {
    if (missing()) {
      return which() + " is missing; the history holds " + content(past.orElseThrow()) + ".";
    }
    if (unrecorded()) {
      return which()
          + " does not stand in the history; the book holds "
          + content(now.orElseThrow())
          + ".";
    }
    return which()
        + " differs from the history: "
        + cells.stream().map(Cell::toString).collect(Collectors.joining("; "))
        + ".";
  }

  private String which() {
    Map<String, Object> row = object(past.or(() -> now).orElseThrow());
    if (table.equals(SESSION)) {
      return "Session " + row.get("id") + " of " + row.get("date");
    }
    String day = row.get("date") == null ? "" : " of " + row.get("date");
    return PARTS.containsKey(table)
        ? "Session "
            + row.get(SESSION_ID)
            + ", "
            + PARTS.get(table)
            + " "
            + (row.get(POSITION) instanceof Number n ? n.longValue() + 1 : "?")
        : "Row " + key(row) + " of " + table.replace('_', ' ') + day;
  }

  private static String key(Map<String, Object> row) {
    return keys(row).stream().map(row::get).map(String::valueOf).collect(Collectors.joining("/"));
  }

  private static String content(String json) {
    return object(json).entrySet().stream()
        .filter(cell -> cell.getValue() != null && !"".equals(cell.getValue()))
        .map(cell -> cell.getKey() + " " + cell.getValue())
        .collect(Collectors.joining(", "));
  }
}
