package motebook.model;

/** A time of day as the minutes since midnight, 0 to 1440; the last one is the day's end. */
public final class MinuteOfDay {
  private static final int HOUR = 60;

  private MinuteOfDay() {}

  /** With two digits each: {@code 09:15}; the end of the day is {@code 24:00}. */
  public static String told(int minute) {
    return twoDigits(minute / HOUR) + ":" + twoDigits(minute % HOUR);
  }

  private static String twoDigits(int number) {
    return (number < 10 ? "0" : "") + number;
  }
}
