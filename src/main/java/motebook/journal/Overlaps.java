package motebook.journal;

import java.util.List;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** Nobody is in two places at once. Pure. */
final class Overlaps {
  private static final int DAY = 24 * 60;

  private Overlaps() {}

  /**
   * Refuses work that shares a minute with another session of the same person.
   *
   * @param others that person's sessions of the day, by start
   */
  static void refuse(Work work, List<Session> others) {
    Optional<Session> other = others.stream().filter(s -> s.work().overlaps(work)).findFirst();
    if (other.isPresent()) {
      throw new Refusal(
          "Overlaps session "
              + other.get().id()
              + " of "
              + other.get().work().person()
              + ", "
              + Told.stretch(other.get().work())
              + "; "
              + free(work, others)
              + ".");
    }
  }

  private static String free(Work work, List<Session> others) {
    int start = work.startMinute();
    for (Session session : others) {
      if (session.work().startMinute() < start + work.minutes()) {
        start = Math.max(start, session.work().endMinute());
      }
    }
    return start + work.minutes() <= DAY
        ? "free from " + Told.minute(start)
        : "no " + work.minutes() + " minutes are free later that day";
  }
}
