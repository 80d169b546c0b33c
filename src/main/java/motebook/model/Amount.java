package motebook.model;

/**
 * How much of a finish was used.
 *
 * @param finish key of the finish
 * @param millilitres 0.1 to 100,000 mL, kept to the millionth
 */
public record Amount(String finish, double millilitres) {
  private static final double PARTS = 1e6;

  public Amount {
    if (finish.isBlank()) {
      throw new IllegalArgumentException("an amount of nothing");
    }
    Checks.within("amount of a finish", millilitres, 0.1, 100_000, "ml");
    millilitres = kept(millilitres);
  }

  /** A number of millilitres as an amount keeps it. */
  public static double kept(double millilitres) {
    return Math.rint(millilitres * PARTS) / PARTS;
  }
}
