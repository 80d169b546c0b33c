package motebook.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import motebook.model.Refusal;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Doubt;
import motebook.model.Stopwatch.Stretch;
import motebook.model.Work;

/** Timed work as sessions: one for each stretch between pauses, parted at midnight. */
public final class Timed {
  private final Stopwatch watch;
  private final Scene scene;
  private final ZoneId zone;
  private final List<Work> works = new ArrayList<>();

  private Timed(Stopwatch watch, Scene scene, ZoneId zone) {
    this.watch = watch;
    this.scene = scene;
    this.zone = zone;
  }

  /**
   * What a stopwatch has timed until a moment, in order. A stretch is rounded to whole minutes, and
   * one of under half a minute is left out.
   *
   * @param zone where the clock on the wall is read
   * @throws Refusal if its line can no longer be read, because a name in it is gone
   */
  public static List<Work> works(Stopwatch watch, Instant now, ZoneId zone, Scene scene) {
    Timed timed = new Timed(watch, scene, zone);
    watch.stretches().forEach(stretch -> timed.add(stretch, now));
    return timed.sharing();
  }

  /** The works with the amounts of finishes parted among them by their length. */
  private List<Work> sharing() {
    double all = works.stream().mapToInt(Work::minutes).sum();
    return works.stream()
        .map(work -> work.using(Amounts.part(work.amounts(), work.minutes() / all)))
        .toList();
  }

  /**
   * Reads what a stopwatch is to time: a spoken line without its duration and without a time.
   *
   * @return the work with a duration of one minute
   * @throws Refusal as {@link SpokenLine#read}; its offsets point into the line as given
   */
  public static Work read(String line, Scene scene) {
    String minute = "1m ";
    try {
      return SpokenLine.read(minute + line, at(scene, scene.today()));
    } catch (Refusal refusal) {
      int from = refusal.from() - minute.length();
      throw from < 0 ? refusal.at(-1, -1) : refusal.at(from, refusal.to() - minute.length());
    }
  }

  // At noon a minute that has just ended lies on the same day.
  private static Scene at(Scene scene, LocalDate date) {
    return scene.at(date.atTime(LocalTime.NOON));
  }

  /**
   * The stretch that runs as the person gives it afterwards, where the clock cannot be trusted.
   *
   * @param said when the work ended (where only that is unsure), how long it took, or from when to
   *     when; "now" where it ends only now
   * @throws Refusal if it says none of these, or a time that is not over or was not free
   */
  public static Stretch corrected(
      Stopwatch watch, String said, Instant now, ZoneId zone, Scene scene) {
    Timed timed = new Timed(watch, scene, zone);
    boolean clockSet = watch.doubt(now).filter(Doubt.CLOCK_SET::equals).isPresent();
    Stretch corrected = clockSet ? timed.whole(said, now) : timed.ended(said, now);
    Instant ended = corrected.ended().orElseThrow();
    if (ended.isAfter(now)) {
      throw new Refusal(
          "That ends at " + timed.local(ended).toLocalTime() + ", which is still to come.");
    }
    if (corrected.began().isBefore(watch.free())) {
      throw new Refusal(
          "That overlaps the work before the pause, which ended at "
              + timed.local(watch.free()).toLocalTime()
              + ".");
    }
    return corrected;
  }

  // Its beginning is known; 12:30 is when it ended, 2h10 how long it took.
  private Stretch ended(String said, Instant now) {
    Instant began = watch.last().began();
    Line line = Line.of(said);
    OptionalInt minutes = said.contains(":") ? OptionalInt.empty() : Durations.parse(said);
    Optional<LocalTime> clock =
        Clock.at(line, 0).filter(it -> it.to() == line.size()).map(Clock.Found::time);
    if (said.equalsIgnoreCase("now")) {
      return new Stretch(began, Optional.of(now));
    } else if (minutes.isPresent()) {
      return new Stretch(began, Optional.of(began.plusSeconds(60L * minutes.getAsInt())));
    } else if (clock.isPresent()) {
      ZonedDateTime start = began.atZone(zone);
      ZonedDateTime end = start.with(clock.get());
      ZonedDateTime first = end.isAfter(start) ? end : end.plusDays(1);
      return new Stretch(began, Optional.of(first.toInstant()));
    }
    return whole(said, now);
  }

  // Neither its beginning nor its end is known.
  private Stretch whole(String said, Instant now) {
    Work work;
    try {
      work =
          SpokenLine.read(said + " " + watch.line(), scene.at(LocalDateTime.ofInstant(now, zone)));
    } catch (Refusal refusal) {
      throw new Refusal(
          "\"" + said + "\" does not say how long, or from when to when. Try 40m or 9:00-9:40.");
    }
    Instant began = work.date().atTime(work.start()).atZone(zone).toInstant();
    return new Stretch(began, Optional.of(began.plusSeconds(60L * work.minutes())));
  }

  private void add(Stretch stretch, Instant now) {
    long minutes = Math.round(stretch.until(now).toSeconds() / 60.0);
    LocalDateTime from = earliest(local(stretch.began()));
    LocalDateTime to = local(stretch.began()).plusMinutes(minutes);
    while (from.isBefore(to)) {
      LocalDateTime midnight = from.toLocalDate().plusDays(1).atStartOfDay();
      LocalDateTime longest = from.plusMinutes(Work.LONGEST_MINUTES);
      LocalDateTime end = earlier(earlier(midnight, longest), to);
      works.add(work(from, (int) Duration.between(from, end).toMinutes()));
      from = end;
    }
  }

  private LocalDateTime local(Instant instant) {
    return LocalDateTime.ofInstant(instant, zone).truncatedTo(ChronoUnit.MINUTES);
  }

  // Rounding may carry a stretch into the minute in which the next one began.
  private LocalDateTime earliest(LocalDateTime began) {
    if (works.isEmpty()) {
      return began;
    }
    Work before = works.get(works.size() - 1);
    LocalDateTime free = before.date().atTime(before.start()).plusMinutes(before.minutes());
    return free.isAfter(began) ? free : began;
  }

  private static LocalDateTime earlier(LocalDateTime one, LocalDateTime other) {
    return one.isBefore(other) ? one : other;
  }

  private Work work(LocalDateTime from, int minutes) {
    Work said = SpokenLine.read("1m " + watch.line(), at(scene, from.toLocalDate()));
    return new Work(
        watch.person(),
        said.place(),
        from.toLocalDate(),
        from.toLocalTime(),
        minutes,
        said.operation(),
        said.material(),
        said.controls(),
        said.mask(),
        said.amounts(),
        said.note());
  }
}
