package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Element;
import motebook.model.FitRecord;
import motebook.model.Respirator;
import motebook.model.Sample;
import motebook.model.Scheme;
import motebook.model.ShopFilter;
import motebook.model.Surroundings;
import motebook.model.Upkeep;

/**
 * A book of many years of a shop of three, the same each time it is made: 19 sessions on every
 * weekday, a mask each with filters changed every four months, a collector and an air cleaner, and
 * measured samples. The last days are the same however many years come before them.
 */
public final class LongBook {
  /** The last day of every such book, a Friday. */
  public static final LocalDate LAST = LocalDate.of(2026, 11, 20);

  /** Everyone in it; the first is the book's own person. */
  public static final List<String> PEOPLE = List.of("me", "Ana", "Bo");

  private static final int A_DAY = 19;
  private static final List<List<String>> JOBS =
      List.of(
          List.of("orbital-sanding", "oak", "tool-vacuum"),
          List.of("table-saw", "oak", "collector"),
          List.of("assembly", "oak"),
          List.of("planer", "pine", "collector"),
          List.of("hand-router", "mdf", "tool-vacuum", "air-cleaner"),
          List.of("block-sanding", "pine"),
          List.of("sweeping", "unknown", "damp-sweeping"),
          List.of("mitre-saw", "plywood", "tool-vacuum"),
          List.of("lathe-turning", "beech"),
          List.of("drilling", "mdf"),
          List.of("orbital-sanding", "mdf", "tool-vacuum", "doors-open"));

  private final Book book;
  private final LocalDate first;

  private LongBook(Book book, LocalDate first) {
    this.book = book;
    this.first = first;
  }

