package motebook.journal;

import java.util.List;
import motebook.model.Session;

/**
 * What is on record of some days.
 *
 * @param sessions everyone's sessions, by day, start and number
 * @param leftOut sessions that cannot be gone by, in the same order
 */
public record Logged(List<Session> sessions, List<Flawed> leftOut) {
  public Logged {
    sessions = List.copyOf(sessions);
    leftOut = List.copyOf(leftOut);
  }
}
