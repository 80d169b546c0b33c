package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.entry.BookDocumentReader;
import motebook.entry.BookFolderReader;
import motebook.model.Refusal;
import motebook.report.BookDocument;
import motebook.report.BookFolder;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out of one book makes another one the same. */
class ExchangeTest {
  private static final Set<String> NOT_DATA =
      Set.of("change", "change_row", "open_change", "never");

  @TempDir Path folder;

  @Property(tries = 40)
  void any_book_comes_back_the_same_from_either_form(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 14) Integer> steps, @ForAll long seed)
      throws IOException {
    Path scratch = Shop.scratch();
    try {
      Path first = Files.createDirectory(scratch.resolve("first"));
      try (Book book = Shop.open(first)) {
        Random random = new Random(seed);
        steps.forEach(step -> attempt(book, random, step));
        comesBackFromCsv(book, first, scratch);
        comesBackFromJson(book, first, scratch);
      }
    } finally {
      Shop.clearAway(scratch);
    }
  }

  private static void attempt(Book book, Random random, int step) {
    try {
      UndoPropertiesTest.change(book, random, step);
    } catch (Refusal refused) {
      // what the book refuses is not in it
    }
  }

  private static void comesBackFromCsv(Book book, Path home, Path scratch) throws IOException {
    Path out = Files.createDirectory(scratch.resolve("csv"));
    writeCsv(book, out);
    Path home2 = Files.createDirectory(scratch.resolve("from-csv"));
    try (Book other = Shop.open(home2)) {
      other.exchange().takeIn(to -> BookFolderReader.read(out, to, n -> {}), "In");
      assertThat(content(home2)).isEqualTo(content(home));
      assertThat(other.verify()).isEmpty();
      Path again = Files.createDirectory(scratch.resolve("csv-again"));
      writeCsv(other, again);
      assertThat(bytes(again)).isEqualTo(bytes(out));
    }
  }

  private static void comesBackFromJson(Book book, Path home, Path scratch) throws IOException {
    Path out = scratch.resolve("book.json");
    writeJson(book, out);
    Path home2 = Files.createDirectory(scratch.resolve("from-json"));
    try (Book other = Shop.open(home2)) {
      other.exchange().takeIn(to -> BookDocumentReader.read(out, to, n -> {}), "In");
      assertThat(content(home2)).isEqualTo(content(home));
      Path again = scratch.resolve("again.json");
      writeJson(other, again);
      assertThat(Files.readString(again)).isEqualTo(Files.readString(out));
    }
  }

  private static void writeCsv(Book book, Path out) throws IOException {
    try (BookFolder sink = new BookFolder(out)) {
      book.exchange().writeTo(sink, n -> {});
    }
  }

  private static void writeJson(Book book, Path out) throws IOException {
    try (OutputStream file = Files.newOutputStream(out);
        BookDocument sink = new BookDocument(file)) {
      book.exchange().writeTo(sink, n -> {});
    }
  }

  /** All rows; the numbers of stretches, which nothing refers to, are given anew. */
  private static List<String> content(Path home) {
    return Shop.content(home).stream()
        .map(row -> row.replaceFirst("^stretch\\|\\d+", "stretch"))
        .toList();
  }

  private static Map<String, String> bytes(Path out) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(out)) {
      all.forEach(file -> files.put(file.getFileName().toString(), text(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A table or a column that is added to the book and not to the exchange is found here. */
  @Test
  void every_column_of_every_table_is_exchanged() throws SQLException {
    Shop.open(folder).close();
    String statements = Resources.text("sql/queries-exchange.sql");
    Map<String, Set<String>> taken = new TreeMap<>();
    Pattern.compile("INSERT INTO (\\w+) \\(([^)]*)\\)")
        .matcher(statements)
        .results()
        .forEach(
            found ->
                taken.put(
                    found.group(1),
                    Stream.of(found.group(2).split(",", -1))
                        .map(String::strip)
                        .collect(Collectors.toCollection(TreeSet::new))));
    Map<String, Set<String>> held = tables();
    held.get("stretch").remove("id");
    assertThat(taken).isEqualTo(held);
    for (String table : held.keySet()) {
      assertThat(statements).as("goes out").containsPattern("(?s)FROM " + table + "\\b.*?ORDER BY");
    }
  }

  private Map<String, Set<String>> tables() throws SQLException {
    Map<String, Set<String>> tables = new TreeMap<>();
    try (Connection connection = Shop.connect(folder);
        Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT t.name, c.name FROM pragma_table_list AS t, pragma_table_info(t.name) AS c"
                    + " WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite%'")) {
      while (rows.next()) {
        tables.computeIfAbsent(rows.getString(1), any -> new TreeSet<>()).add(rows.getString(2));
      }
    }
    tables.keySet().removeAll(NOT_DATA);
    return tables;
  }

  /** So the property above has something to lose in every table. */
  @Test
  void the_books_of_the_property_fill_every_table() throws IOException {
    Set<String> filled = new TreeSet<>();
    for (int seed = 0; seed < 8; seed++) {
      Path home = Files.createDirectory(folder.resolve("book" + seed));
      try (Book book = Shop.open(home)) {
        Random random = new Random(seed);
        IntStream.range(0, 150).map(i -> i % 15).forEach(step -> attempt(book, random, step));
        filled.addAll(
            Shop.content(home).stream().map(row -> row.substring(0, row.indexOf('|'))).toList());
      }
    }
    assertThat(filled)
        .isEqualTo(
            Set.of(
                "person",
                "place",
                "place_version",
                "session",
                "session_control",
                "setting",
                "preference",
                "favourite",
                "stopwatch",
                "stretch",
                "set_aside",
                "respirator",
                "respirator_person",
                "element",
                "shop_filter",
                "upkeep",
                "fit_record",
                "fit_exercise",
                "session_finish",
                "finish",
                "finish_solvent",
                "sample"));
  }

  @Test
  void a_book_that_is_changed_while_it_goes_out_goes_out_as_it_was() throws IOException {
    try (Book book = Shop.open(folder);
        Book other = Shop.open(folder)) {
      book.log(Shop.work("08:00", 60));
      writeCsv(book, Files.createDirectory(folder.resolve("before")));
      Exchange.Sink sink = new BookFolder(Files.createDirectory(folder.resolve("out")));
      book.exchange()
          .writeTo(
              new Exchange.Sink() {
                @Override
                public void begin(Kind kind) {
                  sink.begin(kind);
                  if (kind.name().equals("places")) {
                    other.log(Shop.work("12:00", 60));
                  }
                }

                @Override
                public void row(List<Object> values) {
                  sink.row(values);
                }
              },
              n -> {});
      ((BookFolder) sink).close();
      assertThat(bytes(folder.resolve("out"))).isEqualTo(bytes(folder.resolve("before")));
      assertThat(book.sessionCount()).isEqualTo(2);
    }
  }

  @Test
  void an_import_is_one_change_and_undo_takes_it_back() throws IOException {
    Path out = Files.createDirectory(folder.resolve("csv"));
    Path home = Files.createDirectory(folder.resolve("home"));
    try (Book book = Shop.open(home)) {
      IntStream.range(0, 60)
          .map(i -> i % 15)
          .forEach(step -> attempt(book, new Random(step), step));
      writeCsv(book, out);
    }
    Path fresh = Files.createDirectory(folder.resolve("fresh"));
    try (Book book = Shop.open(fresh)) {
      List<String> before = Shop.content(fresh);
      Consumer<Exchange.Receiver> source = to -> BookFolderReader.read(out, to, n -> {});
      assertThat(book.exchange().takeIn(source, "In")).isPositive();
      assertThat(book.changes().history(9)).extracting(Change::what).containsExactly("In");
      assertThat(book.changes().undo()).isPresent();
      assertThat(Shop.content(fresh)).isEqualTo(before);
      book.exchange().takeIn(source, "In again");
      assertThat(book.changes().history(1).get(0).what()).isEqualTo("In again");
    }
  }

  @Test
  void what_the_tables_do_not_take_is_told_with_its_place() throws IOException {
    Path out = Files.createDirectory(folder.resolve("csv"));
    try (Book book = Shop.open(folder)) {
      writeCsv(book, out);
    }
    Path people = out.resolve("people.csv");
    Files.writeString(people, Files.readString(people) + "1,Ana\r\n", StandardCharsets.UTF_8);
    Path fresh = Files.createDirectory(folder.resolve("fresh"));
    try (Book book = Shop.open(fresh)) {
      assertThatThrownBy(
              () -> book.exchange().takeIn(to -> BookFolderReader.read(out, to, n -> {}), "In"))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("people.csv, line 3: Another row has that number");
      assertThat(book.changes().history(9)).isEmpty();
      assertThat(book.premises().people()).hasSize(1);
    }
  }
}
