package motebook.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** The file of a book, before any database looks at it. */
final class BookFile {
  private static final byte[] HEADER = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  // From the file format of SQLite: https://www.sqlite.org/fileformat2.html#the_database_header
  private static final int HEADER_BYTES = 100;
  private static final int WRITE_VERSION_AT = 18;
  private static final int APPLICATION_AT = 68;
  private static final byte LEGACY = 1;

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
    if (!startsAsDatabase(file)) {
      throw new BookTrouble(Troubles.foreign(file));
    }
    return file;
  }

  /** SQLite itself takes any file below 512 bytes for an empty one, and would write over it. */
  private static boolean startsAsDatabase(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(HEADER.length);
      return start.length == 0 || Arrays.equals(start, HEADER);
    } catch (IOException e) {
      throw Troubles.of("The book " + file + " cannot be read", e);
    }
  }

  /** Whether a file is there and begins as every database of SQLite does. */
  static boolean beginsAsDatabase(Path file) {
    return Files.isRegularFile(file) && file.toFile().length() > 0 && startsAsDatabase(file);
  }

  /**
   * Whether a file is a book that no program has opened since it was copied: the header tells, for
   * a book that was opened keeps its newest content in a second file.
   */
  static boolean isCopy(Path file) {
    if (!beginsAsDatabase(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      ByteBuffer header = ByteBuffer.wrap(in.readNBytes(HEADER_BYTES));
      return header.limit() == HEADER_BYTES
          && header.getInt(APPLICATION_AT) == Migrations.APPLICATION
          && header.get(WRITE_VERSION_AT) == LEGACY;
    } catch (IOException e) {
      throw Troubles.of("The file " + file + " cannot be read", e);
    }
  }
}
