package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import motebook.model.Text;

/** Makes changes, each whole and each recorded, and takes them back. */
final class Changes {
  private static final int STEPS_AT_A_TIME = 10_000;

  private final Store store;
  private final Clock clock;
  private final Copies copies;
  private String warning = "";

  Changes(Store store, Clock clock, Copies copies) {
    this.store = store;
    this.clock = clock;
    this.copies = copies;
  }

  /**
   * Makes one change. Every row the body writes is recorded with it by the tables themselves; a
   * body that writes nothing leaves no change behind.
   */
  <T> T make(String what, Supplier<T> body) {
    copyOncePerDay();
    return store.atomically(() -> recorded(what, Optional.empty(), body));
  }

  /** The same for a body that answers nothing. */
  void make(String what, Runnable body) {
    make(
        what,
        () -> {
          body.run();
          return what;
        });
  }

  private <T> T recorded(String what, Optional<Long> undoes, Supplier<T> body) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    long change = store.number("change-begin", now, Text.clean(what), undoes);
    store.run("change-open", change);
    T result = body.get();
    store.run("change-drop-if-empty", change);
    store.run("change-close");
    return result;
  }

  /** A copy that fails does not cost the person the entry; it is told instead. */
  private void copyOncePerDay() {
    try {
      copies.daily(LocalDate.now(clock));
      warning = "";
    } catch (BookTrouble e) {
      warning = "Today's copy of the book was not made. " + e.getMessage();
    }
  }

  /** What went wrong beside the last change, if anything did. */
  Optional<String> warning() {
    return Optional.of(warning).filter(text -> !text.isEmpty());
  }

  /** The newest changes, newest first. */
  List<Change> history(int limit) {
    return store.list("history", Changes::read, limit);
  }

  private static Change read(ResultSet row) throws SQLException {
    return new Change(
        row.getLong("id"),
        Instant.parse(row.getString("at")),
        row.getString("what"),
        row.getBoolean("undone"),
        Row.optional(row, "undoes").map(Long::valueOf));
  }

  /** Takes back the last change that still stands; answers it, or nothing where none does. */
  Optional<Change> undo() {
    copyOncePerDay();
    return store.atomically(
        () -> {
          Optional<Change> last = store.first("change-to-undo", Changes::read);
          last.ifPresent(this::takeBack);
          return last;
        });
  }

  private void takeBack(Change change) {
    recorded(
        "Took back: " + change.what(),
        Optional.of(change.id()),
        () -> {
          stepsBefore(Long.MAX_VALUE, change);
          return change;
        });
  }

  /** From the last row back to the first, so many at a time that a long change fits in memory. */
  private void stepsBefore(long behind, Change change) {
    long next = behind;
    while (true) {
      List<Step> steps =
          store.list("change-rows-backwards", Step::read, change.id(), next, STEPS_AT_A_TIME);
      if (steps.isEmpty()) {
        return;
      }
      restore(steps);
      next = steps.get(steps.size() - 1).id;
    }
  }

  /** Steps of one kind that follow each other run as one statement. */
  private void restore(List<Step> steps) {
    List<Object[]> images = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      images.add(new Object[] {steps.get(i).image});
      boolean last = i + 1 == steps.size() || !steps.get(i + 1).name.equals(steps.get(i).name);
      if (last) {
        store.runEach("restore-" + steps.get(i).name, images);
        images.clear();
      }
    }
  }

  /** One row to be put back, and how. */
  private record Step(String name, String image, long id) {
    static Step read(ResultSet row) throws SQLException {
      return new Step(row.getString("step"), row.getString("image"), row.getLong("id"));
    }
  }
}
