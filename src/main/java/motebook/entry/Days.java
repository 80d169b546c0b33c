package motebook.entry;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A date as a person writes it: {@code 2026-03-02}, today, yesterday, or a weekday, which is the
 * most recent one, today included.
 */
public final class Days {
  static final String TODAY = "today";
  static final String YESTERDAY = "yesterday";

  private static final Pattern ISO =
      Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})" + Durations.END);
  private static final int SHORTEST_WEEKDAY = 3;

  private Days() {}

  /**
   * A date found in a line.
   *
   * @param date the date
   * @param to index of the word after it
   */
  record Found(LocalDate date, int to) {}

  /**
   * Reads a whole text as a date.
   *
   * @param today what today and the weekdays are counted from
   * @return empty where it is none
   */
  public static Optional<LocalDate> parse(String text, LocalDate today) {
    Line line = Line.of(text);
    return at(line, 0, today)
        .filter(found -> found.to() == line.size() && !line.hasNote())
        .map(Found::date);
  }

  static Optional<Found> at(Line line, int index, LocalDate today) {
    if (index >= line.size()) {
      return Optional.empty();
    }
    Matcher iso = line.matcherAt(ISO, index);
    return iso.lookingAt()
        ? date(iso).map(date -> new Found(date, line.wordAfter(iso.end())))
        : byWord(line.token(index).word(), today).map(date -> new Found(date, index + 1));
  }

  private static Optional<LocalDate> date(Matcher iso) {
    try {
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(iso.group(1)),
              Integer.parseInt(iso.group(2)),
              Integer.parseInt(iso.group(3))));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDate> byWord(String word, LocalDate today) {
    return switch (word) {
      case TODAY -> Optional.of(today);
      case YESTERDAY -> Optional.of(today.minusDays(1));
      default -> weekday(word).map(day -> today.with(TemporalAdjusters.previousOrSame(day)));
    };
  }

  private static Optional<DayOfWeek> weekday(String word) {
    return Arrays.stream(DayOfWeek.values())
        .filter(day -> word.length() >= SHORTEST_WEEKDAY && name(day).startsWith(word))
        .findFirst();
  }

  private static String name(DayOfWeek day) {
    return day.name().toLowerCase(Locale.ROOT);
  }

  /** Every word that names a day. */
  static List<String> words() {
    return Stream.concat(
            Stream.of(YESTERDAY, TODAY), Arrays.stream(DayOfWeek.values()).map(Days::name))
        .toList();
  }
}
