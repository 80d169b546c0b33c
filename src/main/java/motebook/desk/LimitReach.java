package motebook.desk;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import motebook.model.Session;
import motebook.model.Work;

/**
 * When some work takes its day over the limit outside the mask, if it goes on: around the person's
 * other work of the day, not through it, and until midnight.
 *
 * @param state whether a limit judges such a day at all
 * @param limit when it is over that limit
 * @param advisory when it is over the advisory limit that stands beside it; empty where none does
 */
public record LimitReach(State state, Moments limit, Optional<Moments> advisory) {
  /** Whether a limit judges the day. */
  public enum State {
    JUDGED,
    /** None of the chosen set applies. */
    NO_LIMIT,
    /** The dust of the work itself is such as no limit covers. */
    UNCOVERED
  }

  /**
   * When a limit is passed.
   *
   * @param half when the chance of being over passes one half; empty where it does not on that day
   * @param oneInTwenty when the chance passes one in twenty
   */
  public record Moments(Optional<Moment> half, Optional<Moment> oneInTwenty) {
    /** Not on that day. */
    static final Moments NEVER = new Moments(Optional.empty(), Optional.empty());
  }

  /**
   * A moment of the work.
   *
   * @param minutes worked until then; 0 where the day is over without it
   * @param minuteOfDay what the clock shows then
   */
  public record Moment(int minutes, int minuteOfDay) {}

  private static final double HALF = 0.5;
  private static final double ONE_IN_TWENTY = 0.05;

  /**
   * Looks ahead.
   *
   * @param work begins at its start; how long it is said to last does not matter
   * @param done minutes of it that are over; the moments count from then on
   * @param others everybody's sessions of the day, this work not among them
   */
  static LimitReach of(Work work, int done, List<Session> others, Shop shop) {
    if (shop.reference().operation(work.operation()).dusty()
        && !shop.reference().material(work.material()).coveredByLimit()) {
      return new LimitReach(State.UNCOVERED, Moments.NEVER, Optional.empty());
    }
    Ahead ahead = new Ahead(work, done, others, shop);
    Held longest = ahead.longest();
    return new LimitReach(
        longest.judging.isPresent() ? State.JUDGED : State.NO_LIMIT,
        ahead.moments(Held::judging),
        longest.advisory.map(any -> ahead.moments(Held::advisory)));
  }

  /** Minutes until the chance of being over passes one half. */
  public OptionalInt minutes() {
    return limit.half.stream().mapToInt(Moment::minutes).findFirst();
  }

  /**
   * What a day is held against.
   *
   * @param uncovered whether all its dust is such as no limit covers, so that none is held yet
   */
  private record Held(
      Optional<HeldLimit> judging, Optional<HeldLimit> advisory, boolean uncovered) {}

  /** The day by how long the work goes on. */
  private static final class Ahead {
    private final Work work;
    private final int done;
    private final List<Session> others;
    private final Shop shop;
    private final List<Work> free = new ArrayList<>();
    private final Map<Integer, Held> days = new HashMap<>();

    Ahead(Work work, int done, List<Session> others, Shop shop) {
      this.work = work;
      this.done = done;
      this.others = others;
      this.shop = shop;
      int from = work.startMinute();
      int left = Work.LONGEST_MINUTES;
      for (Work other : later()) {
        left -= free(from, Math.min(other.startMinute(), from + left));
        from = Math.max(from, other.endMinute());
      }
      free(from, Math.min(RoomDay.DAY_ENDS, from + left));
    }

    private List<Work> later() {
      return others.stream()
          .map(Session::work)
          .filter(other -> other.person().equals(work.person()))
          .filter(other -> other.endMinute() > work.startMinute())
          .sorted(Comparator.comparingInt(Work::startMinute))
          .toList();
    }

    private int free(int from, int to) {
      if (to <= from) {
        return 0;
      }
      // Shortened before it is moved: a session ends by midnight.
      Work part = work.lasting(1).at(work.date(), LocalTime.of(from / 60, from % 60));
      free.add(part.lasting(to - from));
      return to - from;
    }

    Held longest() {
      return day(free.stream().mapToInt(Work::minutes).sum());
    }

    Moments moments(Function<Held, Optional<HeldLimit>> limit) {
      return new Moments(first(HALF, limit), first(ONE_IN_TWENTY, limit));
    }

    /** The day after some minutes of the work in all. */
    private Held day(int minutes) {
      return days.computeIfAbsent(minutes, this::held);
    }

    private Held held(int minutes) {
      List<Session> all = Timing.with(others, parts(minutes));
      DayReckoning day = new DayReckoning(work.date(), work.person(), all, shop);
      return new Held(
          HeldLimit.of(day),
          HeldLimit.advisory(day),
          Uncovered.of(day).map(Uncovered::alone).orElse(false));
    }

    private List<Work> parts(int minutes) {
      List<Work> parts = new ArrayList<>();
      int left = minutes;
      for (Work part : free) {
        if (left > 0) {
          parts.add(part.lasting(Math.min(left, part.minutes())));
          left -= part.minutes();
        }
      }
      return parts;
    }

    private boolean passes(double chance, Function<Held, Optional<HeldLimit>> limit, int minutes) {
      return limit.apply(day(minutes)).map(held -> held.chanceOutside() >= chance).orElse(false);
    }

    // A day's dose only grows with the time worked, so halving a free stretch finds the minute.
    private Optional<Moment> first(double chance, Function<Held, Optional<HeldLimit>> limit) {
      int under = done;
      // After dust that no limit covers the first minute calls for the limit; it is not the one
      // that passes it.
      if (passes(chance, limit, day(under).uncovered ? under + 1 : under)) {
        return Optional.of(new Moment(0, work.startMinute() + done));
      }
      int end = 0;
      for (Work part : free) {
        end += part.minutes();
        if (end > under && passes(chance, limit, end)) {
          int minutes = between(under, end, chance, limit);
          return Optional.of(new Moment(minutes - done, part.endMinute() - (end - minutes)));
        }
        under = Math.max(under, end);
      }
      return Optional.empty();
    }

    private int between(
        int low, int high, double chance, Function<Held, Optional<HeldLimit>> limit) {
      int under = low;
      int over = high;
      while (over - under > 1) {
        int middle = (under + over) / 2;
        if (passes(chance, limit, middle)) {
          over = middle;
        } else {
          under = middle;
        }
      }
      return over;
    }
  }
}
