package motebook.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.MaskUse;
import motebook.model.Surroundings.Indoors;
import motebook.model.Work;

/** What the tests of the book work with. */
final class Shop {
  static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
  static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T18:00:00Z"), BERLIN);
  static final Indoors ATTIC =
      new Indoors(40, 0.5, 2, 5, OptionalDouble.of(7.5), OptionalDouble.empty(), 20);

  private Shop() {}

  static Book open(Path folder) {
    return Book.open(file(folder), CLOCK);
  }

  static Path file(Path folder) {
    return folder.resolve("book.db");
  }

  static Clock on(LocalDate day) {
    return Clock.fixed(day.atTime(12, 0).atZone(BERLIN).toInstant(), BERLIN);
  }

  static Work work(String start, int minutes) {
    return work("me", MONDAY, start, minutes);
  }

  static Work work(String person, LocalDate date, String start, int minutes) {
    return new Work(
        person,
        "shop",
        date,
        LocalTime.parse(start),
        minutes,
        "table-saw",
        Optional.of("oak"),
        List.of("collector", "air-cleaner"),
        Optional.of(new MaskUse("half mask", true, 95.5)),
        "a note");
  }

  static Work bare(String start, int minutes, String operation) {
    return new Work(
        "me",
        "yard",
        MONDAY,
        LocalTime.parse(start),
        minutes,
        operation,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        "");
  }

  /** Runs statements on the file behind the program's back. */
  static void behind(Path folder, String... statements) throws SQLException {
    try (Connection connection = connect(folder);
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.executeUpdate(sql);
      }
    }
  }

  static Connection connect(Path folder) throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + file(folder) + "?foreign_keys=on");
  }

  /** Every row of every data table, in order. */
  static List<String> content(Path folder) {
    List<String> rows = new ArrayList<>();
    try (Connection connection = connect(folder);
        Statement statement = connection.createStatement()) {
      for (String table : tables()) {
        ResultSet row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY 1, 2");
        while (row.next()) {
          rows.add(table + told(row));
        }
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return rows;
  }

  /** Every table whose changes are recorded. */
  private static List<String> tables() {
    String steps =
        Migration.FILES.stream()
            .map(file -> Resources.text("sql/" + file))
            .collect(Collectors.joining());
    return Pattern.compile("CREATE TRIGGER (\\w+)_inserted ")
        .matcher(steps)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  private static String told(ResultSet row) throws SQLException {
    StringBuilder text = new StringBuilder();
    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
      text.append('|').append(row.getObject(i));
    }
    return text.toString();
  }

  /** A folder for a property, which no test framework clears away. */
  static Path scratch() {
    try {
      return Files.createTempDirectory("book");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void clearAway(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
