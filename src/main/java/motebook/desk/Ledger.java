package motebook.desk;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import motebook.entry.Scene;
import motebook.journal.Book;
import motebook.journal.Logged;
import motebook.journal.Settings;
import motebook.model.Gear;
import motebook.model.OwnFinish;
import motebook.model.Sample;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Reference;

/** Puts the questions of this package to an open book. */
public final class Ledger {
  private final Book book;
  private final Reference reference;
  private final boolean learns;
  private Learned learned = Learned.NOTHING;
  private List<Long> learnedAt = List.of();

  /** Asks one book, with the shipped tables. */
  public Ledger(Book book) {
    this(book, true);
  }

  /**
   * Asks one book, with the shipped tables.
   *
   * @param learns whether estimates learn from the book's samples
   */
  public Ledger(Book book, boolean learns) {
    this.book = book;
    this.reference = Reference.shipped();
    this.learns = learns;
  }

  /** What a person breathed on a day. */
  public DayReport day(LocalDate date, String person) {
    return Day.report(reckoning(date, person), book::sessionsOn);
  }

  /**
   * What a line is read against.
   *
   * @param now the time at which it is said
   * @param person who is meant where nobody is named; empty for the book's own
   */
  public Scene scene(LocalDateTime now, String person) {
    Settings settings = book.settings();
    return new Scene(
        now,
        person.isEmpty() ? settings.person() : person,
        settings.place(),
        book.premises().people(),
        book.premises()::places,
        book.rack().respiratorNames(),
        reference,
        this::finishes,
        false,
        false);
  }

  /** What some work would make of its day; nothing is written. */
  public PlanReport plan(Work work) {
    Logged logged = book.loggedBetween(work.date(), work.date());
    return Plan.report(work, logged, shop(work.date()), book::sessionsOn);
  }

  /** A person's day, source by source. */
  public DayReckoning reckoning(LocalDate date, String person) {
    return new DayReckoning(date, person, book.loggedBetween(date, date), shop(date));
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
    Logged logged = book.loggedBetween(firstMonday.minusDays(1), last.plusDays(1));
    Care lastCare = care(last);
    CreditRule credits = lastCare.credits();
    ShopDays shops = new ShopDays(book, firstMonday, last, day -> shop(day, credits));
    return new Reviews(
        person,
        logged,
        shops::on,
        monday ->
            (monday.equals(lastMonday) ? lastCare : care(monday.plusDays(6))).week(monday, person));
  }

  /**
   * What every day of everybody in a stretch of time is estimated at, in order, from one reading of
   * the book; each day's air is reckoned once for all who were in it.
   */
  public void everyDay(LocalDate first, LocalDate last, Consumer<DayEstimate> each) {
    Finishes finishes = finishes();
    Set<LocalDate> finishedOn = book.finishes().days();
    Gear gear = book.gear();
    CareRules rules = CareRules.of(book.settings().figures());
    ShopDays shops =
        new ShopDays(
            book, first, last, day -> shop(day, CreditRule.OUTSIDE_ONLY).finishing(finishes));
    new EveryDay(
            book::sessionsBetween,
            day -> day.isBefore(first) ? shop(day, CreditRule.OUTSIDE_ONLY) : shops.on(day),
            (past, today) ->
                new Care(gear, past, new PastVapour(past, () -> finishedOn), rules, today)
                    .credits())
        .tell(first, last, each);
  }

  /** The masks and filters as they are at the end of a day. */
  public Care care(LocalDate today) {
    Past past = new Past();
    return new Care(
        book.gear(),
        past,
        new PastVapour(past, book.finishes()::days),
        CareRules.of(book.settings().figures()),
        today);
  }

  /** What is due on a day. */
  public DueReport due(LocalDate today) {
    return care(today).due();
  }

  /** A finish of the owner's own, with what its data sheet leaves out. */
  public Finish own(OwnFinish sheet) {
    Finishes all = finishes();
    return all.finish(Finishes.shipped().key(sheet.name()));
  }

  /** The finishes, the owner's own among them. */
  public Finishes finishes() {
    return Finishes.shipped().with(book.finishes().all());
  }

  /** The shop as it is on a day. */
  public Shop shop(LocalDate date) {
    return shop(date, care(date).credits());
  }

  private Shop shop(LocalDate date, CreditRule credits) {
    return published(date, credits).with(learned());
  }

  private Shop published(LocalDate date, CreditRule credits) {
    return Shop.of(
        reference, book.settings(), book.premises().places(date), credits, this::finishes);
  }

  /** The book's own past, each day's shop read once. */
  private final class Past implements History {
    private final Map<LocalDate, Shop> shops = new HashMap<>();

    @Override
    public List<Session> between(LocalDate first, LocalDate last) {
      return book.sessionsBetween(first, last);
    }

    @Override
    public Shop shop(LocalDate day) {
      return shops.computeIfAbsent(day, d -> Ledger.this.shop(d, CreditRule.OUTSIDE_ONLY));
    }
  }

  /** What the samples say, and how each agrees with the rest. */
  public Evidence evidence() {
    Learned known = learned();
    return Evidence.of(
        book.samples().all(),
        known,
        reference,
        book.settings(),
        sample -> reckoning(sample, known));
  }

  /** What some samples more would teach; nothing is written. */
  public Teaching teaching(List<Sample> more) {
    List<Sample> all = new ArrayList<>(book.samples().all());
    all.addAll(more);
    LocalDate newest = more.stream().map(Sample::date).max(LocalDate::compareTo).orElseThrow();
    return Teaching.of(
        more,
        learned(),
        learn(all),
        reference,
        book.sessionsBetween(newest.minusYears(1), newest.plusYears(1)),
        this::reckoning);
  }

  private DayReckoning reckoning(Sample sample, Learned known) {
    return new DayReckoning(
        sample.date(),
        sample.person(),
        book.sessionsOn(sample.date()),
        published(sample.date(), CreditRule.OUTSIDE_ONLY).with(known));
  }

  /** What the book's samples taught; reckoned anew only when the book has changed. */
  private synchronized Learned learned() {
    if (!learns) {
      return Learned.NOTHING;
    }
    // A copy that took the book's place may end with a change of the same number.
    List<Long> newest = List.of(book.changes().newest(), book.dataVersion());
    if (!newest.equals(learnedAt)) {
      learned = learn(book.samples().all());
      learnedAt = newest;
    }
    return learned;
  }

  private Learned learn(List<Sample> samples) {
    if (samples.isEmpty()) {
      return Learned.NOTHING;
    }
    Map<LocalDate, List<Session>> byDate =
        new HashMap<>(
            book.samples().sessionsOnSampledDays().stream()
                .collect(Collectors.groupingBy(session -> session.work().date())));
    List<LocalDate> days = samples.stream().map(Sample::date).sorted().toList();
    ShopDays shops =
        new ShopDays(
            book,
            days.get(0),
            days.get(days.size() - 1),
            day -> published(day, CreditRule.OUTSIDE_ONLY));
    Map<LocalDate, DayWork> works = new HashMap<>();
    return Learned.from(
        samples,
        sample ->
            new DayReckoning(
                sample.person(),
                works.computeIfAbsent(
                    sample.date(),
                    day ->
                        DayWork.of(
                            day, byDate.computeIfAbsent(day, book::sessionsOn), shops.on(day)))));
  }
}
