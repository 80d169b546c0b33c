package motebook.screen.state;

/** What the keys act on. */
public enum Focus {
  /** The day. */
  DAY,
  /** The week. */
  WEEK,
  /** The line that is being typed. */
  LINE,
  /** A session, or the settings, by fields. */
  FORM,
  /** A short question that is answered by typing. */
  PROMPT,
  /** A question that is answered by yes or no. */
  QUESTION,
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
}
