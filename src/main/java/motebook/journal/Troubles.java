package motebook.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;

/** The one place where an error of the database or of the disk becomes a plain sentence. */
final class Troubles {
  private static final int PRIMARY_CODE = 0xff;

  private Troubles() {}

  /** A {@link BookTrouble} where the file is at fault, an IllegalStateException where we are. */
  static RuntimeException of(Path file, SQLException e) {
    String sentence = isMalformedImage(e) ? damaged(file) : sentence(file, code(e));
    return sentence.isEmpty()
        ? new IllegalStateException(e.getMessage(), e)
        : new BookTrouble(sentence, e);
  }

  /** All JSON of a book is its own: what cannot be read of it was damaged. */
  private static boolean isMalformedImage(SQLException e) {
    return code(e) == SQLiteErrorCode.SQLITE_ERROR
        && String.valueOf(e.getMessage()).contains("malformed JSON");
  }

  private static SQLiteErrorCode code(SQLException e) {
    return SQLiteErrorCode.getErrorCode(e.getErrorCode() & PRIMARY_CODE);
  }

  /** Whether waiting may help: another connection holds the file. */
  static boolean passes(BookTrouble trouble) {
    return trouble.getCause() instanceof SQLException e && code(e) == SQLiteErrorCode.SQLITE_BUSY;
  }

  /** Whether a disk has no room left. */
  static boolean isFull(BookTrouble trouble) {
    return trouble.getCause() instanceof SQLException e && code(e) == SQLiteErrorCode.SQLITE_FULL;
  }

  /** Whether the file itself is at fault, so that a copy must take its place. */
  static boolean isDamage(BookTrouble trouble) {
    return trouble.getCause() instanceof SQLException e
        && switch (code(e)) {
          case SQLITE_NOTADB, SQLITE_CORRUPT, SQLITE_FORMAT -> true;
          default -> false;
        };
  }

  private static String sentence(Path file, SQLiteErrorCode code) {
    return switch (code) {
      case SQLITE_BUSY, SQLITE_LOCKED, SQLITE_PROTOCOL -> locked(file);
      case SQLITE_NOTADB -> foreign(file);
      case SQLITE_CORRUPT, SQLITE_FORMAT -> damaged(file);
      case SQLITE_FULL -> full(file);
      case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> readOnly(file);
      case SQLITE_CANTOPEN -> closed(file);
      case SQLITE_IOERR -> unreadable(file);
      default -> "";
    };
  }

  static String inUse(Path file) {
    return locked(file);
  }

  private static String locked(Path file) {
    return "The book "
        + file
        + " is in use by another program that does not let go of it. Close that program, or wait"
        + " and try again.";
  }

  static String foreign(Path file) {
    return "The file "
        + file
        + " is not a Motebook book. Choose another file, or move this one away to begin a new book"
        + " there.";
  }

  static String damaged(Path file) {
    Path copies = Copies.folder(file);
    String remedy =
        Files.isDirectory(copies)
            ? "go on with the newest copy in " + copies
            : "go on with a copy of your own; there is none beside it";
    return "The book " + file + " is damaged. Keep the file, and " + remedy + ".";
  }

  static String full(Path file) {
    return "The disk that holds the book "
        + file
        + " is full; nothing was written. Make room on it and try again.";
  }

  private static String readOnly(Path file) {
    return "The book "
        + file
        + " may not be written. Make the file and its folder writable for yourself.";
  }

  private static String closed(Path file) {
    return "The book "
        + file
        + " cannot be opened. See that the file and its folder may be read and written.";
  }

  private static String unreadable(Path file) {
    return "The disk failed while the book "
        + file
        + " was read or written; nothing was written. Check the disk, then the book.";
  }

  /**
   * An error of the file system.
   *
   * @param what the sentence that says what could not be done, without its full stop
   */
  static BookTrouble of(String what, IOException e) {
    return new BookTrouble(what + ": " + reason(e) + ".", e);
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "it may not be read or written; change its permissions";
    }
    if (e instanceof FileSystemException f && f.getReason() != null) {
      return f.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
