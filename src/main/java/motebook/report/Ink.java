package motebook.report;

/** Emphasis for a terminal; a reader without it loses nothing. */
public enum Ink {
  /** No emphasis: pipes, files, NO_COLOR. */
  PLAIN("", "", ""),
  /** Bold headline and underlined warning, in the terminal's own colours. */
  BOLD("\u001b[1m", "\u001b[4m", "\u001b[0m");

  private final String headline;
  private final String warning;
  private final String off;

  Ink(String headline, String warning, String off) {
    this.headline = headline;
    this.warning = warning;
    this.off = off;
  }

  /** The figure that a reader looks for first. */
  public String headline(String text) {
    return headline + text + off;
  }

  /** What a reader must not miss. */
  public String warning(String text) {
    return warning + text + off;
  }
}
