package motebook.desk;

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
 * @param reach when the day would be over its limit if the work went on; empty where it is paused
 *     or is not of today
 * @param clearAt the minute of the day at which the fine dust of the room would have fallen to a
 *     tenth if the work ended now; empty where there is none, or it does not on this day
 */
public record Timing(
    Stopwatch watch,
    Optional<Doubt> doubt,
    List<Work> works,
    int minutes,
    Optional<LimitReach> reach,
    OptionalInt clearAt) {
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
      return new Timing(watch, doubt, works, minutes, Optional.empty(), OptionalInt.empty());
    }
    Work last = last(today);
    List<Session> others = with(sessions, today.subList(0, today.size() - 1));
    Optional<LimitReach> reach =
        watch.running()
            ? Optional.of(LimitReach.of(last, last.minutes(), others, shop))
            : Optional.empty();
    return new Timing(
        watch, doubt, works, minutes, reach, clearAt(last, with(sessions, today), shop));
  }

  /**
   * Reckons a stopwatch that has not yet timed half a minute.
   *
   * @param ahead what would be logged after a minute
   * @param sessions everybody's sessions of the day
   */
  public static Timing starting(
      Stopwatch watch, Work ahead, LocalDateTime now, List<Session> sessions, Shop shop) {
    Optional<LimitReach> reach =
        Optional.of(ahead)
            .filter(work -> work.date().equals(now.toLocalDate()))
            .map(work -> LimitReach.of(work, 0, sessions, shop));
    return new Timing(watch, Optional.empty(), List.of(), 0, reach, OptionalInt.empty());
  }

  /** Minutes left until the day is probably over its limit, 0 where it is. */
  public OptionalInt minutesLeft() {
    return reach.map(LimitReach::minutes).orElse(OptionalInt.empty());
  }

  /** The sessions of a day with work that is not logged yet; it has no number. */
  public static List<Session> with(List<Session> sessions, List<Work> works) {
    List<Session> all = new ArrayList<>(sessions);
    for (int i = 0; i < works.size(); i++) {
      all.add(new Session(-1 - i, works.get(i)));
    }
    return all;
  }

  private static Work last(List<Work> works) {
    return works.get(works.size() - 1);
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
        : IntStream.range(last.endMinute(), RoomDay.DAY_ENDS)
            .filter(minute -> room.get().at(minute).fine() <= A_TENTH * end)
            .findFirst();
  }
}
