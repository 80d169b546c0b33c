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

  /** Adds some share of it to two rows with a place for each part. */
  void addTo(double[] commonRow, double[] ownRow, double share) {
    for (int i = 0; i < common.length; i++) {
      commonRow[common[i]] += share * byCommon[i];
    }
    for (int i = 0; i < own.length; i++) {
      ownRow[own[i]] += share * byOwn[i];
    }
  }

  /** What both have of a group's own parts, {@code Σ oᵢ·oⱼ}. */
  double ownDot(Slope other) {
    double sum = 0;
    for (int i = 0; i < own.length; i++) {
      for (int j = 0; j < other.own.length; j++) {
        sum += own[i] == other.own[j] ? byOwn[i] * other.byOwn[j] : 0;
      }
    }
    return sum;
  }
}
