package motebook.journal;

import static motebook.journal.Shop.CLOCK;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpeningTest {
  @TempDir Path folder;

  private static String mode(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  private void refused(Path file, String... parts) {
    assertThatThrownBy(() -> Book.open(file, CLOCK).close())
        .isInstanceOf(BookTrouble.class)
        .hasMessageContainingAll(parts)
        .hasMessageContaining(file.toString())
        .hasMessageEndingWith(".");
  }

  @Test
  void a_missing_book_is_begun_with_its_folder_for_its_owner_only() throws IOException {
    Path file = folder.resolve("a/b/book.db");
    try (Book book = Book.open(file, CLOCK)) {
      book.log(work("09:00", 5));
      assertThat(book.file()).isEqualTo(file);
      assertThat(mode(file)).isEqualTo("rw-------");
      assertThat(mode(folder.resolve("a"))).isEqualTo("rwx------");
      assertThat(mode(file.getParent())).isEqualTo("rwx------");
      for (String beside : List.of("book.db-wal", "book.db-shm")) {
        assertThat(mode(file.resolveSibling(beside))).isEqualTo("rw-------");
      }
    }
  }

  @Test
  void an_empty_file_is_a_fresh_book() throws IOException {
    Path file = Files.createFile(folder.resolve("empty"));
    try (Book book = Book.open(file, CLOCK)) {
      assertThat(book.premises().people()).hasSize(1);
      assertThat(book.verify()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a b", "what?.db", "50%41.db", "#1&x=y.db", "Zoë ³.db", "file:x", "-", ":m"})
  void any_name_of_a_file_will_do(String name) {
    Path file = folder.resolve(name);
    try (Book book = Book.open(file, CLOCK)) {
      book.log(work("09:00", 5));
    }
    assertThat(file).isRegularFile();
    try (Book book = Book.open(file, Shop.on(Shop.MONDAY.plusDays(1)))) {
      assertThat(book.hasSessions()).isTrue();
      book.log(work("10:00", 5));
      assertThat(Copies.folder(file).resolve("2026-03-03.db")).isRegularFile();
    }
  }

  @Test
  void a_book_says_in_its_header_that_it_is_one_and_of_which_form() {
    Shop.open(folder).close();
    try (Store store = Connections.open(Shop.file(folder), Connections.PATIENCE)) {
      assertThat(Migrations.state(store))
          .isEqualTo(new Migrations.State(0x4d6f7465, Migration.FILES.size(), true, true));
    }
  }

  @Test
  void a_file_that_is_no_database_is_refused_and_left_as_it_is() throws IOException {
    Path file = folder.resolve("notes.txt");
    Files.writeString(file, "Dear diary, ".repeat(1000));
    byte[] before = Files.readAllBytes(file);
    refused(file, "is not a Motebook book", "Choose another file");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void a_short_file_that_is_no_database_is_refused() throws IOException {
    Path file = folder.resolve("short.txt");
    Files.writeString(file, "x");
    refused(file, "is not a Motebook book");
  }

  @ParameterizedTest
  @ValueSource(strings = {"PRAGMA application_id = 77", "PRAGMA application_id = 0"})
  void a_database_of_another_program_is_refused_and_left_as_it_is(String sql) throws Exception {
    Shop.behind(folder, sql, "CREATE TABLE theirs (x)", "INSERT INTO theirs VALUES (1)");
    byte[] before = Files.readAllBytes(Shop.file(folder));
    refused(Shop.file(folder), "is not a Motebook book");
    assertThat(Files.readAllBytes(Shop.file(folder))).isEqualTo(before);
    assertThat(folder).isDirectoryNotContaining("glob:**-{wal,shm,journal}");
  }

  @Test
  void a_newer_book_is_refused_and_says_so() throws SQLException {
    Shop.open(folder).close();
    Shop.behind(folder, "PRAGMA user_version = 999");
    refused(Shop.file(folder), "newer Motebook", "999", "Use the newer program");
  }

  @Test
  void a_folder_is_refused() {
    refused(folder, "is a folder");
  }

  @Test
  void a_book_that_cannot_be_made_is_refused() throws IOException {
    Path blocker = Files.createFile(folder.resolve("file"));
    refused(blocker.resolve("book.db"), "cannot be made");
    refused(Path.of("/proc/motebook/book.db"), "cannot be made");
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("gone/away"));
    refused(link, "cannot be made");
  }

  @Test
  void a_book_without_permission_is_refused() throws IOException {
    Shop.open(folder).close();
    Files.setPosixFilePermissions(Shop.file(folder), PosixFilePermissions.fromString("---------"));
    assumeThat(Files.isReadable(Shop.file(folder))).as("root may read everything").isFalse();
    refused(Shop.file(folder), "may not be read and written", "permissions");
  }

  @Test
  void a_truncated_book_is_told_as_damaged() throws IOException {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 5));
    }
    try (RandomAccessFile file = new RandomAccessFile(Shop.file(folder).toFile(), "rw")) {
      file.setLength(8192);
    }
    refused(Shop.file(folder), "is damaged", "a copy of your own");
    Path copies = Files.createDirectory(Copies.folder(Shop.file(folder)));
    refused(Shop.file(folder), "is damaged", "newest copy in " + copies);
  }

  @Test
  void a_book_with_a_scribbled_page_never_crashes_and_is_found_out() throws IOException {
    Random random = new Random(5);
    int told = 0;
    for (int i = 0; i < 40; i++) {
      Path copy = Files.createDirectory(folder.resolve("n" + i));
      try (Book book = Shop.open(copy)) {
        book.log(work("09:00", 5));
      }
      scribble(Shop.file(copy), random);
      told += toldOf(copy) ? 1 : 0;
    }
    assertThat(told).isGreaterThan(30);
  }

  /** Overwrites a whole page somewhere after the first. */
  private static void scribble(Path path, Random random) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw")) {
      byte[] noise = "scribble".repeat(512).getBytes(StandardCharsets.US_ASCII);
      file.seek(4096L * (1 + random.nextInt((int) (file.length() / 4096) - 1)));
      file.write(noise);
    }
  }

  private static boolean toldOf(Path folder) {
    try (Book book = Shop.open(folder)) {
      return !book.verify().isEmpty();
    } catch (BookTrouble e) {
      return e.getMessage().contains("damaged");
    }
  }

  @Test
  void a_locked_book_is_told_as_in_use() throws SQLException {
    Shop.open(folder).close();
    Path file = Shop.file(folder);
    try (Connection other = Shop.connect(folder);
        Statement statement = other.createStatement();
        Store store = Connections.open(file, Duration.ofMillis(50))) {
      statement.execute("BEGIN IMMEDIATE");
      assertThatThrownBy(() -> store.atomically(() -> "never"))
          .isInstanceOf(BookTrouble.class)
          .hasMessageContainingAll(file.toString(), "in use by another program", "try again");
      statement.execute("ROLLBACK");
      assertThat(store.<String>atomically(() -> "now")).isEqualTo("now");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "busy_timeout, 5000",
    "synchronous, 2",
    "foreign_keys, 1",
    "recursive_triggers, 1",
    "journal_mode, wal"
  })
  void a_connection_waits_five_seconds_syncs_fully_and_keeps_references(String pragma, String value)
      throws SQLException {
    Shop.open(folder).close();
    try (Connection connection = Connections.connect(Shop.file(folder), Connections.PATIENCE);
        Statement statement = connection.createStatement()) {
      assertThat(statement.executeQuery("PRAGMA " + pragma).getString(1)).isEqualTo(value);
    }
  }
}
