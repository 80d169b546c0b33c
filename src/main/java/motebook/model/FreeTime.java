package motebook.model;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * When somebody is free for a stretch of work on a day that holds other work.
 *
 * @param work what is to find its place; its date is the day
 * @param others that person's other work of that day
 * @param now work ends by then: what is still to come was not done
 */
public record FreeTime(Work work, List<Work> others, LocalDateTime now) {
  private static final int DAY = 24 * 60;

  public FreeTime {
    others = others.stream().filter(other -> other.date().equals(work.date())).toList();
  }

  /** The other work that shares a minute with it, the earliest first; empty where none does. */
  public Optional<Work> clash() {
    return others.stream()
        .filter(other -> other.overlaps(work))
        .min((one, other) -> one.startMinute() - other.startMinute());
  }

  /**
   * The start nearest to the one wanted at which all its minutes are free and past; the earlier of
   * two that are as near. Empty where no free stretch of the day is long enough.
   */
  public Optional<LocalTime> start() {
    OptionalInt before = before();
    OptionalInt after = after();
    int wanted = work.startMinute();
    boolean later =
        after.isPresent()
            && (before.isEmpty() || after.getAsInt() - wanted < wanted - before.getAsInt());
    OptionalInt nearest = later ? after : before;
    return nearest.stream().mapToObj(LocalTime.MIDNIGHT::plusMinutes).findFirst();
  }

  private OptionalInt before() {
    int start = Math.min(work.startMinute(), last() - work.minutes());
    while (start >= 0) {
      Optional<Work> other = at(start);
      if (other.isEmpty()) {
        return OptionalInt.of(start);
      }
      start = other.get().startMinute() - work.minutes();
    }
    return OptionalInt.empty();
  }

  private OptionalInt after() {
    int start = work.startMinute();
    while (start + work.minutes() <= last()) {
      Optional<Work> other = at(start);
      if (other.isEmpty()) {
        return OptionalInt.of(start);
      }
      start = other.get().endMinute();
    }
    return OptionalInt.empty();
  }

  /** The minute of the day by which it must have ended. */
  private int last() {
    return work.date().isBefore(now.toLocalDate()) ? DAY : now.getHour() * 60 + now.getMinute();
  }

  private Optional<Work> at(int start) {
    return others.stream()
        .filter(o -> o.startMinute() < start + work.minutes() && start < o.endMinute())
        .findFirst();
  }
}
