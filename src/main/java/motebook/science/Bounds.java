package motebook.science;

/**
 * A lower and an upper bound of something over a time.
 *
 * @param low not above any value
 * @param high not below any value
 */
record Bounds(double low, double high) {
  /** Of nothing. */
  static final Bounds NONE = new Bounds(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

  static final Bounds ZERO = new Bounds(0, 0);

  /** Of either. */
  Bounds hull(Bounds other) {
    return new Bounds(Math.min(low, other.low), Math.max(high, other.high));
  }

  /** Of the sum of both. */
  Bounds plus(Bounds other) {
    return new Bounds(low + other.low, high + other.high);
  }

  /** Of a multiple, by a factor ≥ 0. */
  Bounds times(double factor) {
    return new Bounds(low * factor, high * factor);
  }
}
