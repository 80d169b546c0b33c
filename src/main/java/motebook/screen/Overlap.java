package motebook.screen;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.model.FreeTime;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.report.Wording;
import motebook.screen.state.Reading.Clash;

/** Tells that work about to be logged shares a minute with other work of the same person. */
final class Overlap {
  private Overlap() {}

  /**
   * What some work would overlap.
   *
   * @param sessions everybody's of that day, without one in whose place the work would come
   * @param own whether the person is the book's own
   * @param now nothing to come is called free
   */
  static Optional<Clash> of(Work work, List<Session> sessions, boolean own, LocalDateTime now) {
    List<Work> others =
        sessions.stream()
            .map(Session::work)
            .filter(other -> other.person().equals(work.person()))
            .toList();
    FreeTime time = new FreeTime(work, others, now);
    return time.clash().map(other -> new Clash(told(other, own) + room(time), time.start()));
  }

  private static String told(Work other, boolean own) {
    return "overlaps "
        + (own ? "your " : "the work of " + other.person() + ", ")
        + Wording.span(other)
        + " "
        + Reference.shipped().operation(other.operation()).spoken();
  }

  private static String room(FreeTime time) {
    return time.start()
        .map(start -> ": say a free time, for example at " + start)
        .orElse(": no " + time.work().minutes() + " minutes are free that day");
  }
}
