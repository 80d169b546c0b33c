package motebook.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Whether a book is sound: the file, the tables, and what stands in them. */
final class Checkup {
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
    if (checkup.problems.isEmpty()) {
      checkup.attempt(checkup::tables);
      checkup.attempt(checkup::content);
    }
    return List.copyOf(checkup.problems);
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
    OwnFinishes.read(store);
    new People(store).all();
    new Places(store).on(LAST);
    store.list("sessions-between", Sessions::read, FIRST, LAST);
    GearTables.of(store).read();
  }
}
