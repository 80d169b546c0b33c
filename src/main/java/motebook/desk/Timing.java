package motebook.desk;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Doubt;
import motebook.model.Work;

/**
 * What a stopwatch says of its day: the work so far as sessions that are not logged yet, how long
 * it could go on like this before the limit, and how long the dust will be in the air.
 *
 * @param watch the stopwatch
 * @param doubt why the person will be asked when the work really was; empty where nothing is unsure
 * @param works what would be logged if it were stopped now, one for each stretch
 * @param minutes worked so far
 * @param minutesLeft until the headline figure outside reaches the limit at this rate, 0 where it
 *     has; empty where it does not on this day, or no limit applies
 * @param clearAt the minute of the day at which the fine dust of the room would have fallen to a
 *     tenth if the work ended now; empty where there is none, or it does not on this day
 */
public record Timing(
    Stopwatch watch,
    Optional<Doubt> doubt,
    List<Work> works,
    int minutes,
    OptionalInt minutesLeft,
    OptionalInt clearAt) {
  private static final int DAY_ENDS = 24 * 60;
  private static final double A_TENTH = 0.1;

  public Timing {
    works = List.copyOf(works);
  }

  /**
   * Reckons a stopwatch.
   *
   * @param doubt why the person will be asked when the work really was
   * @param works what would be logged if it were stopped now, in order
   * @param sessions everybody's sessions of the day, these works not among them
   * @param shop the shop as it is on the day
   */
  public static Timing of(
      Stopwatch watch,
      Optional<Doubt> doubt,
      List<Work> works,
      LocalDateTime now,
      List<Session> sessions,
      Shop shop) {
    int minutes = works.stream().mapToInt(Work::minutes).sum();
    List<Work> today = works.stream().filter(w -> w.date().equals(now.toLocalDate())).toList();
    if (today.isEmpty()) {
      return new Timing(watch, doubt, works, minutes, OptionalInt.empty(), OptionalInt.empty());
    }
    OptionalInt left = watch.running() ? minutesLeft(today, sessions, shop) : OptionalInt.empty();
    return new Timing(watch, doubt, works, minutes, left, clearAt(today, sessions, shop));
  }

  /**
   * Reckons a stopwatch that has not yet timed half a minute.
   *
   * @param ahead what would be logged after a minute
   * @param sessions everybody's sessions of the day
   */
  public static Timing starting(
      Stopwatch watch, Work ahead, LocalDateTime now, List<Session> sessions, Shop shop) {
    OptionalInt left = OptionalInt.empty();
    if (ahead.date().equals(now.toLocalDate())) {
      left = minutesToLimit(ahead, sessions, shop);
    }
    return new Timing(watch, Optional.empty(), List.of(), 0, left, OptionalInt.empty());
  }

  /**
   * Minutes of some work, from its start, after which the headline figure outside reaches the
   * limit; 0 where the day is over it without.
   *
   * @param sessions everybody's sessions of the day, this work not among them
   * @return empty where it does not reach it on that day, or no limit applies
   */
  static OptionalInt minutesToLimit(Work ahead, List<Session> sessions, Shop shop) {
    OptionalInt after = minutesLeft(List.of(ahead.lasting(1)), sessions, shop);
    DayReckoning before = new DayReckoning(ahead.date(), ahead.person(), sessions, shop);
    boolean over = HeldLimit.of(before).map(held -> held.ratio() >= 1).orElse(false);
    return after.isEmpty() ? after : OptionalInt.of(over ? 0 : after.getAsInt() + 1);
  }

  /** The sessions of a day with work that is not logged yet; it has no number. */
  public static List<Session> with(List<Session> sessions, List<Work> works) {
    List<Session> all = new ArrayList<>(sessions);
    for (int i = 0; i < works.size(); i++) {
      all.add(new Session(-1 - i, works.get(i)));
    }
    return all;
  }

  private static OptionalInt minutesLeft(List<Work> works, List<Session> sessions, Shop shop) {
    int most =
        Math.min(Work.LONGEST_MINUTES - last(works).minutes(), DAY_ENDS - last(works).endMinute());
    if (!over(works, most, sessions, shop)) {
      return OptionalInt.empty();
    }
    int under = -1;
    int over = most;
    while (over - under > 1) {
      int middle = (under + over) / 2;
      if (over(works, middle, sessions, shop)) {
        over = middle;
      } else {
        under = middle;
      }
    }
    return OptionalInt.of(over);
  }

  private static Work last(List<Work> works) {
    return works.get(works.size() - 1);
  }

  // A day's dose only grows with the time worked, so halving finds the first minute over it.
  private static boolean over(List<Work> works, int extra, List<Session> sessions, Shop shop) {
    List<Work> longer = new ArrayList<>(works.subList(0, works.size() - 1));
    longer.add(last(works).lasting(last(works).minutes() + extra));
    LocalDate date = last(works).date();
    DayReckoning day = new DayReckoning(date, last(works).person(), with(sessions, longer), shop);
    return HeldLimit.of(day).map(held -> held.ratio() >= 1).orElse(false);
  }

  private static OptionalInt clearAt(List<Work> works, List<Session> sessions, Shop shop) {
    return clearAt(last(works), with(sessions, works), shop);
  }

  /**
   * The minute of the day at which the fine dust of the room will have fallen to a tenth of what it
   * is when some work ends; empty where there is none, or it does not on that day.
   *
   * @param sessions everybody's sessions of the day, that work among them
   */
  public static OptionalInt clearAt(Work last, List<Session> sessions, Shop shop) {
    DayReckoning day = new DayReckoning(last.date(), last.person(), sessions, shop);
    Optional<RoomDay> room = day.room(last.place());
    double end = room.map(air -> air.at(last.endMinute()).fine()).orElse(0.0);
    return end == 0
        ? OptionalInt.empty()
        : IntStream.range(last.endMinute(), DAY_ENDS)
            .filter(minute -> room.get().at(minute).fine() <= A_TENTH * end)
            .findFirst();
  }
}
