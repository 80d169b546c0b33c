package motebook.science;

/**
 * Lower limits for longer working times, after Brief and Scala.
 *
 * <p>The factors hold against the mean over the hours worked. Against an 8-hour TWA, whose divisor
 * is 8 already, only the part for the shorter recovery is left to apply; never both.
 */
public final class LongShift {
  private LongShift() {}

  /**
   * Daily factor {@code (8/h)·(24−h)/16} on a limit held against the mean of the h hours worked, at
   * most 1. Read second-hand.
   *
   * @param hours worked in the day, above 0, below 24
   */
  public static double dailyFactor(double hours) {
    return Math.min(1, 8 / hours * (24 - hours) / 16);
  }

  /**
   * Weekly factor {@code (40/h)·(168−h)/128}, likewise. From memory.
   *
   * @param hours worked in the week, above 0, below 168
   */
  public static double weeklyFactor(double hours) {
    return Math.min(1, 40 / hours * (168 - hours) / 128);
  }

  /**
   * What is left of the daily factor for an 8-hour TWA, whose divisor is 8 already: {@code
   * (24−h)/16}, at most 1.
   *
   * @param hours worked in the day, 0 to 24
   */
  public static double factorForTwa(double hours) {
    return Math.min(1, (24 - hours) / 16);
  }
}
