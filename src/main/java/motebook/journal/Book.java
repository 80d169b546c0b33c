package motebook.journal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.LongConsumer;
import java.util.function.UnaryOperator;
import motebook.journal.Deed.Subject;
import motebook.model.Gear;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.model.Work;

/**
 * The logbook of one shop: one file, which several programs may have open at once.
 *
 * <p>Every change is written whole or not at all, is on the disk when the method returns, and can
 * be taken back. A method that cannot do what it was asked throws {@link Refusal} where the person
 * can mend it and {@link BookTrouble} where the file is at fault; nothing is written then. A book
 * may be shared by threads.
 */
public final class Book implements AutoCloseable {
  private final Store store;
  private final Clock clock;
  private final Copies copies;
  private final Changes changes;
  private final People people;
  private final Places places;
  private final Premises premises;
  private final Sessions sessions;
  private final Logging logging;
  private final Preferences preferences;
  private final Favourites favourites;
  private final Stopwatches stopwatches;
  private final Samples samples;
  private final SetAside setAside;
  private final OwnFinishes finishes;
  private final GearTables gear;
  private final Rack rack;
  private final Retiring retiring;
  private final Fits fits;
  private final Exchange exchange;

  private Book(Store store, Clock clock, Copies copies) {
    this.store = store;
    this.clock = clock;
    this.copies = copies;
    changes = new Changes(store, clock, copies);
    people = new People(store);
    places = new Places(store);
    premises = new Premises(changes, people, places);
    sessions = new Sessions(store, clock);
    logging = new Logging(store, sessions, people, places);
    preferences = new Preferences(store, people, places);
    favourites = new Favourites(store, changes);
    stopwatches = new Stopwatches(store, changes, people, logging, clock);
    samples = new Samples(store, changes, people, places);
    setAside = new SetAside(store, changes, people);
    finishes = new OwnFinishes(store, changes);
    Today today = new Today(clock);
    gear = GearTables.of(store);
    rack = new Rack(gear, changes, people, places, today);
    retiring = new Retiring(gear, changes, today);
    fits = new Fits(gear, changes, people, today);
    exchange = new Exchange(store, changes);
  }

  /**
   * Opens a book; where the file or its folder is missing or the file is empty, a fresh one is
   * begun, and a book of an older form is brought up to date after a verified copy.
   *
   * @param clock tells the day, the moment and the zone of what is written
   * @throws BookTrouble if the file cannot be used as a book
   */
  public static Book open(Path file, Clock clock) {
    return open(file, clock, Migrations.shipped());
  }

  static Book open(Path file, Clock clock, Migrations migrations) {
    Store store = Connections.open(BookFile.ready(file), Connections.PATIENCE);
    try {
      Leavings.clear(Copies.folder(store.file()), Copies.COPYING);
      Leavings.clear(store.file().getParent(), Restoring.RESTORING);
      Copies copies = new Copies(store);
      migrations.bringUpToDate(store, copies, LocalDate.now(clock));
      return new Book(store, clock, copies);
    } catch (RuntimeException | Error first) {
      closeAfter(first, store);
      throw first;
    }
  }

  private static void closeAfter(Throwable first, Store store) {
    try {
      store.close();
    } catch (RuntimeException later) {
      first.addSuppressed(later);
    }
  }

  /** The file, as an absolute path. */
  public Path file() {
    return store.file();
  }

  /** Who works in the shop, and in which places. */
  public Premises premises() {
    return premises;
  }

  /** What was changed, and the way back. */
  public Changes changes() {
    return changes;
  }

  /**
   * All that is on record of some days, both included: the sessions, and those that cannot be gone
   * by, which no other answer about days has.
   */
  public Logged loggedBetween(LocalDate first, LocalDate last) {
    return sessions.between(first, last);
  }

  /** Everyone's sessions of a day, by start, then by number. */
  public List<Session> sessionsOn(LocalDate day) {
    return sessions.between(day, day).sessions();
  }

  /** Everyone's sessions of some days, both included, by day, start and number. */
  public List<Session> sessionsBetween(LocalDate first, LocalDate last) {
    return sessions.between(first, last).sessions();
  }

  /** The session of that number. */
  public Optional<Session> session(long id) {
    return sessions.find(id);
  }

  /** How many sessions the book holds. */
  public long sessionCount() {
    return store.number("session-count");
  }

  /** Whether the book holds any session; takes no longer for a long book. */
  public boolean hasSessions() {
    return store.number("any-session") == 1;
  }

  /**
   * The latest session of a person, by date and start.
   *
   * @throws Refusal if there is no such person
   */
  public Optional<Session> lastSessionOf(String person) {
    return sessions.lastOf(people.known().idOf(person));
  }

  /**
   * The latest sessions of a person, newest first.
   *
   * @param most how many at most
   * @throws Refusal if there is no such person
   */
  public List<Session> recentSessionsOf(String person, int most) {
    return sessions.recentOf(people.known().idOf(person), most);
  }

  /**
   * Everyone's sessions in which every word stands, newest first; all sessions for no word.
   *
   * @param words what is looked for
   * @param before only sessions from before this one, to go on where an earlier answer ended
   * @param most how many at most
   */
  public List<Session> find(List<Wanted> words, Optional<Session> before, int most) {
    return sessions.found(words, before, most);
  }

  /** What the book assumes where nothing else is said. */
  public Settings settings() {
    return preferences.read();
  }

  /** The lines that are said often. */
  public Favourites favourites() {
    return favourites;
  }

  /** Measured air results. */
  public Samples samples() {
    return samples;
  }

