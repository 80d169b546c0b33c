package motebook.screen;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import motebook.journal.Book;

/** A book that is being opened on a thread of its own, while others go on. */
final class ComingBook implements AutoCloseable {
  private final Path file;
  private final CompletableFuture<Book> opening;

  private ComingBook(Path file, CompletableFuture<Book> opening) {
    this.file = file;
    this.opening = opening;
  }

  /** Begins to open a book. */
  static ComingBook opening(Path given, Clock clock) {
    Path file = given.toAbsolutePath().normalize();
    return new ComingBook(
        file, CompletableFuture.supplyAsync(() -> Book.open(file, clock), ComingBook::begin));
  }

  private static void begin(Runnable work) {
    Thread thread = new Thread(work, "opening");
    thread.setDaemon(true);
    thread.start();
  }

  /** The file of the book, whether it is open yet or not, as an absolute path. */
  Path file() {
    return file;
  }

  /**
   * The book; waits until it is open.
   *
   * @throws motebook.journal.BookTrouble if the file cannot be used as a book
   */
  Book get() {
    try {
      return opening.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException trouble) {
        throw trouble;
      }
      throw e;
    }
  }

  /** Closes the book once it is open; one that could not be opened needs no closing. */
  @Override
  public void close() {
    opening.handle((book, trouble) -> Optional.ofNullable(book)).join().ifPresent(Book::close);
  }
}
