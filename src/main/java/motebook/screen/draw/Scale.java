package motebook.screen.draw;

/**
 * Places concentrations on a logarithmic scale: equal steps are equal factors.
 *
 * @param low mg/m³ at the lower end, above 0
 * @param high mg/m³ at the upper end, above the lower
 */
record Scale(double low, double high) {
  private static final double DECADES = 3;
  private static final double USUAL_TOP = Math.pow(10, 1.5);

  /** Three powers of ten that hold the highest value; about 0.03 to 30 mg/m³ as long as they do. */
  static Scale holding(double highest) {
    double top = USUAL_TOP;
    while (top < highest) {
      top *= 10;
    }
    return new Scale(top / Math.pow(10, DECADES), top);
  }

  /** Where a value lies, 0 at the lower end and 1 at the upper; beyond is held at the ends. */
  double place(double mgPerM3) {
    if (mgPerM3 <= low) {
      return 0;
    }
    return Math.min(1, Math.log(mgPerM3 / low) / Math.log(high / low));
  }

  /** The value at a place. */
  double value(double place) {
    return low * Math.pow(high / low, place);
  }
}
