package motebook.journal;

import motebook.model.MinuteOfDay;
import motebook.model.Work;

/** Work in words, for messages and for the history. */
final class Told {
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
        + MinuteOfDay.told(work.startMinute())
        + " to "
        + MinuteOfDay.told(work.endMinute())
        + " "
        + spaced(work.operation())
        + material;
  }

  private static String spaced(String key) {
    return key.replace('-', ' ');
  }
}
