package motebook.screen;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import motebook.journal.Book;

/** Opens the screens on a book, for trying them out by hand. */
final class TryOut {
  private TryOut() {}

  /** Takes the file of the book. */
  public static void main(String[] args) {
    Clock clock = Clock.system(ZoneId.systemDefault());
    int code;
    try (Book book = Book.open(Path.of(args[0]), clock)) {
      code = Screen.run(book, clock, Options.from(System.getenv(), Options.Colour.AUTO));
    }
    System.exit(code);
  }
}
