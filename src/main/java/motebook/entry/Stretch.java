package motebook.entry;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * What a line begins with: a duration, or from when to when. It may also stand further behind, if
 * it is the only one and has a unit.
 *
 * @param minutes how long, 1 to {@link Work#LONGEST_MINUTES}
 * @param start when it began, where that is said by from when to when
 * @param from index of its first word
 * @param to index of the word after it
 */
record Stretch(int minutes, Optional<LocalTime> start, int from, int to) {
  private static final String EXAMPLE_WORK = "orbital sanding of oak";
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
   * Finds how long the work of a line took.
   *
   * @throws Refusal if nothing says so, or it is no time that a session can last
   */
  static Stretch of(Line line) {
    if (line.size() == 0) {
      throw new Refusal(
          "The line says nothing. Say how long and what: 40m orbital sanding of oak.");
    }
    Matcher range = line.matcherAt(RANGE, 0);
    return range.lookingAt() ? between(line, range, 0) : lasting(line);
  }

  private static Stretch lasting(Line line) {
    Optional<Durations.Found> first = Durations.withUnit(line, 0);
    Optional<Durations.Found> colon = Durations.colon(line, 0);
    if (first.isPresent() || colon.isPresent()) {
      return first.isPresent() ? of(line, first.get(), 0) : notClock(line, colon.get());
    }
    List<Stretch> behind = from(line, 1);
    if (behind.size() > 1) {
      throw twice(line, behind.get(0), behind.get(1));
    }
    return behind.stream().findFirst().orElseThrow(() -> noDuration(line));
  }

  private static Stretch of(Line line, Durations.Found found, int from) {
    return checked(line, found.minutes(), Optional.empty(), from, found.to());
  }

  /** {@code 9:15 40m} begins with a time of day, for the duration is the other one. */
  private static Stretch notClock(Line line, Durations.Found colon) {
    Optional<Durations.Found> duration = Durations.withUnit(line, colon.to());
    if (duration.isPresent()) {
      String rest = line.typed(colon.to(), duration.get().to());
      throw line.refusal(
          "\"%s\" before the duration %s is a time of day, which goes behind \"at\": %s %s at %s."
              .formatted(
                  line.typed(0, colon.to()), rest, rest, EXAMPLE_WORK, line.typed(0, colon.to())),
          0,
          colon.to());
    }
    return of(line, colon, 0);
  }

  /** Every stretch that can only be one, from a word on. */
  private static List<Stretch> from(Line line, int index) {
    List<Stretch> found = new ArrayList<>();
    for (int at = index; at < line.size(); at++) {
      Optional<Stretch> here = behind(line, at);
      if (here.isPresent()) {
        found.add(here.get());
        at = here.get().to() - 1;
      }
    }
    return found;
  }

  private static Optional<Stretch> behind(Line line, int at) {
    Matcher range = line.matcherAt(RANGE, at);
    if (range.lookingAt() && !Clock.bareHour(range, FIRST) && !Clock.bareHour(range, LAST)) {
      return Optional.of(between(line, range, at));
    }
    return Durations.withUnit(line, at).map(found -> of(line, found, at));
  }

  private static Refusal twice(Line line, Stretch one, Stretch other) {
    return line.refusal(
        "How long is said twice: \"%s\" and \"%s\". Say two jobs in two lines."
            .formatted(line.typed(one.from, one.to), line.typed(other.from, other.to)),
        other.from,
        other.to);
  }

  private static Stretch checked(
      Line line, int minutes, Optional<LocalTime> start, int from, int to) {
    if (minutes < 1) {
      throw line.refusal("A session lasts at least one minute: 1m.", from, to);
    }
    if (minutes > Work.LONGEST_MINUTES) {
      throw line.refusal(
          "A session lasts up to 16 hours; this one would last %s. Log the work in parts."
              .formatted(Durations.written(minutes)),
          from,
          to);
    }
    return new Stretch(minutes, start, from, to);
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

  private static Stretch between(Line line, Matcher range, int from) {
    int to = line.wordAfter(range.end());
    if (Clock.bareHour(range, FIRST) && Clock.bareHour(range, LAST)) {
      throw line.refusal(
          "\"%s\" may be early or late: say %s:00-%s:00, or say am or pm."
              .formatted(range.group(), range.group(FIRST), range.group(LAST)),
          from,
          to);
    }
    int end = end(range).orElseThrow(() -> noTime(line, range, from, to));
    int start = start(range, end).orElseThrow(() -> noTime(line, range, from, to));
    return checked(
        line, length(line, range, from, start, end), Optional.of(Clock.time(start)), from, to);
  }

  private static int length(Line line, Matcher range, int from, int start, int end) {
    int to = line.wordAfter(range.end());
    if (end < start && start < NOON) {
      throw line.refusal(
          "\"%s\" ends before it begins. Say the earlier time first, on the 24-hour clock or with am and pm."
              .formatted(range.group()),
          from,
          to);
    }
    return end < start ? end + DAY - start : end - start;
  }

  private static Refusal noTime(Line line, Matcher range, int from, int to) {
    return line.refusal(
        "\"%s\" holds a time that no clock shows. Say it such as 9:00-9:30 or 1:30pm-2pm."
            .formatted(range.group()),
        from,
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
