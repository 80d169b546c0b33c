package motebook.screen.state;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.desk.DayReport.SessionLine;

/**
 * The day that is looked at, and how far one has got in it.
 *
 * @param date the day asked for
 * @param person whose; empty for the book's own person until the book is read
 * @param page what was read; it may still be of another day or person
 * @param chosen index of the session that is pointed at
 * @param place index of the place whose air is shown
 * @param top first line shown of the notes or the help
 * @param seek start of the session that is to be pointed at when the day is read, or −1
 */
public record Sheet(
    LocalDate date,
    String person,
    Optional<DayPage> page,
    int chosen,
    int place,
    int top,
    int seek) {

  // Held at the last session when the day has been read.
  private static final int LAST = Integer.MAX_VALUE;

  static Sheet of(LocalDate date) {
    return new Sheet(date, "", Optional.empty(), LAST, 0, 0, -1);
  }

  /** What was read of exactly this day and person, if it has come already. */
  public Optional<DayPage> current() {
    return page.filter(p -> p.date().equals(date) && (person.isEmpty() || isOf(p)));
  }

  private boolean isOf(DayPage other) {
    return other.person().equals(person);
  }

  /** Everybody in the book, as far as it has been read. */
  public List<String> people() {
    return page.map(DayPage::people).orElse(List.of());
  }

  Sheet on(LocalDate other) {
    return new Sheet(other, person, page, LAST, 0, 0, -1);
  }

  Sheet of(String other) {
    return new Sheet(date, other, page, LAST, 0, 0, -1);
  }

  /**
   * With a page just read; one of another day or person has come too late. Somebody whom the book
   * no longer knows gives way to whom it names: they were renamed, or taken back.
   */
  Sheet with(DayPage fresh) {
    boolean gone = !fresh.people().contains(person);
    boolean wanted = fresh.date().equals(date) && (gone || isOf(fresh));
    return wanted
        ? new Sheet(date, fresh.person(), Optional.of(fresh), chosen, place, top, seek)
            .settled(fresh)
            .recalling(fresh.person(), page.map(p -> p.recentOf(fresh.person())).orElse(List.of()))
        : this;
  }

  /** With the lines that somebody said last, as far as it is theirs. */
  Sheet recalling(String whose, List<String> recent) {
    Optional<DayPage> told = page.map(p -> p.person().equals(whose) ? p.recalling(recent) : p);
    return new Sheet(date, person, told, chosen, place, top, seek);
  }

  private Sheet settled(DayPage fresh) {
    int last = Math.max(0, fresh.report().sessions().size() - 1);
    int places = Math.max(1, fresh.air().size());
    int sought = indexOf(seek, fresh);
    int at = sought >= 0 ? sought : Math.min(chosen, last);
    return new Sheet(date, person, page, at, Math.floorMod(place, places), top, -1);
  }

  private static int indexOf(int startMinute, DayPage page) {
    List<SessionLine> own = page.report().sessions();
    for (int index = 0; index < own.size(); index++) {
      if (own.get(index).source().session().work().startMinute() == startMinute) {
        return index;
      }
    }
    return -1;
  }

  Sheet pointing(int session) {
    int last = current().map(p -> p.report().sessions().size()).orElse(0) - 1;
    return new Sheet(date, person, page, Math.max(0, Math.min(session, last)), place, top, seek);
  }

  /** Pointing at the session that began at a minute of the day, once the day has been read. */
  Sheet seeking(int startMinute) {
    return new Sheet(date, person, page, LAST, place, top, startMinute);
  }

  Sheet nextPlace() {
    int places = Math.max(1, current().map(p -> p.air().size()).orElse(0));
    return new Sheet(date, person, page, chosen, (place + 1) % places, top, seek);
  }

  Sheet from(int line) {
    return new Sheet(date, person, page, chosen, place, Math.max(0, line), seek);
  }
}
