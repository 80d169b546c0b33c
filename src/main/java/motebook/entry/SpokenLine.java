package motebook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Work;

/**
 * The spoken line: a day's work in one line of plain words, both ways.
 *
 * <p>First how long, or from when to when; then in any order an operation, {@code of} a material,
 * {@code with} controls, {@code in} a place, {@code wearing} a respirator, {@code by} a person,
 * {@code at} a time, {@code on} a date; last a {@code note}.
 */
public final class SpokenLine {
  private SpokenLine() {}

  /**
   * Reads a line.
   *
   * @throws Refusal if a word is not understood, may mean several things, or the session makes no
   *     sense; it points at the words at fault where there are some
   */
  public static Work read(String text, Scene scene) {
    Line line = Line.of(text);
    Stretch stretch = Stretch.of(line);
    Grammar grammar = new Grammar(line, scene);
    Reading reading = Reading.of(grammar, stretch.to(), line.size(), true);
    if (!reading.clean()) {
      new Objections(grammar).raise(reading);
    }
    Work work = work(line, stretch, reading, scene);
    WorkRules.first(work, scene)
        .ifPresent(
            objection -> {
              throw pointed(line, reading, objection);
            });
    return work;
  }

  /** Says a session as a full line; reading it gives the same session. */
  public static String say(Work work, Scene scene) {
    return Saying.line(work, scene.reference());
  }

  /**
   * How a line might go on: whole lines, best first, at most eight.
   *
   * @param line what is typed so far
   */
  public static List<String> complete(String line, Scene scene) {
    return Completion.of(line, scene);
  }

  private static Work work(Line line, Stretch stretch, Reading reading, Scene scene) {
    LocalDateTime begins = begins(stretch, reading, scene);
    return Midnight.within(
        begins,
        stretch.minutes(),
        scene,
        (date, start, minutes) ->
            new Work(
                reading.key(Slot.PERSON).orElse(scene.person()),
                reading.key(Slot.PLACE).orElse(scene.place()),
                date,
                start,
                minutes,
                reading.key(Slot.OPERATION).orElseThrow(),
                reading.key(Slot.MATERIAL),
                reading.controls().stream().distinct().toList(),
                mask(reading),
                line.note()));
  }

  private static LocalDateTime begins(Stretch stretch, Reading reading, Scene scene) {
    Optional<LocalTime> at = reading.first(Clause.At.class).map(Clause.At::time);
    if (at.isPresent() && stretch.start().isPresent()) {
      throw new Refusal("The start was said twice: as \"from-to\" and with \"at\". Say it once.");
    }
    Optional<LocalTime> start = stretch.start().or(() -> at);
    Optional<LocalDate> date = reading.first(Clause.On.class).map(Clause.On::date);
    if (start.isEmpty() && date.isPresent()) {
      throw new Refusal(
          "With a date the start must be said too: add \"at 9:00\", or begin with 9:00-9:40.");
    }
    LocalDateTime justEnded =
        scene.now().truncatedTo(ChronoUnit.MINUTES).minusMinutes(stretch.minutes());
    return start
        .map(time -> time.atDate(date.orElseGet(() -> Midnight.dayOf(time, stretch, scene))))
        .orElse(justEnded);
  }

  private static Optional<MaskUse> mask(Reading reading) {
    return reading
        .key(Slot.MASK)
        .map(
            name ->
                new MaskUse(
                    name,
                    reading.first(Clause.Checked.class).isPresent(),
                    reading.first(Clause.Worn.class).map(Clause.Worn::percent).orElse(100.0)));
  }

  private static Refusal pointed(Line line, Reading reading, WorkRules.Objection objection) {
    return reading.clauses().stream()
        .filter(clause -> clause.meaning().slot().filter(objection.slot()::equals).isPresent())
        .filter(
            clause ->
                !(clause.meaning() instanceof Clause.Name name)
                    || name.key().equals(objection.key()))
        .findFirst()
        .map(clause -> line.refusal(objection.message(), clause.at(), clause.to()))
        .orElseGet(() -> new Refusal(objection.message()));
  }
}
