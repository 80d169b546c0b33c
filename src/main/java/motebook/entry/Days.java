package motebook.entry;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import motebook.model.Text;

/**
 * A date as a person writes it: {@code 2026-03-02}, today, yesterday, or a weekday, which is the
 * most recent one, today included; in a line of what is planned also tomorrow, and a weekday is the
 * next one.
 */
public final class Days {
  static final String TODAY = "today";
  static final String YESTERDAY = "yesterday";
  static final String TOMORROW = "tomorrow";

  private static final Pattern ISO =
      Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})" + Durations.END);
  private static final Pattern AGO = Pattern.compile("(\\d{1,3}) (day|week|month|year)s? ago");
  private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\.? ?(\\d{4})?");
  private static final Pattern SLASHED = Pattern.compile("\\d{1,2}/\\d{1,2}(/\\d{2,4})?");
  private static final String LAST = "last ";
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
   * Reads a whole text as a date; besides those of a line also {@code 3 weeks ago}, {@code last
   * tuesday}, {@code 17.11.} and {@code 17.11.2026}.
   *
   * @param today what today and the weekdays are counted from
   * @return empty where it is none
   */
  public static Optional<LocalDate> parse(String text, LocalDate today) {
    Line line = Line.of(text);
    return at(line, 0, today, false)
        .filter(found -> found.to() == line.size() && !line.hasNote())
        .map(Found::date)
        .or(() -> ago(Text.folded(text), today))
        .or(() -> last(Text.folded(text), today))
        .or(() -> dotted(Text.folded(text), today));
  }

  // The day of that name before today: on a Tuesday, last tuesday is a week ago.
  private static Optional<LocalDate> last(String text, LocalDate today) {
    return Optional.of(text)
        .filter(words -> words.startsWith(LAST))
        .flatMap(words -> weekday(words.substring(LAST.length()).strip()))
        .map(day -> today.with(TemporalAdjusters.previous(day)));
  }

  // Without a year it is the latest that has come.
  private static Optional<LocalDate> dotted(String text, LocalDate today) {
    Matcher dotted = DOTTED.matcher(text);
    if (!dotted.matches()) {
      return Optional.empty();
    }
    try {
      boolean whole = dotted.group(3) != null;
      MonthDay day =
          MonthDay.of(Integer.parseInt(dotted.group(2)), Integer.parseInt(dotted.group(1)));
      int year = whole ? Integer.parseInt(dotted.group(3)) : today.getYear();
      Optional<LocalDate> date = Optional.of(year).filter(day::isValidYear).map(day::atYear);
      return whole ? date : date.map(d -> d.isAfter(today) ? d.minusYears(1) : d);
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** Whether a text is a date with slashes, whose day and month could be either way round. */
  public static boolean isAmbiguous(String text) {
    return SLASHED.matcher(text.strip()).matches();
  }

  private static Optional<LocalDate> ago(String text, LocalDate today) {
    Matcher ago = AGO.matcher(text);
    if (!ago.matches()) {
      return Optional.empty();
    }
    long count = Long.parseLong(ago.group(1));
    return Optional.of(
        switch (ago.group(2)) {
          case "day" -> today.minusDays(count);
          case "week" -> today.minusWeeks(count);
          case "month" -> today.minusMonths(count);
          default -> today.minusYears(count);
        });
  }

  /** A date where one stands in a line of the scene. */
  static Optional<Found> at(Line line, int index, Scene scene) {
    return at(line, index, scene.today(), scene.ahead());
  }

  private static Optional<Found> at(Line line, int index, LocalDate today, boolean ahead) {
    if (index >= line.size()) {
      return Optional.empty();
    }
    Matcher iso = line.matcherAt(ISO, index);
    return iso.lookingAt()
        ? date(iso).map(date -> new Found(date, line.wordAfter(iso.end())))
        : byWord(line.token(index).word(), today, ahead).map(date -> new Found(date, index + 1));
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

  private static Optional<LocalDate> byWord(String word, LocalDate today, boolean ahead) {
    return switch (word) {
      case TODAY -> Optional.of(today);
      case YESTERDAY -> Optional.of(today.minusDays(1));
      case TOMORROW -> Optional.of(today.plusDays(1)).filter(day -> ahead);
      default ->
          weekday(word)
              .map(
                  day ->
                      today.with(
                          ahead
                              ? TemporalAdjusters.nextOrSame(day)
                              : TemporalAdjusters.previousOrSame(day)));
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

  /** Every word that names a day, what it is for first. */
  static List<String> words(boolean ahead) {
    return Stream.concat(
            Stream.of(ahead ? TOMORROW : YESTERDAY, TODAY),
            Arrays.stream(DayOfWeek.values()).map(Days::name))
        .toList();
  }
}
