package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import motebook.journal.Book;
import motebook.model.Session;
import motebook.reference.Reference;

/** Puts the questions of this package to an open book. */
public final class Ledger {
  private final Book book;
  private final Reference reference;

  /** Asks one book, with the shipped tables. */
  public Ledger(Book book) {
    this.book = book;
    this.reference = Reference.shipped();
  }

  /** What a person breathed on a day. */
  public DayReport day(LocalDate date, String person) {
    return Day.report(reckoning(date, person));
  }

  /** A person's day, source by source. */
  public DayReckoning reckoning(LocalDate date, String person) {
    return new DayReckoning(date, person, book.sessionsOn(date), shop(date));
  }

  /** What a person breathed in the week that a day lies in. */
  public WeekReport week(LocalDate day, String person) {
    LocalDate monday = Week.monday(day);
    Map<LocalDate, List<Session>> byDate =
        book.sessionsBetween(monday, monday.plusDays(6)).stream()
            .collect(Collectors.groupingBy(session -> session.work().date()));
    return Week.report(
        monday,
        person,
        date -> new DayReckoning(date, person, byDate.getOrDefault(date, List.of()), shop(date)));
  }

  /** The shop as it is on a day. */
  public Shop shop(LocalDate date) {
    return Shop.of(reference, book.settings(), book.places(date), CreditRule.NO_RESPIRATORS);
  }
}