  /**
   * Makes a book.
   *
   * @param sessions how many; 4,940 fill a year
   * @param samples how many measured results, one on each of the last so many weekdays
   */
  public static void write(Path file, int sessions, int samples) {
    try (Book book = Book.open(file, clock())) {
      LongBook made = new LongBook(book, day((sessions - 1) / A_DAY));
      made.masks();
      made.filters();
      made.measured(samples);
    }
    try (Connection connection = Connections.connect(file, Connections.PATIENCE)) {
      new Rows(connection).fill(sessions);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Reads the rows of every session and leaves them be: what SQLite needs alone, names, controls
   * and amounts among them.
   *
   * @return how many cells there were
   */
  public static long readThrough(Path file) {
    long cells = 0;
    try (Connection connection = Connections.connect(file, Connections.PATIENCE);
        PreparedStatement query = connection.prepareStatement(Queries.named("sessions-between"))) {
      Rows.bind(query, "1900-01-01", LAST.toString());
      try (ResultSet row = query.executeQuery()) {
        int columns = row.getMetaData().getColumnCount();
        while (row.next()) {
          for (int column = 1; column <= columns; column++) {
            cells += row.getObject(column) == null ? 0 : 1;
          }
        }
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return cells;
  }

  /** The evening of the last day. */
  public static Clock clock() {
    return Clock.fixed(LAST.atTime(18, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  }

  /** The weekday that lies so many weekdays before the last one. */
  private static LocalDate day(int back) {
    return LAST.minusWeeks(back / 5).minusDays(back % 5);
  }

  private void masks() {
    PEOPLE.subList(1, PEOPLE.size()).forEach(book.premises()::addPerson);
    for (String person : PEOPLE) {
      String mask = mask(person);
      book.rack()
          .add(
              new Respirator(
                  0,
                  mask,
                  Scheme.OSHA,
                  "air-purifying",
                  "half mask",
                  Optional.empty(),
                  Optional.empty(),
                  List.of(person),
                  Optional.empty()));
      book.fits().note(new FitRecord.Medical(0, person, first));
      book.rack().add(element(person, first));
      for (LocalDate on = first.plusMonths(4); on.isBefore(LAST); on = on.plusMonths(4)) {
        book.rack().change("filters " + person, on);
        if (on.getMonthValue() < 5) {
          fitTest(person, on);
        }
      }
    }
  }

  private static String mask(String person) {
    return "half mask " + person;
  }

  private static Element element(String person, LocalDate from) {
    return new Element(
        0,
        "filters " + person,
        mask(person),
        "p100",
        true,
        from,
        Optional.of(from),
        Optional.empty(),
        OptionalDouble.of(100),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  private void fitTest(String person, LocalDate on) {
    FitRecord.Method passed = new FitRecord.Qualitative("saccharin", true);
    book.fits().note(new FitRecord.FitTest(0, mask(person), person, on, passed));
  }

  private void filters() {
    book.premises().changePlace("shop", LongBook::cleaned, Optional.empty(), "An air cleaner");
    for (String on : List.of("collector", "air-cleaner")) {
      book.rack()
          .add(
              new ShopFilter(
                  0,
                  "filter " + on,
                  on,
                  "shop",
                  first,
                  OptionalDouble.of(40),
                  OptionalDouble.of(1000),
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  Optional.empty()));
      upkeep(on, Upkeep.What.CLEANED, 2);
      upkeep(on, Upkeep.What.REPLACED, 12);
    }
  }

  private static Surroundings cleaned(Surroundings shop) {
    Surroundings.Indoors room = (Surroundings.Indoors) shop;
    return new Surroundings.Indoors(
        room.volumeM3(),
        room.airChangesPerHour(),
        room.openAirChangesPerHour(),
        room.airSpeedMPerMin(),
        OptionalDouble.of(10),
        OptionalDouble.empty(),
        30);
  }

  private void upkeep(String on, Upkeep.What what, int months) {
    for (LocalDate day = LAST.minusMonths(1); day.isAfter(first); day = day.minusMonths(months)) {
      book.rack()
          .note(new Upkeep(0, "filter " + on, day, Optional.empty(), what, OptionalDouble.empty()));
    }
  }

  // Three a day at most lie in one session each; figures that wander by a factor of four.
  private void measured(int samples) {
    List<Sample> all = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      int hour = 7 + i % 4;
      all.add(
          new Sample(
              0,
              PEOPLE.get(i % PEOPLE.size()),
              day(i),
              hour * 60,
              hour * 60 + 90 + 30 * (i % 3),
              i % 5 == 0 ? "respirable" : "inhalable",
              Sample.Kind.GRAVIMETRIC,
              new Sample.Told(
                  (i % 5 == 0 ? 0.3 : 2.0) * Math.pow(2, (i * 7 % 13 - 6) / 6.0), i % 11 == 0),
              0.15,
              ""));
    }
    if (!all.isEmpty()) {
      book.samples().add(all, "Measured");
    }
  }

  /** Writes the sessions as one change, row by row without a question in between. */
  private static final class Rows {
    private final Connection connection;

    Rows(Connection connection) {
      this.connection = connection;
    }

    void fill(int sessions) throws SQLException {
      connection.setAutoCommit(false);
      long change =
          number(
              "change-begin",
              LAST + "T18:00:00.000Z",
              "Filled the book",
              null,
              "added",
              "session",
              null);
      put("change-open", change);
      try (PreparedStatement session = prepared("session-insert");
          PreparedStatement control = prepared("control-insert");
          PreparedStatement amount = prepared("amount-insert")) {
        for (int i = sessions - 1; i >= 0; i--) {
          insert(i, session, control, amount);
        }
      }
      put("change-close");
      connection.commit();
    }

    private static void insert(
        int index, PreparedStatement session, PreparedStatement control, PreparedStatement amount)
        throws SQLException {
      LocalDate date = day(index / A_DAY);
      int ofDay = index % A_DAY;
      int person = ofDay % PEOPLE.size();
      int turn = ofDay / PEOPLE.size();
      List<String> job = JOBS.get((int) ((date.toEpochDay() * 5 + ofDay * 3L) % JOBS.size()));
      boolean finishing = ofDay == A_DAY - 1 && date.getDayOfMonth() < 8;
      boolean masked = turn % 3 == 0;
      int start = 7 * 60 + 75 * turn + 9 * person;
      LocalTime at = LocalTime.MIDNIGHT.plusMinutes(start);
      long id =
          number(
              session,
              person + 1,
              1,
              date.toString(),
              start,
              25 + 5 * ((ofDay + date.getDayOfMonth()) % 7),
              "Z",
              date.atTime(at).toInstant(ZoneOffset.UTC).toString(),
              finishing ? "finishing" : job.get(0),
              finishing ? null : job.get(1),
              masked ? mask(PEOPLE.get(person)) : null,
              masked ? 1 : null,
              masked ? 90.0 : null,
              "");
      List<String> controls = finishing ? List.of("doors-open") : job.subList(2, job.size());
      for (int i = 0; i < controls.size(); i++) {
        put(control, id, i, controls.get(i));
      }
      if (finishing) {
        put(amount, id, 0, "oil-varnish", 150.0);
      }
    }

    private PreparedStatement prepared(String query) throws SQLException {
      return connection.prepareStatement(Queries.named(query));
    }

    private long number(String query, Object... values) throws SQLException {
      try (PreparedStatement statement = prepared(query)) {
        return number(statement, values);
      }
    }

    private static long number(PreparedStatement statement, Object... values) throws SQLException {
      bind(statement, values);
      try (ResultSet row = statement.executeQuery()) {
        row.next();
        return row.getLong(1);
      }
    }

    private void put(String query, Object... values) throws SQLException {
      try (PreparedStatement statement = prepared(query)) {
        put(statement, values);
      }
    }

    private static void put(PreparedStatement statement, Object... values) throws SQLException {
      bind(statement, values);
      statement.executeUpdate();
    }

    private static void bind(PreparedStatement statement, Object... values) throws SQLException {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
    }
  }
}
