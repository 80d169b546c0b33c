package motebook.model;

/** The guards that the records of this package check themselves with. */
final class Checks {
  private Checks() {}

  /**
   * @throws Refusal unless {@code low <= value <= high}; NaN never is
   */
  static void within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw new Refusal(
          "The "
              + what
              + " must lie between "
              + plain(low)
              + " and "
              + plain(high)
              + " "
              + unit
              + ": got "
              + plain(value)
              + ".");
    }
  }

  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
