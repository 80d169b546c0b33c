package motebook.science;

/**
 * What a source gives off over a stretch of time: {@code G·e^(−k(t−from))} mg/min, which is steady
 * where k is 0.
 *
 * @param fromMinute when it begins
 * @param toMinute when it ends, not before
 * @param mgPerMin G ≥ 0, what it gives off at first
 * @param decayPerMin k ≥ 0
 */
public record Release(double fromMinute, double toMinute, double mgPerMin, double decayPerMin) {
  private static final double MINUTES_PER_HOUR = 60;

  public Release {
    if (!(toMinute >= fromMinute) || !(mgPerMin >= 0) || !(decayPerMin >= 0)) {
      throw new IllegalArgumentException(
          "no release: " + fromMinute + ".." + toMinute + ", " + mgPerMin + ", " + decayPerMin);
    }
  }

  /**
   * A mass given off evenly.
   *
   * @param mg ≥ 0
   * @param fromMinute when it begins
   * @param toMinute when it ends, after it began
   */
  public static Release even(double mg, double fromMinute, double toMinute) {
    return new Release(fromMinute, toMinute, mg / (toMinute - fromMinute), 0);
  }

  /**
   * What is given off of a mass that dries at a first-order rate.
   *
   * @param mg there at the start, ≥ 0
   * @param perHour rate of drying, above 0 /h
   * @param fromMinute the start
   * @param toMinute how long it is followed
   */
  public static Release drying(double mg, double perHour, double fromMinute, double toMinute) {
    double perMinute = perHour / MINUTES_PER_HOUR;
    return new Release(fromMinute, toMinute, mg * perMinute, perMinute);
  }

  /** What it gives off at a time within it, mg/min. */
  public double mgPerMinAt(double minute) {
    return mgPerMin * Math.exp(-decayPerMin * (minute - fromMinute));
  }
}
