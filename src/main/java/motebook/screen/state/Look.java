package motebook.screen.state;

/** The characters that a terminal can show. */
public enum Look {
  /** Blocks, lines and accents. */
  UNICODE,
  /** The printable characters of ASCII alone. */
  ASCII
}
