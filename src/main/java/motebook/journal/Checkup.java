package motebook.journal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Whether a book is sound: the file, the tables, and what stands in them. */
final class Checkup {
  private static final String UNREADABLE_IMAGE = "CHECK constraint failed in change_row";
  private static final LocalDate FIRST = LocalDate.of(1900, 1, 1);
  private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  private final Store store;
  private final List<String> problems = new ArrayList<>();

  private Checkup(Store store) {
    this.store = store;
  }

  /** What is wrong, a sentence each; empty when the book is sound. */
  static List<String> problems(Store store) {
    Checkup checkup = new Checkup(store);
    checkup.attempt(checkup::file);
    boolean readable = checkup.problems.isEmpty();
    checkup.attempt(checkup::history);
    if (readable) {
      checkup.attempt(checkup::tables);
      checkup.attempt(checkup::content);
    }
    return List.copyOf(checkup.problems);
  }

  /** What SQLite or the schema finds broken, a sentence each, whatever stands in the rows. */
  static List<String> broken(Store store) {
    Checkup checkup = new Checkup(store);
    checkup.attempt(checkup::file);
    if (checkup.problems.isEmpty()) {
      checkup.attempt(checkup::tables);
    }
    return List.copyOf(checkup.problems);
  }

  /**
   * Whether the file is as SQLite needs it, whatever stands in its rows. Up to form 7 a history row
   * that cannot be read breaks a check; it is kept, and told as what it is.
   */
  static boolean wholeFile(Store store) {
    return store.list("integrity", Row::text).stream()
        .allMatch(line -> line.equals("ok") || line.equals(UNREADABLE_IMAGE));
  }

  private void attempt(Runnable check) {
    try {
      check.run();
    } catch (BookTrouble e) {
      problems.add(e.getMessage());
    }
  }

  private void file() {
    store.list("integrity", Row::text).stream()
        .filter(line -> !line.equals("ok"))
        .forEach(line -> problems.add("The file is damaged: " + line + "."));
    store
        .list("foreign-keys", row -> row.getString("table") + " row " + row.getString("rowid"))
        .forEach(row -> problems.add("A reference leads nowhere: " + row + "."));
  }

  /** Every row is what the history last held of it. */
  private void history() {
    RowHistory history = new RowHistory(store);
    long unreadable = history.unreadable();
    if (unreadable == 0) {
      history.mismatches().forEach(row -> problems.add(row.sentence()));
    } else {
      problems.add("The history is damaged: " + unreadable + " of its rows cannot be read.");
    }
  }

  /** A table or a trigger that is missing or was altered no longer keeps its promise. */
  private void tables() {
    try (Store fresh = Connections.inMemory()) {
      Migrations.shipped().stepsAfter(0, fresh);
      Map<String, String> wanted = schema(fresh);
      Map<String, String> found = schema(store);
      wanted.forEach((thing, sql) -> compare(thing, sql, found.get(thing)));
    }
  }

  private void compare(String thing, String wanted, String found) {
    if (found == null) {
      problems.add("The book lacks the " + thing + ".");
    } else if (!found.equals(wanted)) {
      problems.add("The " + thing + " of the book is not what it should be.");
    }
  }

  private static Map<String, String> schema(Store store) {
    Map<String, String> things = new HashMap<>();
    store
        .list("schema", row -> Map.entry(row.getString("thing"), row.getString("sql")))
        .forEach(thing -> things.put(thing.getKey(), thing.getValue()));
    return things;
  }

  /** Where rows contradict each other, a sentence each. */
  static List<String> contradictions(Store store) {
    return Stream.of(
            "overlaps", "places-without-beginning", "settings-missing", "finishes-not-whole")
        .flatMap(query -> store.list(query, Row::text).stream())
        .toList();
  }

  private void content() {
    problems.addAll(contradictions(store));
    new People(store).all();
    new Places(store).on(LAST);
    GearTables.of(store).read();
    new Sessions(store, Clock.systemUTC())
        .between(FIRST, LAST)
        .leftOut()
        .forEach(session -> problems.addAll(told(session)));
    unknown("The settings name the limit set", "limits", store.list("limit-set", Row::text));
    unknown("An element is of the class", "elements", store.list("element-classes", Row::text));
    OwnFinishes.read(store)
        .forEach(
            sheet ->
                KnownKeys.unknown(sheet)
                    .forEach(
                        key ->
                            problems.add(
                                "The data sheet of the finish \"%s\" names the %s, which this Motebook does not know."
                                    .formatted(sheet.name(), key))));
  }

  /** What is damaged is told row by row already. */
  private static List<String> told(Flawed session) {
    String which = "Session " + session.id() + " of " + session.date();
    return switch (session.reason()) {
      case DAMAGED -> List.of();
      case IMPOSSIBLE -> List.of(which + " holds what no session can.");
      case UNKNOWN ->
          session.details().stream()
              .map(key -> which + " names the " + key + ", which this Motebook does not know.")
              .toList();
    };
  }

  private void unknown(String what, String table, List<String> keys) {
    keys.stream()
        .filter(key -> !KnownKeys.of(table).contains(key))
        .forEach(
            key -> problems.add(what + " \"" + key + "\", which this Motebook does not know."));
  }
}
