package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import motebook.model.Text;

/**
 * Makes the changes of a book, each whole and each recorded, tells of them, and takes them back.
 */
public final class Changes {
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
  <T> T make(Deed what, Supplier<T> body) {
    copyOncePerDay();
    return store.atomically(() -> recorded(what, Optional.empty(), body));
  }

  /** The same for a body that answers nothing. */
  void make(Deed what, Runnable body) {
    make(
        what,
        () -> {
          body.run();
          return what;
        });
  }

  /** A change, and the words for it. */
  record Decided<T>(Deed what, Supplier<T> body) {}

  /** The same where what the book holds decides which change it is. */
  <T> T make(Supplier<Decided<T>> decision) {
    copyOncePerDay();
    return store.atomically(
        () -> {
          Decided<T> decided = decision.get();
          return recorded(decided.what(), Optional.empty(), decided.body());
        });
  }

  private <T> T recorded(Deed what, Optional<Long> undoes, Supplier<T> body) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    long change =
        store.number(
            "change-begin",
            now,
            Text.clean(what.words()),
            undoes,
            what.act().key(),
            what.subject().key(),
            what.target().isEmpty() ? Optional.empty() : Optional.of(Text.clean(what.target())));
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

  /** What went wrong beside the last change, such as a daily copy that could not be made. */
  public Optional<String> warning() {
    return Optional.of(warning).filter(text -> !text.isEmpty());
  }

  /** A number that differs from an earlier one once anything was changed, by whatever program. */
  public long newest() {
    return store.number("newest-change");
  }

  /** The newest changes, newest first, undos among them. */
  public List<Change> history(int limit) {
    return store.list("history", Changes::read, limit);
  }

  private static Change read(ResultSet row) throws SQLException {
    return new Change(
        row.getLong("id"),
        Instant.parse(row.getString("at")),
        new Deed(
            word(row, "act", Deed.Act.values(), Deed.Act::key),
            word(row, "subject", Deed.Subject.values(), Deed.Subject::key),
            Row.optional(row, "target").orElse(""),
            row.getString("what")),
        row.getBoolean("undone"),
        Row.optional(row, "undoes").map(Long::valueOf));
  }

  private static <E> E word(ResultSet row, String column, E[] all, Function<E, String> key)
      throws SQLException {
    String stored = row.getString(column);
    return Arrays.stream(all)
        .filter(one -> key.apply(one).equals(stored))
        .findFirst()
        .orElseThrow();
  }

  /** How many rows the last change that still stands has written: what an undo has to take back. */
  public long rowsToTakeBack() {
    return store.number("rows-to-take-back");
  }

  /**
   * Takes back the last change that still stands and is not itself an undo, so that repeated undo
   * walks back.
   *
   * @return the change that was taken back; empty when there is none
   */
  public Optional<Change> undo() {
    return undo(row -> {});
  }

  /**
   * The same for a change that may be a long one.
   *
   * @param done is told of each row; {@link #rowsToTakeBack} tells how many there are
   */
  public Optional<Change> undo(LongConsumer done) {
    copyOncePerDay();
    return store.atomically(
        () -> {
          Optional<Change> last = store.first("change-to-undo", Changes::read);
          last.ifPresent(change -> takeBack(change, done));
          return last;
        });
  }

  private void takeBack(Change change, LongConsumer done) {
    recorded(
        new Deed(
            change.deed().act(),
            change.deed().subject(),
            change.deed().target(),
            "Took back: " + change.what()),
        Optional.of(change.id()),
        () -> {
          restore(change, done);
          return change;
        });
  }

  /** An import may have written a million rows: they are read one by one. */
  private void restore(Change change, LongConsumer done) {
    try (Cursor steps = store.cursor("change-rows-backwards", change.id());
        Batches batches = new Batches(store)) {
      while (steps.next()) {
        String step = steps.told(row -> row.getString("step"));
        String image = steps.told(row -> row.getString("image"));
        batches.of("restore-" + step).run(image);
        done.accept(1);
      }
    }
  }
}
