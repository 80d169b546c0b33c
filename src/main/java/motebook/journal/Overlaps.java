package motebook.journal;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.model.FreeTime;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** Nobody is in two places at once. Pure. */
final class Overlaps {
  private Overlaps() {}

  /**
   * Refuses work that shares a minute with another session of the same person.
   *
   * @param others that person's sessions of the day, by start
   * @param now no later time is called free
   */
  static void refuse(Work work, List<Session> others, LocalDateTime now) {
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
              + free(new FreeTime(work, others.stream().map(Session::work).toList(), now))
              + ".");
    }
  }

  private static String free(FreeTime time) {
    int minutes = time.work().minutes();
    String stretch = minutes == 1 ? "1 minute is" : minutes + " minutes are";
    return time.start()
        .map(start -> stretch + " free at " + start + ", so say: at " + start)
        .orElse("no " + minutes + " minutes are free that day");
  }
}
