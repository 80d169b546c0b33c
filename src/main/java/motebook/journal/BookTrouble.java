package motebook.journal;

/**
 * The book cannot be used: unreadable, damaged, foreign, newer than the program, locked, or its
 * disk is full.
 *
 * <p>The message is one or more plain sentences that name the file and say what to do. Whatever was
 * being written when it was thrown has not been written at all.
 */
public final class BookTrouble extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A trouble that has no cause beneath it. */
  public BookTrouble(String message) {
    super(message);
  }

  /** A trouble together with what raised it, for the log of a developer. */
  public BookTrouble(String message, Throwable cause) {
    super(message, cause);
  }
}
