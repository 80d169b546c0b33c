package motebook.reference;

/**
 * A figure with the range that the sources leave it.
 *
 * @param typical the middle, used in every reckoning
 * @param low lower end of the range (about the 5th percentile)
 * @param high upper end of the range (about the 95th percentile)
 */
public record Figure(double typical, double low, double high) {
  /** A figure without any doubt about it. */
  public static Figure exactly(double value) {
    return new Figure(value, value, value);
  }
}
