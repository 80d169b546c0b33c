package motebook.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.journal.Flawed;
import motebook.model.MinuteOfDay;
import motebook.model.Text;

/** Sessions that cannot be gone by, and what that means for the figures beside them. */
public final class LeftOut {
  /** Said once, after the sessions. */
  public static final String MEANS = "What is left out is in no figure here: each may be too low.";

  private static final String MENDING =
      " The command verify --mend puts it back, verify --keep keeps it.";

  private LeftOut() {}

  /** A sentence each, and what it means; nothing where nothing is left out. */
  public static List<String> sentences(List<Flawed> sessions) {
    List<String> said = new java.util.ArrayList<>();
    sessions.forEach(session -> said.add(sentence(session)));
    if (!said.isEmpty()) {
      said.add(MEANS);
    }
    return said;
  }

  /** {@code Session 4 is left out. …}: which, without why; empty where nothing is left out. */
  public static Optional<String> briefly(List<Flawed> sessions) {
    String which =
        sessions.stream().map(session -> "" + session.id()).collect(Collectors.joining(", "));
    return sessions.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (sessions.size() == 1 ? "Session " + which + " is" : "Sessions " + which + " are")
                + " left out. "
                + MEANS);
  }

  private static String sentence(Flawed session) {
    return which(session)
        + switch (session.reason()) {
          case DAMAGED ->
              " is damaged and left out. " + String.join(" ", session.details()) + MENDING;
          case UNKNOWN ->
              " is left out: this Motebook does not know the "
                  + String.join(", the ", session.details())
                  + ".";
          case IMPOSSIBLE -> " is left out: what stands in it can be no session.";
        };
  }

  private static String which(Flawed session) {
    return "Session "
        + session.id()
        + " ("
        + session.date()
        + time(session)
        + session.minutes()
        + " min of "
        + Text.clean(session.operation()).replace('-', ' ')
        + session.person().map(person -> " by " + person).orElse("")
        + ")";
  }

  private static String time(Flawed session) {
    int start = session.startMinute();
    return start < 0 || start > 24 * 60 ? ", " : " " + MinuteOfDay.told(start) + ", ";
  }

  static List<Map<String, Object>> objects(List<Flawed> sessions) {
    return sessions.stream()
        .map(
            session ->
                Json.object(
                    "id", session.id(),
                    "date", session.date().toString(),
                    "reason", session.reason().name().toLowerCase(java.util.Locale.ROOT),
                    "details", session.details()))
        .toList();
  }
}
