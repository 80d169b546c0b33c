package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import motebook.model.Amount;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** What was done. */
final class Sessions {
  private static final long NONE = 0;
  private static final String BEHIND_ALL = "9999-12-31";

  private final Store store;
  private final Clock clock;

  /**
   * @param clock tells what is still to come, which is not offered as free time
   */
  Sessions(Store store, Clock clock) {
    this.store = store;
    this.clock = clock;
  }

  /** All that is on record of some days. */
  Logged between(LocalDate first, LocalDate last) {
    Soundness soundness = new Soundness(store, first);
    List<Session> sound = store.list("sessions-between", soundness::read, first, last);
    return new Logged(sound.stream().filter(Objects::nonNull).toList(), soundness.flawed());
  }

  Optional<Session> find(long id) {
    return store.first("session", Sessions::read, id);
  }

  /**
   * The session of that number.
   *
   * @throws Refusal if there is none
   */
  Session get(long id) {
    return find(id)
        .orElseThrow(() -> new Refusal("The book holds no session with the number " + id + "."));
  }

  Optional<Session> lastOf(long person) {
    return store.first("last-session-of", Sessions::read, person);
  }

  List<Session> recentOf(long person, int most) {
    return store.list("recent-sessions-of", Sessions::read, person, most);
  }

  List<Session> found(List<Wanted> words, Optional<Session> before, int most) {
    store.knowFolded();
    return store.list(
        "sessions-found",
        Sessions::read,
        before.map(session -> session.work().date().toString()).orElse(BEHIND_ALL),
        before.map(session -> session.work().startMinute()).orElse(0),
        before.map(Session::id).orElse(NONE),
        Wanted.json(words),
        most);
  }

  /** Columns of the view session_read: by number, since a long book has many rows to read. */
  static final class Column {
    static final int ID = 1;
    static final int DATE = 2;
    static final int START_MINUTE = 3;
    static final int MINUTES = 4;
    static final int OPERATION = 5;
    static final int MATERIAL = 6;
    static final int RESPIRATOR = 7;
    static final int SEAL_CHECKED = 8;
    static final int WORN_PERCENT = 9;
    static final int NOTE = 10;
    static final int PERSON = 12;
    static final int PLACE = 13;
    static final int CONTROLS = 14;
    static final int AMOUNTS = 15;

    /** Only where days are read. */
    static final int DOUBTED = 16;

    private Column() {}
  }

  static Session read(ResultSet row) throws SQLException {
    Work work =
        new Work(
            row.getString(Column.PERSON),
            row.getString(Column.PLACE),
            LocalDate.parse(row.getString(Column.DATE)),
            LocalTime.MIDNIGHT.plusMinutes(row.getInt(Column.START_MINUTE)),
            row.getInt(Column.MINUTES),
            row.getString(Column.OPERATION),
            Optional.ofNullable(row.getString(Column.MATERIAL)),
            Optional.ofNullable(row.getString(Column.CONTROLS))
                .map(Sessions::lines)
                .orElse(List.of()),
            mask(row),
            Optional.ofNullable(row.getString(Column.AMOUNTS))
                .map(Sessions::amounts)
                .orElse(List.of()),
            row.getString(Column.NOTE));
    return new Session(row.getLong(Column.ID), work);
  }

  private static List<String> lines(String text) {
    return Arrays.asList(text.split("\n", -1));
  }

  /** A line each: the finish, a tab, the millilitres. */
  private static List<Amount> amounts(String text) {
    return lines(text).stream()
        .map(line -> line.split("\t", -1))
        .map(cells -> new Amount(cells[0], Double.parseDouble(cells[1])))
        .toList();
  }

  private static Optional<MaskUse> mask(ResultSet row) throws SQLException {
    String respirator = row.getString(Column.RESPIRATOR);
    return respirator == null
        ? Optional.empty()
        : Optional.of(
            new MaskUse(
                respirator,
                row.getBoolean(Column.SEAL_CHECKED),
                row.getDouble(Column.WORN_PERCENT)));
  }

  /**
   * Writes work as a new session.
   *
   * @throws Refusal if it overlaps another session of the person
   */
  Session insert(Work work, Who who, ZoneId zone) {
    refuseOverlap(work, who, NONE);
    long id = store.number("session-insert", columns(work, who, zone).toArray());
    insertControls(id, work);
    insertAmounts(id, work);
    return new Session(id, who.named(work));
  }

  /** Puts other work in the place of a session; its zone is kept while its time is the same. */
  void update(Session old, Work work, Who who, ZoneId here) {
    refuseOverlap(work, who, old.id());
    boolean sameTime =
        work.date().equals(old.work().date()) && work.start().equals(old.work().start());
    ZoneId zone = sameTime ? zoneOf(old.id()) : here;
    List<Object> values = columns(work, who, zone);
    values.add(old.id());
    store.run("session-update", values.toArray());
    if (!work.controls().equals(old.work().controls())) {
      store.run("controls-delete", old.id());
      insertControls(old.id(), work);
    }
    if (!work.amounts().equals(old.work().amounts())) {
      store.run("amounts-delete", old.id());
      insertAmounts(old.id(), work);
    }
  }

  private ZoneId zoneOf(long id) {
    return ZoneId.of(store.first("session-zone", Row::text, id).orElseThrow());
  }

  void delete(Session session) {
    store.run("controls-delete", session.id());
    store.run("amounts-delete", session.id());
    store.run("session-delete", session.id());
  }

  /** Sessions to be written together, inside one write transaction. */
  SessionBatch batch(ZoneId zone) {
    return new SessionBatch(store, zone);
  }

  /**
   * Refuses work that shares a minute with a session of the person.
   *
   * @throws Refusal naming that session
   */
  void refuseOverlap(Work work, Who who) {
    refuseOverlap(work, who, NONE);
  }

  private void refuseOverlap(Work work, Who who, long except) {
    long person = who.person().id();
    if (overlaps(work, person, except)) {
      Overlaps.refuse(
          work,
          store.list("sessions-of-on", Sessions::read, person, work.date(), except),
          LocalDateTime.now(clock));
    }
  }

  private boolean overlaps(Work work, long person, long except) {
    return store.number(
            "any-overlap", person, work.date(), work.endMinute(), work.startMinute(), except)
        == 1;
  }

  private void insertControls(long id, Work work) {
    int position = 0;
    for (String control : work.controls()) {
      store.run("control-insert", id, position++, control);
    }
  }

  private void insertAmounts(long id, Work work) {
    int position = 0;
    for (Amount amount : work.amounts()) {
      store.run("amount-insert", id, position++, amount.finish(), amount.millilitres());
    }
  }

  static List<Object> columns(Work work, Who who, ZoneId zone) {
    return new ArrayList<>(
        Arrays.asList(
            who.person().id(),
            who.place().id(),
            work.date(),
            work.startMinute(),
            work.minutes(),
            zone.getId(),
            work.date().atTime(work.start()).atZone(zone).toInstant(),
            work.operation(),
            work.material(),
            work.mask().map(MaskUse::respirator),
            work.mask().map(mask -> mask.checked() ? 1 : 0),
            work.mask().map(MaskUse::wornPercent),
            work.note()));
  }
}
