package motebook.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The file of a book, before any database looks at it. */
final class BookFile {
  private BookFile() {}

  /**
   * Sees that there is a file that may be read and written; makes an empty one where none is.
   *
   * @throws BookTrouble if it is a folder, may not be used, or cannot be made
   */
  static Path ready(Path given) {
    Path file = given.toAbsolutePath().normalize();
    if (Files.isDirectory(file)) {
      throw new BookTrouble(
          file + " is a folder, not a book. Name a file, such as " + file.resolve("book.db") + ".");
    }
    if (!Files.exists(file)) {
      make(file);
    }
    return usable(file);
  }

  private static void make(Path file) {
    try {
      Folders.make(file.getParent());
      Folders.makeFile(file);
    } catch (IOException e) {
      throw Troubles.of("The book " + file + " cannot be made", e);
    }
  }

  private static Path usable(Path file) {
    if (!Files.isReadable(file) || !Files.isWritable(file)) {
      throw new BookTrouble(
          "The book " + file + " may not be read and written by you. Change its permissions.");
    }
    return file;
  }
}
