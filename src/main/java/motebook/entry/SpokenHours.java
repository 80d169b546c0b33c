package motebook.entry;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Durations in words: {@code half an hour}, {@code an hour and a half}, {@code a quarter of an
 * hour}, {@code two hours}, {@code an hour and 20 minutes}, {@code twenty minutes}, {@code 1½ h}.
 */
final class SpokenHours {
  private static final Map<String, Integer> NUMBERS =
      Map.ofEntries(
          entry("a", 1),
          entry("an", 1),
          entry("one", 1),
          entry("two", 2),
          entry("three", 3),
          entry("four", 4),
          entry("five", 5),
          entry("six", 6),
          entry("seven", 7),
          entry("eight", 8),
          entry("nine", 9),
          entry("ten", 10),
          entry("twelve", 12),
          entry("fifteen", 15),
          entry("twenty", 20),
          entry("twenty five", 25),
          entry("thirty", 30),
          entry("thirty five", 35),
          entry("forty", 40),
          entry("forty five", 45),
          entry("fifty", 50),
          entry("fifty five", 55));

  private static final Map<String, Integer> PARTS =
      Map.of(
          "half",
          30,
          "½",
          30,
          "1/2",
          30,
          "quarter",
          15,
          "¼",
          15,
          "1/4",
          15,
          "three quarters",
          45,
          "¾",
          45,
          "3/4",
          45);

  private static final String NUMBER = "(\\d{1,3}|" + words(NUMBERS) + ")";
  private static final String PART = "(" + words(PARTS) + ")";
  private static final String HOURS = "(?:hours?|hrs?|h)";
  private static final String MINUTES = "(?:minutes?|mins?|m)";

  private static final List<Shape> SHAPES =
      List.of(
          new Shape("(?:an? )?" + PART + " ?(?:of )?(?:an? )?" + HOURS, m -> part(m, 1)),
          new Shape(
              NUMBER + " *" + HOURS + " and (?:an? )?" + PART, m -> 60 * number(m, 1) + part(m, 2)),
          new Shape(
              NUMBER + " ?(?:and (?:an? )?)?" + PART + " *" + HOURS,
              m -> 60 * number(m, 1) + part(m, 2)),
          new Shape(
              NUMBER + " *" + HOURS + " (?:and )?" + NUMBER + " *" + MINUTES,
              m -> 60 * number(m, 1) + number(m, 2)),
          new Shape(NUMBER + " +" + HOURS, m -> 60 * number(m, 1)),
          new Shape(NUMBER + " +" + MINUTES, m -> number(m, 1)));

  private SpokenHours() {}

  /** A way of saying a duration, and the minutes in it. */
  private record Shape(Pattern pattern, ToIntFunction<Matcher> minutes) {
    Shape(String regex, ToIntFunction<Matcher> minutes) {
      this(Pattern.compile(regex + Durations.END, Pattern.CASE_INSENSITIVE), minutes);
    }
  }

  // Longer words come first, and a hyphen is as good as a gap.
  private static String words(Map<String, Integer> words) {
    return words.keySet().stream()
        .sorted((one, other) -> other.length() - one.length())
        .map(word -> word.replace(" ", "[- ]"))
        .collect(Collectors.joining("|"));
  }

  static Optional<Durations.Found> at(Line line, int index) {
    for (Shape shape : SHAPES) {
      Matcher match = line.matcherAt(shape.pattern, index);
      if (match.lookingAt()) {
        int minutes = shape.minutes.applyAsInt(match);
        return Optional.of(new Durations.Found(minutes, line.wordAfter(match.end())));
      }
    }
    return Optional.empty();
  }

  private static String word(Matcher match, int group) {
    return match.group(group).toLowerCase(Locale.ROOT).replace('-', ' ');
  }

  private static int number(Matcher match, int group) {
    String word = word(match, group);
    return NUMBERS.containsKey(word) ? NUMBERS.get(word) : Integer.parseInt(word);
  }

  private static int part(Matcher match, int group) {
    return PARTS.get(word(match, group));
  }
}
