package motebook.entry;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as a person writes it: {@code 9:15}, {@code 9.15}, {@code 14h30}, {@code 9am},
 * {@code 2:30pm}. A bare number is none, since 3 may be early or late.
 */
final class Clock {
  /** The groups of a time of day: hour, minute, a or p. */
  static final String TIME = "(\\d{1,2})(?:[:.h](\\d{2}))?(?: *([ap])\\.?m\\.?)?";

  private static final Pattern ALONE =
      Pattern.compile(TIME + Durations.END, Pattern.CASE_INSENSITIVE);

  private Clock() {}

  /**
   * A time found in a line.
   *
   * @param time the time of day
   * @param to index of the word after it
   */
  record Found(LocalTime time, int to) {}

  static Optional<Found> at(Line line, int index) {
    if (line.is(index, "noon") || line.is(index, "midday")) {
      return Optional.of(new Found(LocalTime.NOON, index + 1));
    }
    Matcher match = line.matcherAt(ALONE, index);
    if (!match.lookingAt() || bareHour(match, 1)) {
      return Optional.empty();
    }
    OptionalInt minute = minuteOfDay(match, 1);
    return minute.isPresent()
        ? Optional.of(new Found(time(minute.getAsInt()), line.wordAfter(match.end())))
        : Optional.empty();
  }

  /** A time that says which half of the day it is in, and so can be nothing else. */
  static Optional<Found> withHalf(Line line, int index) {
    Matcher match = line.matcherAt(ALONE, index);
    return match.lookingAt() && match.group(3) != null ? at(line, index) : Optional.empty();
  }

  static LocalTime time(int minuteOfDay) {
    return LocalTime.of(minuteOfDay / 60, minuteOfDay % 60);
  }

  /** Whether the time whose groups start here is an hour and nothing else. */
  static boolean bareHour(Matcher match, int group) {
    return match.group(group + 1) == null && match.group(group + 2) == null;
  }

  /** Minute of the day, 0 to 1439, of the time whose groups start here; empty if there is none. */
  static OptionalInt minuteOfDay(Matcher match, int group) {
    return minuteOfDay(match, group, match.group(group + 2));
  }

  /** The same, with a half of the day said elsewhere; null where none was. */
  static OptionalInt minuteOfDay(Matcher match, int group, String half) {
    int hour = Integer.parseInt(match.group(group));
    int minute = match.group(group + 1) == null ? 0 : Integer.parseInt(match.group(group + 1));
    boolean known = half == null ? hour < 24 : hour >= 1 && hour <= 12;
    return known && minute < 60
        ? OptionalInt.of(60 * hourOfDay(hour, half) + minute)
        : OptionalInt.empty();
  }

  private static int hourOfDay(int hour, String half) {
    if (half == null) {
      return hour;
    }
    return hour % 12 + (half.toLowerCase(Locale.ROOT).equals("p") ? 12 : 0);
  }
}
