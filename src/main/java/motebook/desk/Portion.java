package motebook.desk;

/**
 * An amount of dust breathed, or a concentration, in its two kinds.
 *
 * @param coarse inhalable but not respirable
 * @param fine respirable
 */
public record Portion(double coarse, double fine) {
  static final Portion NONE = new Portion(0, 0);

  /** Coarse and fine together. */
  public double inhalable() {
    return coarse + fine;
  }

  Portion plus(Portion other) {
    return new Portion(coarse + other.coarse, fine + other.fine);
  }

  Portion times(double factor) {
    return new Portion(coarse * factor, fine * factor);
  }
}
