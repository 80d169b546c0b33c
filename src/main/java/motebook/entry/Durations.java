package motebook.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long something took, as a person writes it: {@code 40m}, {@code 40 minutes}, {@code 1h},
 * {@code 1h20}, {@code 1 h 20 min}, {@code 1.5h}, {@code 1:20}, or in words ({@link SpokenHours});
 * "about" and the like before it say nothing.
 */
public final class Durations {
  /** What must follow a time or a duration: a gap, a comma or the end. */
  static final String END = "(?=[ ,]|\\z)";

  private static final Pattern MINUTES = pattern("~? ?(\\d{1,6}) *(?:minutes?|mins?|m)");
  private static final Pattern HOURS =
      pattern("(\\d{1,4}) *(?:hours?|hrs?|h)(?: *([0-5]?\\d) *(?:minutes?|mins?|m)?)?");
  private static final Pattern DECIMAL_HOURS = pattern("(\\d{1,4}[.,]\\d{1,6}) *(?:hours?|hrs?|h)");
  private static final Pattern COLON = pattern("(\\d{1,4}):([0-5]\\d)");

  private Durations() {}

  private static Pattern pattern(String regex) {
    return Pattern.compile(regex + END, Pattern.CASE_INSENSITIVE);
  }

  /**
   * Reads a whole text as a duration.
   *
   * @return whole minutes, 0 or more; a decimal of an hour is rounded to the nearest minute; empty
   *     where the text is no duration (a bare number is none: it has no unit)
   */
  public static OptionalInt parse(String text) {
    Line line = Line.of(text);
    Optional<Found> found = line.hasNote() ? Optional.empty() : at(line, 0);
    return found.filter(it -> it.to() == line.size()).map(Found::minutes).stream()
        .mapToInt(Integer::intValue)
        .findFirst();
  }

  /**
   * A duration found in a line.
   *
   * @param minutes whole minutes
   * @param to index of the word after it
   */
  record Found(int minutes, int to) {}

  static Optional<Found> at(Line line, int index) {
    int from = Fillers.pastAbout(line, index);
    return withUnit(line, from).or(() -> colon(line, from));
  }

  /** The same without {@code 1:20}, which may as well be a time of day. */
  static Optional<Found> withUnit(Line line, int index) {
    int from = Fillers.pastAbout(line, index);
    return SpokenHours.at(line, from)
        .or(() -> found(line, from, MINUTES, match -> number(match, 1)))
        .or(() -> found(line, from, HOURS, match -> 60 * number(match, 1) + number(match, 2)))
        .or(() -> found(line, from, DECIMAL_HOURS, Durations::decimalHours));
  }

  static Optional<Found> colon(Line line, int index) {
    return found(line, index, COLON, match -> 60 * number(match, 1) + number(match, 2));
  }

  private static Optional<Found> found(
      Line line, int index, Pattern pattern, ToIntFunction<Matcher> minutes) {
    Matcher match = line.matcherAt(pattern, index);
    return match.lookingAt()
        ? Optional.of(new Found(minutes.applyAsInt(match), line.wordAfter(match.end())))
        : Optional.empty();
  }

  private static int number(Matcher match, int group) {
    return match.group(group) == null ? 0 : Integer.parseInt(match.group(group));
  }

  private static int decimalHours(Matcher match) {
    return new BigDecimal(match.group(1).replace(',', '.'))
        .multiply(BigDecimal.valueOf(60))
        .setScale(0, RoundingMode.HALF_UP)
        .intValueExact();
  }

  /** Minutes as the line writes them: {@code 40m}, {@code 2h}, {@code 1h20m}. */
  static String written(int minutes) {
    String hours = minutes < 60 ? "" : minutes / 60 + "h";
    return minutes % 60 == 0 && minutes > 0 ? hours : hours + minutes % 60 + "m";
  }
}
