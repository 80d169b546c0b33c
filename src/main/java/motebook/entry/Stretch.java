package motebook.entry;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * What a line begins with: a duration, or from when to when.
 *
 * @param minutes how long, 1 to {@link Work#LONGEST_MINUTES}
 * @param start when it began, where the line begins with that
 * @param to index of the word after it
 */
record Stretch(int minutes, Optional<LocalTime> start, int to) {
  private static final int DAY = 24 * 60;
  private static final int NOON = 12 * 60;
  private static final Pattern RANGE =
      Pattern.compile(
          "(?:from )?" + Clock.TIME + " *(?:-|–|—|to) *" + Clock.TIME + Durations.END,
          Pattern.CASE_INSENSITIVE);
  private static final int FIRST = 1;
  private static final int LAST = 4;
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?" + Durations.END);

  /**
   * Reads the beginning of a line.
   *
   * @throws Refusal if it is neither, or no time that a session can last
   */
  static Stretch of(Line line) {
    if (line.size() == 0) {
      throw new Refusal(
          "The line says nothing. Say how long and what: 40m orbital sanding of oak.");
    }
    Matcher range = line.matcherAt(RANGE, 0);
    return range.lookingAt() ? between(line, range) : lasting(line);
  }

  private static Stretch lasting(Line line) {
    Durations.Found found = Durations.at(line, 0).orElseThrow(() -> noDuration(line));
    return checked(line, found.minutes(), Optional.empty(), found.to());
  }

  private static Stretch checked(Line line, int minutes, Optional<LocalTime> start, int to) {
    if (minutes < 1) {
      throw line.refusal("A session lasts at least one minute: 1m.", 0, to);
    }
    if (minutes > Work.LONGEST_MINUTES) {
      throw line.refusal(
          "A session lasts up to 16 hours; this one would last %s. Log the work in parts."
              .formatted(Durations.written(minutes)),
          0,
          to);
    }
    return new Stretch(minutes, start, to);
  }

  private static Refusal noDuration(Line line) {
    Matcher number = line.matcherAt(NUMBER, 0);
    if (number.lookingAt()) {
      return noUnit(line, number.group(), line.wordAfter(number.end()));
    }
    return line.refusal(
        "\"%s\" is no duration: a line begins with how long the work took or from when to when, "
                .formatted(Wording.shortened(line.typedWithMarks(0, 1)))
            + "such as 40m, 1h20 or 9:00-9:30.",
        0,
        1);
  }

  private static Refusal noUnit(Line line, String number, int to) {
    boolean hours = number.length() <= 2 && Integer.parseInt(number) <= 16;
    String message = "\"%s\" has no unit: say %sm for minutes, %sor a stretch such as 9:00-9:30.";
    return line.refusal(
        message.formatted(
            Wording.shortened(number),
            Wording.shortened(number),
            hours ? number + "h for hours, " : ""),
        0,
        to);
  }

  private static Stretch between(Line line, Matcher range) {
    int to = line.wordAfter(range.end());
    if (Clock.bareHour(range, FIRST) && Clock.bareHour(range, LAST)) {
      throw line.refusal(
          "\"%s\" may be early or late: say %s:00-%s:00, or say am or pm."
              .formatted(range.group(), range.group(FIRST), range.group(LAST)),
          0,
          to);
    }
    int end = end(range).orElseThrow(() -> noTime(line, range, to));
    int start = start(range, end).orElseThrow(() -> noTime(line, range, to));
    return checked(line, length(line, range, start, end), Optional.of(Clock.time(start)), to);
  }

  private static int length(Line line, Matcher range, int start, int end) {
    int to = line.wordAfter(range.end());
    if (end < start && start < NOON) {
      throw line.refusal(
          "\"%s\" ends before it begins. Say the earlier time first, on the 24-hour clock or with am and pm."
              .formatted(range.group()),
          0,
          to);
    }
    return end < start ? end + DAY - start : end - start;
  }

  private static Refusal noTime(Line line, Matcher range, int to) {
    return line.refusal(
        "\"%s\" holds a time that no clock shows. Say it such as 9:00-9:30 or 1:30pm-2pm."
            .formatted(range.group()),
        0,
        to);
  }

  /** The end of a range; midnight, written 0:00 or 24:00, ends the day that it closes. */
  private static OptionalInt end(Matcher range) {
    boolean closesDay =
        range.group(LAST).equals("24")
            && "00".equals(range.group(LAST + 1))
            && range.group(LAST + 2) == null;
    OptionalInt minute = closesDay ? OptionalInt.of(DAY) : Clock.minuteOfDay(range, LAST);
    return minute.isPresent() && minute.getAsInt() == 0 ? OptionalInt.of(DAY) : minute;
  }

  /** The start of a range; it shares the half of the day said at the end where that fits. */
  private static OptionalInt start(Matcher range, int end) {
    OptionalInt plain = Clock.minuteOfDay(range, FIRST);
    if (range.group(FIRST + 2) != null || range.group(LAST + 2) == null) {
      return plain;
    }
    OptionalInt shared = Clock.minuteOfDay(range, FIRST, range.group(LAST + 2));
    return shared.isPresent() && shared.getAsInt() < end ? shared : plain;
  }
}
