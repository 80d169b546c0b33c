package motebook.screen.state;

/** The page that is shown, or what is filled in. */
public enum Focus {
  /** The day. */
  DAY,
  /** The week. */
  WEEK,
  /** A session, or the settings, by fields. */
  FORM,
  /** A short question that is answered by typing. */
  PROMPT,
  /** The lines that are said often. */
  FAVOURITES,
  /** The sessions that were found. */
  FOUND,
  /** Masks and filters. */
  CARE,
  /** What measurements taught. */
  EVIDENCE,
  /** What some work would bring. */
  PLAN,
  /** The cautions and remarks of the day in full. */
  NOTES,
  /** The list of keys. */
  HELP,
  /** The words that a line understands. */
  WORDS;

  /** Whether it is a page of text that lies over something else. */
  boolean isPage() {
    return this == NOTES || this == HELP || this == WORDS;
  }

  /** Whether it has fields of its own into which what is typed goes. */
  public boolean isFilledIn() {
    return this == FORM || this == PROMPT;
  }

  /** Whether the escape key leaves it for what lies under it, whether the line is open or not. */
  boolean liesOver() {
    return isPage() || this == FAVOURITES || this == FOUND;
  }
}
