package motebook.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * Brings rows and history together again where they differ: a disk, a sync program or another tool
 * changed one without the other.
 */
public final class Mending {
  private final Store store;
  private final Changes changes;

  Mending(Store store, Changes changes) {
    this.store = store;
    this.changes = changes;
  }

  /**
   * How many rows are not what the history holds of them.
   *
   * @throws BookTrouble if the history itself cannot be read
   */
  public int rows() {
    return mismatches().size();
  }

  private List<Mismatch> mismatches() {
    RowHistory history = new RowHistory(store);
    if (history.unreadable() > 0) {
      throw new BookTrouble(
          "The history of the book "
              + store.file()
              + " is damaged itself. Put a copy in its place with the command restore.");
    }
    return history.mismatches();
  }

  /**
   * Puts every row back to what the history holds of it, as one change. A row that the history does
   * not hold under any number is left as it is.
   *
   * @return how many rows were put right
   * @throws BookTrouble if the book is not sound afterwards; nothing is changed then
   */
  public int fromHistory() {
    return mend("Put rows right from the history", this::putBack);
  }

  /**
   * Takes every row as it stands into the history, as one change.
   *
   * @return how many rows that were
   * @throws BookTrouble if what stands there breaks the rules of its table; nothing is changed then
   */
  public int asTheyStand() {
    return mend("Took rows into the history as they stand", this::takeIn);
  }

  private int mend(String what, ToIntFunction<List<Mismatch>> body) {
    try {
      return changes.make(
          Deed.changed(Deed.Subject.BOOK, "", what),
          () -> {
            store.run("defer-foreign-keys");
            store.run("indexes-again");
            int rows = body.applyAsInt(mismatches());
            if (!Checkup.wholeFile(store)) {
              throw new IllegalStateException("the file itself is damaged");
            }
            return rows;
          });
    } catch (IllegalStateException e) {
      throw new BookTrouble(
          "What stands in the book "
              + store.file()
              + " breaks its rules, and cannot be put right so; nothing was changed. Put a copy in"
              + " its place with the command restore.",
          e);
    }
  }

  private int putBack(List<Mismatch> rows) {
    List<Mismatch> right = new ArrayList<>(rows);
    right.removeIf(row -> row.unrecorded() && renumbered(row, rows).isEmpty());
    right.stream().filter(Mismatch::unrecorded).forEach(r -> run("inserted", r, r.now()));
    right.stream()
        .filter(row -> !row.unrecorded() && !row.missing())
        .forEach(row -> run("updated", row, row.past()));
    right.stream().filter(Mismatch::missing).forEach(row -> run("deleted", row, row.past()));
    if (mismatches().stream().anyMatch(row -> !row.unrecorded())) {
      throw new IllegalStateException("rows still differ");
    }
    return right.size();
  }

  /** The missing row that this one is under another number. */
  private static Optional<Mismatch> renumbered(Mismatch row, List<Mismatch> rows) {
    return rows.stream()
        .filter(other -> other.missing() && other.table().equals(row.table()))
        .filter(other -> other.content().equals(row.content()))
        .findFirst();
  }

  private int takeIn(List<Mismatch> rows) {
    for (Mismatch row : rows) {
      if (row.missing()) {
        run("deleted", row, row.past());
        run("inserted", row, row.past());
      } else {
        run("updated", row, row.now());
      }
    }
    return rows.size();
  }

  private void run(String step, Mismatch row, Optional<String> image) {
    store.run("restore-" + step + "-" + row.table(), image.orElseThrow());
  }
}
