package motebook.journal;

import static motebook.journal.Shop.CLOCK;
import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import motebook.journal.Restoring.Found;
import motebook.model.Refusal;
import motebook.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestoringTest {
  @TempDir Path folder;

  private Path copy() {
    return folder.resolve("copy.db");
  }

  /** A book with one session more than its copy. */
  private void bookAndCopy() {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 30));
      book.backup(Optional.of(copy()), bytes -> {});
      book.log(work("12:00", 30));
    }
  }

  private Optional<Path> restore(Path from) {
    try (Restoring restoring = Restoring.of(Shop.file(folder), from, CLOCK, bytes -> {})) {
      return restoring.run(share -> {});
    }
  }

  private long sessions(Path file) {
    try (Book book = Book.open(file, CLOCK)) {
      assertThat(book.verify()).isEmpty();
      return book.sessionCount();
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void what_would_be_lost_is_told_and_nothing_is_touched() throws IOException {
    bookAndCopy();
    try (Restoring restoring = Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {})) {
      assertThat(restoring.found()).isEqualTo(Found.READABLE);
      assertThat(restoring.sessions()).isEqualTo(1);
      assertThat(restoring.lost())
          .isEqualTo(new Lost(1, Optional.of(MONDAY), Optional.of(MONDAY), 1));
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(2);
    assertThat(names()).containsExactly("book.db", "book.db.copies", "copy.db");
  }

  @Test
  void the_book_becomes_the_copy_and_what_it_was_is_kept() throws IOException {
    bookAndCopy();
    Path kept = restore(copy()).orElseThrow();
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
    assertThat(kept.getFileName()).hasToString("2026-03-02-before-restore.db");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept)))
        .isEqualTo("rw-------");
    assertThat(names()).containsExactly("book.db", "book.db.copies", "copy.db");
    assertThat(restore(kept).orElseThrow().getFileName())
        .hasToString("2026-03-02-before-restore-2.db");
    assertThat(sessions(Shop.file(folder))).isEqualTo(2);
  }

  @Test
  void another_window_goes_on_with_the_new_content() {
    bookAndCopy();
    try (Book window = Shop.open(folder)) {
      long before = window.dataVersion();
      assertThat(window.sessionsOn(MONDAY)).hasSize(2);
      restore(copy());
      assertThat(window.dataVersion()).isNotEqualTo(before);
      assertThat(window.sessionsOn(MONDAY)).hasSize(1);
      window.log(work("15:00", 30));
      assertThat(window.verify()).isEmpty();
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(2);
  }

  @Test
  void a_book_that_somebody_is_writing_is_left_as_it_is() throws SQLException {
    bookAndCopy();
    try (var writer = Shop.connect(folder);
        var statement = writer.createStatement();
        Restoring restoring = Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {})) {
      statement.execute("BEGIN IMMEDIATE");
      assertThatThrownBy(() -> restoring.run(share -> {}))
          .isInstanceOf(BookTrouble.class)
          .hasMessageContaining("in use");
      statement.execute("ROLLBACK");
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(2);
  }

  @Test
  void until_the_exchange_is_done_others_read_the_old_content() {
    bookAndCopy();
    try (Store live = Connections.open(Shop.file(folder), Connections.PATIENCE);
        Store beside = Connections.open(Shop.file(folder), Connections.PATIENCE)) {
      List<Long> left = new ArrayList<>();
      live.replaceBy(
          copy(), (pages, all) -> left.add(pages == 0 ? 0 : beside.number("session-count")));
      assertThat(left).hasSizeGreaterThan(2).startsWith(2L, 2L).endsWith(0L);
    }
  }

  @Test
  void where_there_is_no_book_the_copy_becomes_it() throws IOException {
    bookAndCopy();
    Files.delete(Shop.file(folder));
    try (Restoring restoring = Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {})) {
      assertThat(restoring.found()).isEqualTo(Found.NONE);
      assertThat(restoring.run(share -> {})).isEmpty();
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(Shop.file(folder))))
        .isEqualTo("rw-------");
  }

  /** Writes over some bytes of a file. */
  private static void spoil(Path file, long at, int count) throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.seek(at);
      bytes.write("spoilt ".repeat(count / 7 + 1).getBytes(StandardCharsets.US_ASCII), 0, count);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 100, 4096, 40_960})
  void a_damaged_copy_is_refused_and_the_book_is_as_it_was(int at) throws IOException {
    bookAndCopy();
    spoil(copy(), at, 3000);
    assertThatThrownBy(() -> Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {}))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContaining("copy.db");
    assertThat(sessions(Shop.file(folder))).isEqualTo(2);
    assertThat(names()).containsExactly("book.db", "book.db.copies", "copy.db");
  }

  @Test
  void a_copy_that_was_cut_short_is_refused() throws IOException {
    bookAndCopy();
    try (RandomAccessFile file = new RandomAccessFile(copy().toFile(), "rw")) {
      file.setLength(file.length() / 2);
    }
    assertThatThrownBy(() -> Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {}))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContaining("copy.db");
  }

  @Test
  void a_copy_whose_tables_were_altered_is_refused() throws SQLException {
    bookAndCopy();
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + copy());
        var statement = connection.createStatement()) {
      statement.executeUpdate("DROP TRIGGER session_inserted");
    }
    assertThatThrownBy(() -> Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {}))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContaining("is damaged: The book lacks the trigger session_inserted");
  }

  @Test
  void a_copy_with_a_row_that_differs_is_restored_and_the_row_is_put_right_afterwards()
      throws SQLException {
    bookAndCopy();
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + copy());
        var statement = connection.createStatement()) {
      String trigger;
      try (var row =
          statement.executeQuery("SELECT sql FROM sqlite_schema WHERE name = 'session_updated'")) {
        trigger = row.getString(1);
      }
      statement.executeUpdate("DROP TRIGGER session_updated");
      statement.executeUpdate("UPDATE session SET minutes = 31");
      statement.executeUpdate(trigger);
    }
    try (Restoring restoring = Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {})) {
      assertThat(restoring.problems())
          .singleElement()
          .asString()
          .contains("minutes is 31, the history holds 30");
      restoring.run(share -> {});
    }
    try (Book book = Shop.open(folder)) {
      assertThat(book.mending().fromHistory()).isEqualTo(1);
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
  }

  @Test
  void a_copy_of_a_newer_program_is_refused() throws SQLException {
    bookAndCopy();
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + copy());
        var statement = connection.createStatement()) {
      statement.executeUpdate("PRAGMA user_version = 999");
    }
    assertThatThrownBy(() -> Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {}))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContaining("newer Motebook");
  }

  @Test
  void a_copy_of_an_older_form_is_brought_up_to_date_before_it_takes_the_place() {
    bookAndCopy();
    Path old = folder.resolve("old.db");
    try (Store store = oldBook(old)) {
      assertThat(Migrations.state(store).version()).isEqualTo(1);
    }
    restore(old);
    assertThat(sessions(Shop.file(folder))).isZero();
    try (Store store = Connections.open(old, Connections.PATIENCE)) {
      assertThat(Migrations.state(store).version()).as("the copy itself").isEqualTo(1);
    }
  }

  private static Store oldBook(Path file) {
    try {
      Files.createFile(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Store store = Connections.open(file, Connections.PATIENCE);
    new Migrations(1, Migration::shipped).stepsAfter(0, store);
    return store;
  }

  @Test
  void a_damaged_book_is_kept_as_it_is_found_and_gives_way() throws IOException {
    bookAndCopy();
    spoil(Shop.file(folder), 100, 9000);
    byte[] damaged = Files.readAllBytes(Shop.file(folder));
    try (Restoring restoring = Restoring.of(Shop.file(folder), copy(), CLOCK, bytes -> {})) {
      assertThat(restoring.found()).isEqualTo(Found.DAMAGED);
      Path kept = restoring.run(share -> {}).orElseThrow();
      assertThat(kept.getFileName()).hasToString("2026-03-02-damaged.db");
      assertThat(kept).hasBinaryContent(damaged);
    }
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
  }

  @Test
  void a_file_that_never_was_a_book_is_not_replaced() throws IOException {
    bookAndCopy();
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear reader");
    try (Restoring restoring = Restoring.of(letter, copy(), CLOCK, bytes -> {})) {
      assertThatThrownBy(() -> restoring.run(share -> {})).isInstanceOf(BookTrouble.class);
    }
    assertThat(letter).hasContent("Dear reader");
  }

  @Test
  void the_book_is_no_copy_of_itself_and_a_missing_file_none() {
    bookAndCopy();
    assertThatThrownBy(() -> restore(Shop.file(folder)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("the book itself");
    assertThatThrownBy(() -> restore(folder.resolve("none.db")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("There is no file");
  }

  /** Restores and tells of each step, so that it can be killed at any of them. */
  static final class Restorer {
    private Restorer() {}

    public static void main(String[] arguments) {
      try (Restoring restoring =
          Restoring.of(Path.of(arguments[0]), Path.of(arguments[1]), CLOCK, bytes -> {})) {
        System.out.println("ready");
        restoring.run(System.out::println);
        System.out.println("done");
      }
    }
  }

  /** Holds a book open until its input ends. */
  static final class Holder {
    private Holder() {}

    public static void main(String[] arguments) throws IOException {
      try (Book book = Book.open(Path.of(arguments[0]), CLOCK)) {
        System.out.println(book.sessionCount());
        System.in.read();
      }
    }
  }

  private static Process start(Class<?> program, Path... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
    Stream.of(arguments).map(Path::toString).forEach(command::add);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8, 16})
  void killed_half_way_the_book_is_wholly_the_old_one_or_wholly_the_new_one(int line)
      throws Exception {
    try (Book book = Shop.open(folder)) {
      book.log(work("23:00", 30));
      book.backup(Optional.of(copy()), bytes -> {});
      List<Work> many = new ArrayList<>();
      for (int i = 0; i < 2000; i++) {
        many.add(work("me", MONDAY.minusDays(1 + i / 20), "%02d:00".formatted(i % 20), 30));
      }
      book.logAll(many, "many");
      book.backup(Optional.of(folder.resolve("full.db")), bytes -> {});
      book.changes().undo();
    }
    Process restorer = start(Restorer.class, Shop.file(folder), folder.resolve("full.db"));
    try (BufferedReader out = restorer.inputReader()) {
      for (int n = 0; n < line; n++) {
        assertThat(out.readLine()).isNotNull();
      }
      restorer.toHandle().destroyForcibly();
      assertThat(restorer.waitFor(30, TimeUnit.SECONDS)).isTrue();
    }
    assertThat(sessions(Shop.file(folder))).isIn(1L, 2001L);
    restore(copy());
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
  }

  @Test
  void a_damaged_book_that_another_program_has_open_is_left_alone() throws Exception {
    bookAndCopy();
    Process holder = start(Holder.class, Shop.file(folder));
    try (BufferedReader out = holder.inputReader();
        Writer in = holder.outputWriter()) {
      assertThat(out.readLine()).isEqualTo("2");
      spoil(Shop.file(folder), 100, 9000);
      byte[] damaged = Files.readAllBytes(Shop.file(folder));
      assertThatThrownBy(() -> restore(copy()))
          .isInstanceOf(BookTrouble.class)
          .hasMessageContaining("in use");
      assertThat(Shop.file(folder)).hasBinaryContent(damaged);
      in.write("end\n");
    }
    assertThat(holder.waitFor(30, TimeUnit.SECONDS)).isTrue();
    restore(copy());
    assertThat(sessions(Shop.file(folder))).isEqualTo(1);
  }
}
