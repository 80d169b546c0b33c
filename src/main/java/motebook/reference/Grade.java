package motebook.reference;

/** How sure a figure of the shipped tables is. */
public enum Grade {
  /** Measured by several. */
  A,
  /** Measured once. */
  B,
  /** Back-calculated. */
  C,
  /** Judgement. */
  D;

  /** Whether a figure of this grade is shown as "rough". */
  public boolean rough() {
    return this == C || this == D;
  }
}
