package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
    return weeks(day, person, 1).last();
  }

  /**
   * What a person breathed in the week that a day lies in and the weeks before it.
   *
   * @param count how many weeks, at least 1
   */
  public Weeks weeks(LocalDate day, String person, int count) {
    LocalDate last = Week.monday(day);
    LocalDate first = last.minusWeeks(count - 1L);
    Reviews weeks = between(first, last, person);
    return new Weeks(
        IntStream.range(0, count).mapToObj(first::plusWeeks).map(weeks::report).toList());
  }

  /** All there is to say of the week that a day lies in. */
  public WeekReview review(LocalDate day, String person) {
    LocalDate monday = Week.monday(day);
    return reviews(monday, monday, person).review(monday);
  }

  /**
   * The weeks of a stretch of time, to be asked one by one; what came before is read as far as
   * their trends need it.
   *
   * @param firstMonday the first week
   * @param lastMonday the last week
   */
  public Reviews reviews(LocalDate firstMonday, LocalDate lastMonday, String person) {
    return between(firstMonday.minusWeeks(Trend.YEAR - 1L), lastMonday, person);
  }

  private Reviews between(LocalDate firstMonday, LocalDate lastMonday, String person) {
    LocalDate last = lastMonday.plusDays(6);
    Map<LocalDate, List<Session>> byDate =
        book.sessionsBetween(firstMonday, last).stream()
            .collect(Collectors.groupingBy(session -> session.work().date()));
    ShopDays shops = new ShopDays(book, firstMonday, last, this::shop);
    return new Reviews(person, byDate, shops::on);
  }

  /** The shop as it is on a day. */
  public Shop shop(LocalDate date) {
    return Shop.of(reference, book.settings(), book.places(date), CreditRule.NO_RESPIRATORS);
  }
}
