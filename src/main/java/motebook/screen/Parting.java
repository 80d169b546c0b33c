package motebook.screen;

import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.model.Stopwatch;

/** What is said when the screens are left. */
final class Parting {
  private Parting() {}

  /** That stopwatches run on without the screens; empty where none does. */
  static Optional<String> words(Book book) {
    List<String> running =
        book.stopwatches().all().stream()
            .filter(Stopwatch::running)
            .map(watch -> watch.person() + ", " + watch.line())
            .toList();
    return running.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The stopwatch goes on; it is in the book (" + String.join("; ", running) + ").");
  }
}
