package motebook.entry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;

/**
 * Moments as instruments write them: {@code 2026-03-02 09:00:05}, {@code 2026-03-02T09:00:05.5},
 * {@code 02.03.2026 09:00}, {@code 9:00:05 PM}. A date with slashes is read only with the year
 * first: 02/03 is March to one and February to another.
 */
final class Stamps {
  private final Optional<LocalDate> day;
  private String lastDate = "";
  private LocalDate parsed = LocalDate.MIN;

  /**
   * Reads moments.
   *
   * @param day what times without a date are of
   */
  Stamps(Optional<LocalDate> day) {
    this.day = day;
  }

  /** A moment; empty where the text is none. */
  Optional<LocalDateTime> read(String text) {
    String moment = text.strip();
    int gap = Math.max(moment.indexOf('T'), moment.indexOf(' '));
    boolean dated = gap > 0 && moment.charAt(gap - 1) != ':' && isDate(moment.substring(0, gap));
    try {
      Optional<LocalDate> date = dated ? Optional.of(date(moment.substring(0, gap))) : day;
      LocalTime time = time(dated ? moment.substring(gap + 1) : moment);
      return date.map(on -> on.atTime(time));
    } catch (DateTimeException | NumberFormatException none) {
      return Optional.empty();
    }
  }

  private static boolean isDate(String text) {
    return text.indexOf(':') < 0;
  }

  private LocalDate date(String text) {
    if (!text.equals(lastDate)) {
      String[] parts = text.split("[-./]", -1);
      boolean yearFirst = parts[0].length() == 4;
      if (parts.length != 3 || !(yearFirst || text.indexOf('.') > 0)) {
        throw new DateTimeException(text);
      }
      parsed =
          LocalDate.of(
              number(parts[yearFirst ? 0 : 2]), number(parts[1]), number(parts[yearFirst ? 2 : 0]));
      lastDate = text;
    }
    return parsed;
  }

  private static LocalTime time(String text) {
    String clock = text.strip();
    boolean afternoon = clock.toUpperCase(Locale.ROOT).endsWith("PM");
    boolean halves = afternoon || clock.toUpperCase(Locale.ROOT).endsWith("AM");
    String[] parts =
        (halves ? clock.substring(0, clock.length() - 2).strip() : clock).split(":", -1);
    if (parts.length < 2 || parts.length > 3) {
      throw new DateTimeException(text);
    }
    int hour = number(parts[0]);
    if (halves) {
      hour = hour % 12 + (afternoon ? 12 : 0);
    }
    double seconds = parts.length == 3 ? Double.parseDouble(parts[2]) : 0;
    int whole = (int) seconds;
    return LocalTime.of(hour, number(parts[1]), whole, (int) Math.round((seconds - whole) * 1e9));
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
