package motebook.screen.state;

/** What the keys act on. */
public enum Focus {
  /** The day. */
  DAY,
  /** The line that is being typed. */
  LINE,
  /** A question. */
  QUESTION,
  /** The cautions and remarks of the day in full. */
  NOTES,
  /** The list of keys. */
  HELP
}
