package motebook.screen.state;

/**
 * A sentence about what has just happened; it stays until the next key.
 *
 * @param text the sentence; empty for none
 * @param tone how it is meant
 */
public record Notice(String text, Tone tone) {
  /** Nothing to say. */
  public static final Notice NONE = new Notice("", Tone.DONE);

  /** How a notice is meant. */
  public enum Tone {
    DONE,
    ASKED,
    WRONG
  }
}
