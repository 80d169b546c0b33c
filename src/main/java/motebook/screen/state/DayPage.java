package motebook.screen.state;

import java.time.LocalDate;
import java.util.List;
import motebook.desk.Air;
import motebook.desk.DayReport;
import motebook.journal.Settings;
import motebook.model.Session;

/**
 * Everything that is shown of one day of one person.
 *
 * @param report the reckoned day
 * @param air the air of each place, the person's own places first
 * @param sessions everybody's sessions of the day, by start
 * @param people everybody in the book
 * @param settings the owner's choices
 * @param bookEmpty whether the book holds no session at all
 */
public record DayPage(
    DayReport report,
    List<Air> air,
    List<Session> sessions,
    List<String> people,
    Settings settings,
    boolean bookEmpty) {
  public DayPage {
    air = List.copyOf(air);
    sessions = List.copyOf(sessions);
    people = List.copyOf(people);
  }

  /** The day. */
  public LocalDate date() {
    return report.date();
  }

  /** Whose. */
  public String person() {
    return report.person();
  }
}