  /** The work that is being timed. */
  public Stopwatches stopwatches() {
    return stopwatches;
  }

  /** The cautions that somebody has read and set aside for a day. */
  public SetAside setAside() {
    return setAside;
  }

  /** The finishes that the owner entered from data sheets. */
  public OwnFinishes finishes() {
    return finishes;
  }

  /** All that is known of masks and filters. */
  public Gear gear() {
    return gear.read();
  }

  /** Where masks and filters are added, changed and looked after. */
  public Rack rack() {
    return rack;
  }

  /** How masks and filters go. */
  public Retiring retiring() {
    return retiring;
  }

  /** Who is fit to wear what. */
  public Fits fits() {
    return fits;
  }

  /** The whole book out, and in again. */
  public Exchange exchange() {
    return exchange;
  }

  /**
   * Writes a session.
   *
   * @throws Refusal if it overlaps another session of the same person, or names somebody or a place
   *     that the book does not know
   */
  public Session log(Work work) {
    return changes.make(
        Deed.added(Subject.SESSION, "", "Logged " + Told.whole(work)),
        () -> logging.log(work, clock.getZone()));
  }

  /**
   * Writes many sessions as one change: all, or none.
   *
   * @param what the change in words, for the history
   * @throws Refusal as {@link #log}; it says which one, counted from 1
   */
  public List<Session> logAll(List<Work> works, String what) {
    return logAll(works, what, written -> {});
  }

  /**
   * The same, telling how far it has come.
   *
   * @param written told how many are written, now and then; all are taken back if one is refused
   */
  public List<Session> logAll(List<Work> works, String what, IntConsumer written) {
    return changes.make(
        Deed.added(Subject.SESSION, "", what),
        () -> logging.logAll(works, clock.getZone(), written));
  }

  /** What would keep works from being logged together; nothing is written. */
  public List<Hindrance> hindrances(List<Work> works) {
    return logging.hindrances(works);
  }

  /**
   * Puts other work in the place of a session; its number stays.
   *
   * @throws Refusal as {@link #log}, or if there is no such session
   */
  public Session amend(long id, Work work) {
    return changes.make(
        Deed.changed(Subject.SESSION, id, "Changed a session to " + Told.whole(work)),
        () -> logging.amend(sessions.get(id), work, clock.getZone()));
  }

  /**
   * Another respirator was worn in a session than it says; where it says none, all the time.
   *
   * @param checked whether its seal was checked; a check that is on record stays
   * @throws Refusal if there is no such session, or no such respirator on its day
   */
  public Session wore(long id, String respirator, boolean checked) {
    Work was = sessions.get(id).work();
    String worn = rack.respirator(respirator, was.date()).name();
    MaskUse use = was.mask().orElse(new MaskUse(worn, checked, 100)).of(worn);
    return amend(id, was.withMask(use.checked(checked || use.checked())));
  }

  /**
   * The seal of the respirator worn in a session was checked.
   *
   * @param held whether it held
   * @throws Refusal if there is no such session, or no respirator was worn in it
   */
  public Session sealChecked(long id, boolean held) {
    Work was = sessions.get(id).work();
    MaskUse use =
        was.mask().orElseThrow(() -> new Refusal("No respirator was worn in session " + id + "."));
    return amend(id, was.withMask(use.checked(held)));
  }

  /**
   * Deletes a session.
   *
   * @throws Refusal if there is none of that number
   */
  public void delete(long id) {
    Session session = sessions.get(id);
    changes.make(
        Deed.removed(Subject.SESSION, id, "Deleted " + Told.whole(session.work())),
        () -> sessions.delete(sessions.get(id)));
  }

  /**
   * Changes what the book assumes where nothing else is said.
   *
   * @param what the change in words, for the history
   * @throws Refusal if the person or the place is unknown
   */
  public void change(Settings settings, String what) {
    changes.make(Deed.changed(Subject.SETTING, "", what), () -> preferences.write(settings));
  }

  /**
   * The same together with the name of the book's own person and the air of its usual place, as one
   * change.
   *
   * @param name what the person is called from now on
   * @param air the figures of the place on all its days, from the figures as they were; empty where
   *     they stay
   * @throws Refusal as {@link #change(Settings, String)}, {@link Premises#renamePerson} and {@link
   *     Premises#changePlace}
   */
  public void change(
      Settings settings, String name, Optional<UnaryOperator<Surroundings>> air, String what) {
    changes.make(
        Deed.changed(Subject.SETTING, "", what),
        () -> {
          preferences.write(settings);
          if (!name.equals(settings.person())) {
            people.rename(settings.person(), name);
          }
          air.ifPresent(figures -> places.change(settings.place(), figures, Optional.empty()));
        });
  }

  /** Where rows that are not what the history holds of them are put right. */
  public Mending mending() {
    return new Mending(store, changes);
  }

  /** What is wrong with the book, a sentence each; empty when it is sound. */
  public List<String> verify() {
    return Checkup.problems(store);
  }

  /**
   * Makes a verified copy of the book.
   *
   * @param target a file that is not there yet or is an earlier copy, or a folder, where the copy
   *     is named by the day; none for the folder beside the book
   * @param copied told now and then how many bytes are written
   * @return the file of the copy
   * @throws Refusal if the file is there already and is no earlier copy of a book
   * @throws BookTrouble if the copy cannot be made
   */
  public Path backup(Optional<Path> target, LongConsumer copied) {
    return copies.backup(target, LocalDate.now(clock), copied);
  }

  /** A number that differs from an earlier one when another program has written in between. */
  public long dataVersion() {
    return store.number("data-version");
  }

  @Override
  public void close() {
    store.close();
  }
}
