package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of time over which a person breathes the air of one place in one way.
 *
 * @param place its name
 * @param from first minute of the day
 * @param to the minute after the last
 * @param own what the person does, empty in a gap between two sessions
 */
record Breath(String place, int from, int to, Optional<Source> own) {
  int minutes() {
    return to - from;
  }

  /** As much of it as lies in some minutes. */
  Optional<Breath> within(int first, int last) {
    int begin = Math.max(from, first);
    int end = Math.min(to, last);
    return begin < end ? Optional.of(new Breath(place, begin, end, own)) : Optional.empty();
  }

  /**
   * A person's day: each session, and each short gap between two of them in the same room.
   *
   * @param own the person's sources
   * @param gapMinutes the longest gap that counts as spent in the room
   */
  static List<Breath> ofDay(List<Source> own, int gapMinutes, Shop shop) {
    List<Breath> day = new ArrayList<>();
    for (Source source : own.stream().sorted(Comparator.comparingInt(Source::from)).toList()) {
      Breath next =
          new Breath(
              source.session().work().place(), source.from(), source.to(), Optional.of(source));
      if (!day.isEmpty()) {
        gap(day.get(day.size() - 1), next, gapMinutes, shop).ifPresent(day::add);
      }
      day.add(next);
    }
    return day;
  }

  private static Optional<Breath> gap(Breath before, Breath after, int longest, Shop shop) {
    int minutes = after.from - before.to;
    boolean counts =
        minutes > 0
            && minutes <= longest
            && before.place.equals(after.place)
            && !shop.place(before.place).outdoors();
    return counts
        ? Optional.of(new Breath(before.place, before.to, after.from, Optional.empty()))
        : Optional.empty();
  }
}
