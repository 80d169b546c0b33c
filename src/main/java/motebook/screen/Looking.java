package motebook.screen;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.desk.Air;
import motebook.desk.Day;
import motebook.desk.DayReckoning;
import motebook.desk.DayReport;
import motebook.desk.Finder;
import motebook.desk.Timing;
import motebook.entry.Days;
import motebook.journal.Book;
import motebook.journal.Logged;
import motebook.journal.Settings;
import motebook.model.Person;
import motebook.model.Session;
import motebook.reference.Reference;
import motebook.screen.state.DayPage;
import motebook.screen.state.Fault;
import motebook.screen.state.Found;
import motebook.screen.state.Message;
import motebook.screen.state.Ready;
import motebook.screen.state.Task;
import motebook.screen.state.Undoable;
import motebook.screen.state.WeekPage;

/** Reads days, weeks and earlier work; writes nothing. */
final class Looking {
  private static final int RECENT = 200;

  private final Book book;
  private final Clock clock;
  private final Lines lines;
  private final Watch watch;
  private long seen;

  Looking(Book book, Clock clock, Lines lines) {
    this.book = book;
    this.clock = clock;
    this.lines = lines;
    this.watch = new Watch(book, clock, lines);
    this.seen = book.dataVersion();
  }

  Message day(LocalDate date, String person) {
    Settings settings = book.settings();
    List<String> people = people();
    String whose = people.contains(person) ? person : settings.person();
    Logged onRecord = book.loggedBetween(date, date);
    List<Session> logged = onRecord.sessions();
    Optional<Timing> timing =
        date.equals(LocalDate.now(clock)) ? watch.timing(whose, logged) : Optional.empty();
    List<Session> sessions = timing.map(t -> Timing.with(logged, on(date, t))).orElse(logged);
    DayReckoning day =
        new DayReckoning(
            date, whose, new Logged(sessions, onRecord.leftOut()), lines.ledger().shop(date));
    boolean empty = sessions.isEmpty() && !book.hasSessions();
    DayReport report = Day.report(day, other -> timed(other, timing));
    // found here, where the book may be read, and not where it is drawn
    report.sessions().forEach(line -> line.credit().remedy());
    return new Message.DayRead(
        new DayPage(
            report,
            Air.of(day),
            sessions,
            people,
            settings,
            new Ready(
                book.favourites().all(),
                List.of(),
                book.setAside().on(date, whose),
                timing,
                book.stopwatches().of(whose).isPresent()),
            empty));
  }

  /** Everybody's sessions of a date, and what a stopwatch has timed on it. */
  private List<Session> timed(LocalDate date, Optional<Timing> timing) {
    List<Session> logged = book.sessionsOn(date);
    return timing.map(t -> Timing.with(logged, on(date, t))).orElse(logged);
  }

  private List<String> people() {
    return book.premises().people().stream().map(Person::name).toList();
  }

  private static List<motebook.model.Work> on(LocalDate date, Timing timing) {
    return timing.works().stream().filter(work -> work.date().equals(date)).toList();
  }

  /** What somebody said last, which takes longer than their day. */
  Message habits(Task.ReadHabits of) {
    List<String> recent = lines.habits(lines.scene(of.person())).recent();
    return new Message.HabitsRead(of.person(), recent);
  }

  /** The day anew if another program has written to the book since. */
  Optional<Message> again(Task.LookAgain look) {
    long version = book.dataVersion();
    if (version == seen) {
      return Optional.empty();
    }
    seen = version;
    lines.forget();
    return Optional.of(day(look.date(), look.person()));
  }

  Message week(Task.ReadWeek week) {
    String person = people().contains(week.person()) ? week.person() : book.settings().person();
    return new Message.WeekRead(
        new WeekPage(
            lines.ledger().weeks(week.monday(), person, WeekPage.COUNT),
            lines.ledger().review(week.monday(), person)));
  }

  Message evidence() {
    return new Message.EvidenceRead(lines.ledger().evidence());
  }

  Message undoable() {
    return new Message.UndoFound(last(book));
  }

  static Optional<Undoable> last(Book book) {
    return book.changes().history(RECENT).stream()
        .filter(change -> change.undoes().isEmpty() && !change.undone())
        .findFirst()
        .map(change -> new Undoable(change.id(), change.what()));
  }

  Message goTo(Task.GoTo to) {
    Optional<LocalDate> day = Days.parse(to.text(), LocalDate.now(clock));
    return day.<Message>map(Message.WentTo::new)
        .orElseGet(() -> new Message.PromptRefused(to.text(), new Fault(noDay(to.text()), -1, -1)));
  }

  private static String noDay(String text) {
    return Days.isAmbiguous(text)
        ? "\"" + text + "\" could be day and month or month and day: say 2026-03-02 or 2.3."
        : "\""
            + text
            + "\" is no day: say 2026-03-02, 2.3., yesterday, last tuesday or 3 weeks ago.";
  }

  Message find(Task.Find find) {
    return new Message.SessionsFound(
        find, Finder.find(book, Reference.shipped(), find.words(), find.before(), Found.AT_ONCE));
  }
}
