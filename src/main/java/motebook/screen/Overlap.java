package motebook.screen;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.model.FreeTime;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.report.Wording;

/**
 * Other work of the same person that shares a minute with what is about to be logged.
 *
 * @param other the earliest of it
 * @param free the nearest start at which there is time for it; empty where the day has none
 * @param told both in words
 */
record Overlap(Work other, Optional<LocalTime> free, String told) {

  /**
   * What some work would overlap.
   *
   * @param except a session in whose place the work would come
   * @param now nothing to come is called free
   */
  static Optional<Overlap> of(Work work, Optional<Session> except, Book book, LocalDateTime now) {
    List<Work> others =
        book.sessionsOn(work.date()).stream()
            .filter(other -> except.map(session -> session.id() != other.id()).orElse(true))
            .map(Session::work)
            .filter(other -> other.person().equals(work.person()))
            .toList();
    FreeTime time = new FreeTime(work, others, now);
    boolean own = work.person().equals(book.settings().person());
    return time.clash()
        .map(other -> new Overlap(other, time.start(), told(other, own) + room(time)));
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
