package motebook.screen.state;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.desk.Air;
import motebook.desk.DayReport;
import motebook.desk.Timing;
import motebook.journal.Settings;
import motebook.model.Favourite;
import motebook.model.Session;
import motebook.reference.Caution;

/**
 * Everything that is shown of one day of one person.
 *
 * @param report the reckoned day
 * @param air the air of each place, the person's own places first
 * @param sessions everybody's sessions of the day, by start
 * @param people everybody in the book
 * @param settings the owner's choices
 * @param ready what lies ready at the bench
 * @param bookEmpty whether the book holds no session at all
 */
public record DayPage(
    DayReport report,
    List<Air> air,
    List<Session> sessions,
    List<String> people,
    Settings settings,
    Ready ready,
    boolean bookEmpty) {
  public DayPage {
    air = List.copyOf(air);
    sessions = List.copyOf(sessions);
    people = List.copyOf(people);
  }

  DayPage recalling(List<String> recent) {
    return new DayPage(report, air, sessions, people, settings, ready.recalling(recent), bookEmpty);
  }

  /** The lines that somebody said last, as far as they are known. */
  List<String> recentOf(String whose) {
    return person().equals(whose) ? ready.recent() : List.of();
  }

  /** The lines that are said often. */
  public List<Favourite> favourites() {
    return ready.favourites();
  }

  /** The stopwatch of the person, if one is under way and the day is today. */
  public Optional<Timing> timing() {
    return ready.timing();
  }

  /** The cautions that the day calls for and that are not set aside. */
  public List<Caution> cautions() {
    return report.cautions().stream().filter(c -> !ready.setAside().contains(c.key())).toList();
  }

  /** The session that stands at an index of the list of the person's own; none that runs still. */
  public Optional<Session> own(int index) {
    return index < 0 || index >= report.sessions().size()
        ? Optional.empty()
        : Optional.of(report.sessions().get(index).source().session()).filter(s -> s.id() > 0);
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
