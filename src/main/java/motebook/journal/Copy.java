package motebook.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.OptionalLong;

/**
 * A copy of a book in the folder beside it.
 *
 * @param file where it is
 * @param day on which it was made
 * @param kind why it is kept
 * @param bytes how big it is
 * @param sessions how many it holds; empty where it cannot be read as a book
 */
public record Copy(Path file, LocalDate day, Kind kind, long bytes, OptionalLong sessions) {

  /** Why a copy is kept. */
  public enum Kind {
    /** One of the newest seven days. */
    DAILY("daily"),
    /** The newest of its week. */
    WEEKLY("weekly"),
    /** The newest of its month. */
    MONTHLY("monthly"),
    /** From before the book took on another form. */
    BEFORE_MIGRATION("before-migration"),
    /** From before another copy took the book's place. */
    BEFORE_RESTORE("before-restore"),
    /** A damaged book, as it was found when a copy took its place. */
    DAMAGED("damaged"),
    /** Made when the owner asked for it. */
    ASKED_FOR("asked-for");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word for it. */
    public String word() {
      return word;
    }
  }
}
