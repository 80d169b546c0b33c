package motebook.science;

/**
 * How much one source changes with each part that bears on it, in the order of the parts' places.
 *
 * @param common places of the parts that all groups share
 * @param byCommon how much with each of them
 * @param own places of the parts that its group has alone
 * @param byOwn how much with each of them
 */
@SuppressWarnings("ArrayRecordComponent") // small, never compared, written once
record Slope(int[] common, double[] byCommon, int[] own, double[] byOwn) {
  private static final int[] NOWHERE = {};
  private static final double[] NOTHING = {};

  /** Of one part alone. */
  static Slope ofCommon(int place, double by) {
    return new Slope(new int[] {place}, new double[] {by}, NOWHERE, NOTHING);
  }

  /** Of one part of a group alone. */
  static Slope ofOwn(int place, double by) {
    return new Slope(NOWHERE, NOTHING, new int[] {place}, new double[] {by});
  }

  /** How much with each of all common parts. */
  double[] onCommon(int parts) {
    return row(common, byCommon, parts);
  }

  /** How much with each of all parts of its group. */
  double[] onOwn(int parts) {
    return row(own, byOwn, parts);
  }

  private static double[] row(int[] places, double[] by, int parts) {
    double[] row = new double[parts];
    for (int i = 0; i < places.length; i++) {
      row[places[i]] = by[i];
    }
    return row;
  }
}
