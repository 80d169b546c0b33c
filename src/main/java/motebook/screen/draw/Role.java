package motebook.screen.draw;

/** What a character on the screen is there for; the adapter decides how it looks. */
public enum Role {
  PLAIN,
  TITLE,
  QUIET,
  FINE,
  COARSE,
  BREATHED,
  LIMIT,
  NOW,
  OWN,
  OTHER,
  MASK,
  FIGURE,
  KEY,
  CHOSEN,
  WARNING,
  WRONG,
  DONE,
  TYPED,
  OFFERED
}
