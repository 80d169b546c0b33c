package motebook.science;

/**
 * A stretch of time over which a room loses one kind of dust at one rate.
 *
 * <p>{@code λ = air changes/h/60 + settling/h/60 + clean-air flow/V}: one well-mixed room with
 * generation, air exchange, deposition and an air cleaner (Institute of Medicine, Clearing the Air,
 * 2000, App. A eq. A1).
 *
 * @param fromMinute first minute
 * @param toMinute the minute after the last, not before the first
 * @param perMinute λ ≥ 0
 */
public record Loss(double fromMinute, double toMinute, double perMinute) {
  public Loss {
    if (!(toMinute >= fromMinute) || !(perMinute >= 0) || !Double.isFinite(perMinute)) {
      throw new IllegalArgumentException(
          "no loss: " + fromMinute + ".." + toMinute + " at " + perMinute);
    }
  }

  /**
   * The loss rate of a room, per minute.
   *
   * @param airChangesPerHour ≥ 0
   * @param settlingPerHour ≥ 0
   * @param cleanFlowM3PerMin clean air blown in by cleaners and fans, ≥ 0
   * @param volumeM3 above 0
   */
  public static double rate(
      double airChangesPerHour, double settlingPerHour, double cleanFlowM3PerMin, double volumeM3) {
    return (airChangesPerHour + settlingPerHour) / 60 + cleanFlowM3PerMin / volumeM3;
  }
}
