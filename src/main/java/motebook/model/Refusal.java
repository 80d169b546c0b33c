package motebook.model;

import java.util.Optional;

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
  private final transient Optional<Action> next;

  public Refusal(String message) {
    this(message, -1, -1);
  }

  /** A refusal with what a person may do about it. */
  public Refusal(String message, Action next) {
    this(message, -1, -1, Optional.of(next));
  }

  /**
   * A refusal that points into the text it is about.
   *
   * @param from index of the first character at fault, or −1 where none is
   * @param to index after the last character at fault
   */
  public Refusal(String message, int from, int to) {
    this(message, from, to, Optional.empty());
  }

  private Refusal(String message, int from, int to, Optional<Action> next) {
    super(message);
    this.from = from;
    this.to = to;
    this.next = next;
  }

  /** The same, pointing elsewhere; −1 twice for the whole. */
  public Refusal at(int first, int end) {
    return new Refusal(getMessage(), first, end, next);
  }

  /** The same with what a person may do about it. */
  public Refusal with(Action what) {
    return new Refusal(getMessage(), from, to, Optional.of(what));
  }

  /** The same of a part of what was asked for, such as one line of several. */
  public Refusal within(String part) {
    return new Refusal(part + getMessage(), -1, -1, next);
  }

  /** What a person may do about it, if one thing stands out. */
  public Optional<Action> next() {
    return next;
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
