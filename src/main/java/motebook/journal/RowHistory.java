package motebook.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holds the rows of a book against the history, which has an image of each row as it was last
 * written: whatever changed a row without a change is found.
 */
final class RowHistory {
  private static final List<String> OF_A_SESSION =
      List.of("session", "session_control", "session_finish");

  private final Store store;
  private final Map<String, String> texts = new HashMap<>();

  RowHistory(Store store) {
    this.store = store;
  }

  /** How many rows of the history itself cannot be read. */
  long unreadable() {
    return store.number("unreadable-history");
  }

  /** Every row of every table that is not what the history last held of it. */
  List<Mismatch> mismatches() {
    List<Mismatch> all = new ArrayList<>();
    try (Store fresh = Connections.inMemory()) {
      Migrations.shipped().stepsAfter(0, fresh);
      RowHistory begun = new RowHistory(fresh);
      for (String table : store.list("recorded-tables", Row::text)) {
        add(all, table, read(table, false), begun.read(table, false));
      }
    }
    return all;
  }

  /** Of a book's own beginning there is no image: such rows are what a fresh book holds. */
  private void add(List<Mismatch> all, String table, List<Found> found, List<Found> begun) {
    Map<String, String> first = new LinkedHashMap<>();
    begun.forEach(row -> first.put(row.key, row.now.orElseThrow()));
    for (Found row : found) {
      Optional<String> past = row.known ? row.past : Optional.ofNullable(first.get(row.key));
      Mismatch.of(table, row.now, past, row.defaults).ifPresent(all::add);
      first.remove(row.key);
    }
    first.forEach(
        (key, image) -> {
          if (store.number("row-is-known", table, Long.valueOf(key)) == 0) {
            Mismatch.of(table, Optional.empty(), Optional.of(image), "{}").ifPresent(all::add);
          }
        });
  }

  /** What is wrong with one session, its controls and its amounts. */
  List<Mismatch> ofSession(long id) {
    return OF_A_SESSION.stream()
        .flatMap(table -> read(table, true, id).stream().flatMap(row -> row.mismatch(table)))
        .toList();
  }

  private List<Found> read(String table, boolean one, Object... id) {
    return store.composed(
        texts.computeIfAbsent(table + one, any -> text(table, one)),
        row ->
            new Found(
                row.getString("key"),
                Row.optional(row, "now"),
                Row.optional(row, "past"),
                row.getBoolean("known"),
                row.getString("defaults")),
        id);
  }

  private String text(String table, boolean one) {
    return store.first("row-check-text", Row::text, table, one ? 1 : 0).orElseThrow();
  }

  private record Found(
      String key, Optional<String> now, Optional<String> past, boolean known, String defaults) {
    Stream<Mismatch> mismatch(String table) {
      return Mismatch.of(table, now, past, defaults).stream();
    }
  }
}
