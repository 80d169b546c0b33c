package motebook.model;

/**
 * Something a person asked for that cannot be done as asked; nothing was written.
 *
 * <p>The message is one or more plain sentences that say what was wrong, where, and what would be
 * right. It is shown as it stands, so it never holds a stack trace or a class name.
 */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int from;
  private final int to;

  public Refusal(String message) {
    this(message, -1, -1);
  }

  /**
   * A refusal that points into the text it is about.
   *
   * @param from index of the first character at fault, or −1 where none is
   * @param to index after the last character at fault
   */
  public Refusal(String message, int from, int to) {
    super(message);
    this.from = from;
    this.to = to;
  }

  /** Index of the first character at fault in the line, or −1 where the whole is meant. */
  public int from() {
    return from;
  }

  /** Index after the last character at fault in the line, or −1 where the whole is meant. */
  public int to() {
    return to;
  }
}
