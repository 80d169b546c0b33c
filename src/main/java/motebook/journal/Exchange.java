package motebook.journal;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import motebook.journal.Deed.Subject;
import motebook.model.Refusal;

/** The whole book out, and in again: what goes out of one book makes another one the same. */
public final class Exchange {
  /** What a fresh book holds, in the order in which it can go. */
  private static final List<String> CLEARING =
      List.of(
          "clear-settings",
          "clear-preferences",
          "clear-place-figures",
          "clear-places",
          "clear-people");

  private final Store store;
  private final Changes changes;

  Exchange(Store store, Changes changes) {
    this.store = store;
    this.changes = changes;
  }

  /** Takes what comes out of a book. */
  public interface Sink {
    /** The rows of this kind follow. */
    void begin(Kind kind);

    /**
     * A row: for each column its value as {@link Form} tells, null where it is empty, or a list of
     * items, each a list of values.
     */
    void row(List<Object> values);
  }

  /** Takes what goes into a book. */
  public interface Receiver {
    /**
     * A row, as {@link Sink#row} has it.
     *
     * @param where file and line, for complaints
     */
    void row(Kind kind, String where, List<Object> values);

    /**
     * Something in it is wrong.
     *
     * @param where file and line, and the column if it is known
     * @param what a sentence
     */
    void wrong(String where, String what);
  }

  /** How many rows there are to put out. */
  public long rows() {
    return store.number("rows-to-export");
  }

  /**
   * Puts out everything on record but the history of changes, as of one moment and always in the
   * same order.
   *
   * @param done is told of each row
   */
  public void writeTo(Sink sink, LongConsumer done) {
    store.reading(() -> BookForm.kinds().forEach(kind -> write(kind, sink, done)));
  }

  private void write(Kind kind, Sink sink, LongConsumer done) {
    sink.begin(kind);
    try (Outgoing rows = new Outgoing(store, kind)) {
      while (rows.next()) {
        sink.row(rows.values());
        done.accept(1);
      }
    }
  }

  /**
   * Fills a fresh book with what came out of another one, as one change: whole, or not at all. Its
   * people, places and settings give way to those that come in.
   *
   * @param source hands its rows to the receiver, in the order of {@link BookForm#kinds}
   * @param what the change in words, for the history
   * @return how many rows came in
   * @throws Refusal if the book is no longer fresh, or anything of what comes in is wrong; each
   *     complaint with its place, the first twenty
   */
  public long takeIn(Consumer<Receiver> source, String what) {
    store.run("roomy-cache");
    return changes.make(
        Deed.added(Subject.BOOK, "", what),
        () -> {
          refuseUsed();
          CLEARING.forEach(store::run);
          try (Incoming incoming = new Incoming(store)) {
            source.accept(incoming);
            incoming.finish();
            return incoming.rows();
          }
        });
  }

  private void refuseUsed() {
    List<String> held = store.list("in-the-way", Row::text);
    if (!held.isEmpty()) {
      throw new Refusal(
          "The book "
              + store.file()
              + " is in use already: it holds "
              + String.join(", ", held)
              + ". A whole book goes into a fresh one only; name one with --book FILE.");
    }
  }
}
