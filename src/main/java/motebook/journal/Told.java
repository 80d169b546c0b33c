package motebook.journal;

import java.time.LocalTime;
import motebook.model.Work;

/** Work in words, for messages and for the history. */
final class Told {
  private static final int HOUR = 60;

  private Told() {}

  /** As in "2026-03-02 09:00 to 10:00 orbital sanding of oak by me in shop". */
  static String whole(Work work) {
    return stretch(work) + " by " + work.person() + " in " + work.place();
  }

  /** As in "2026-03-02 09:00 to 10:00 orbital sanding of oak". */
  static String stretch(Work work) {
    String material = work.material().map(key -> " of " + spaced(key)).orElse("");
    return work.date()
        + " "
        + minute(work.startMinute())
        + " to "
        + minute(work.endMinute())
        + " "
        + spaced(work.operation())
        + material;
  }

  /** A minute of the day as a time; the last one is 24:00. */
  static String minute(int minute) {
    return minute == 24 * HOUR ? "24:00" : LocalTime.of(minute / HOUR, minute % HOUR).toString();
  }

  private static String spaced(String key) {
    return key.replace('-', ' ');
  }
}
