package motebook.science;

/** The two kinds of airborne wood dust that the air model follows; inhalable is their sum. */
public enum Dust {
  /**
   * Inhalable but not respirable. Settles at 5.2 /h, the figure for particles above 10 µm with the
   * fan off.
   */
  COARSE(5.2),
  /**
   * Respirable. Settles at 0.3 /h, the figure for 0.3 to 0.5 µm, kept for all respirable dust on
   * the cautious side.
   */
  FINE(0.3);

  // Howard-Reed, Wallace, Emmerich 2003, Atmos Environ, abstract.
  private final double settlingPerHour;

  Dust(double settlingPerHour) {
    this.settlingPerHour = settlingPerHour;
  }

  /** Loss by settling indoors, per hour. */
  public double settlingPerHour() {
    return settlingPerHour;
  }
}
