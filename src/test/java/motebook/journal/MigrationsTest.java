package motebook.journal;

import static motebook.journal.Shop.CLOCK;
import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import motebook.model.Sample;
import motebook.model.Session;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsTest {
  private static final int SHIPPED = Migration.FILES.size();
  private static final int NEXT = SHIPPED + 1;
  private static final int CHECKED_IMAGES = 6;
  private static final int SAMPLES_WERE_PERSONAL = 11;

  @TempDir Path folder;

  @BeforeEach
  void write_a_book_of_the_older_form() {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 60));
    }
  }

  /** The shipped steps and one more. */
  private static Migrations with(String script) {
    return new Migrations(
        NEXT,
        version -> version == NEXT ? new Migration(NEXT, script) : Migration.shipped(version));
  }

  private Path copy() {
    String name = "2026-03-02-before-version-" + NEXT + ".db";
    return Copies.folder(Shop.file(folder)).resolve(name);
  }

  private Book open(String script) {
    return Book.open(Shop.file(folder), CLOCK, with(script));
  }

  @Test
  void the_files_of_the_steps_are_numbered_and_all_of_them_are_known() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sql"))) {
      List<String> steps =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> !Queries.FILES.contains(name))
              .sorted()
              .toList();
      assertThat(Migration.FILES).isEqualTo(steps);
    }
    for (int version = 1; version <= SHIPPED; version++) {
      assertThat(Migration.FILES.get(version - 1)).startsWith(String.format("%03d-", version));
      assertThat(Migration.shipped(version).script().strip())
          .endsWith("PRAGMA user_version = " + version + ";");
    }
  }

  @Test
  void an_older_book_is_brought_up_to_date_after_a_copy_and_keeps_what_it_held() {
    List<String> before = Shop.content(folder);
    String script = "CREATE TABLE extra (x TEXT) STRICT; PRAGMA user_version = " + NEXT + ";";
    try (Book book = open(script)) {
      assertThat(book.sessionsOn(MONDAY)).hasSize(1);
    }
    assertThat(Shop.content(folder)).isEqualTo(before);
    assertThat(copy()).isRegularFile();
    try (Book old = Book.open(copy(), CLOCK)) {
      assertThat(old.sessionsOn(MONDAY)).hasSize(1);
    }
    assertThatThrownBy(() -> Shop.open(folder)).hasMessageContaining("newer Motebook");
  }

  @Test
  void a_step_that_fails_halfway_leaves_the_book_as_it_was() {
    String script = "CREATE TABLE extra (x TEXT) STRICT; INSERT INTO missing VALUES (1);";
    assertThatThrownBy(() -> open(script)).isInstanceOf(IllegalStateException.class);
    try (Book book = Shop.open(folder)) {
      assertThat(book.sessionsOn(MONDAY)).hasSize(1);
      assertThat(book.verify()).isEmpty();
    }
    assertThat(copy()).isRegularFile();
  }

  @Test
  void a_step_that_does_not_set_its_version_is_found_out() {
    assertThatThrownBy(() -> open("CREATE TABLE extra (x TEXT) STRICT;"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("version " + NEXT);
    try (Book book = Shop.open(folder)) {
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void a_book_that_is_up_to_date_needs_no_step_and_no_copy() {
    Migrations steps =
        new Migrations(
            SHIPPED,
            version -> {
              throw new AssertionError("step " + version);
            });
    Book.open(Shop.file(folder), CLOCK, steps).close();
    assertThat(Copies.folder(Shop.file(folder))).doesNotExist();
  }

  @Test
  void a_book_that_lost_its_write_ahead_mode_gets_it_back() throws SQLException {
    Shop.behind(folder, "PRAGMA journal_mode = DELETE");
    Shop.open(folder).close();
    try (Store store = Connections.open(Shop.file(folder), Connections.PATIENCE)) {
      assertThat(Migrations.state(store).inWal()).isTrue();
    }
  }

  @Test
  void a_row_of_the_history_that_cannot_be_read_is_kept_as_it_is_and_told_by_verify()
      throws SQLException, IOException {
    Files.createDirectory(folder.resolve("old"));
    Path old = Shop.file(folder.resolve("old"));
    Book.open(old, CLOCK, new Migrations(CHECKED_IMAGES, Migration::shipped)).close();
    String damaged;
    try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + old);
        Statement statement = raw.createStatement()) {
      statement.executeUpdate(
          "BEGIN; INSERT INTO change (id, at, what) VALUES (1, '2026-03-02T18:00:00Z', 'Logged');"
              + "INSERT INTO open_change (id, change_id) VALUES (1, 1)");
      for (int start : List.of(540, 660)) {
        statement.executeUpdate(
            "INSERT INTO session (person_id, place_id, date, start_minute, minutes, zone,"
                + " starts_at, operation, material, note) VALUES (1, 1, '2026-03-02', "
                + start
                + ", 60, 'UTC', '2026-03-02T09:00:00Z', 'table-saw', 'oak', '')");
      }
      statement.executeUpdate(
          "DELETE FROM open_change; COMMIT; PRAGMA ignore_check_constraints = ON;"
              + "DROP TRIGGER change_row_stays;"
              + "UPDATE change_row SET after = '[' || substr(after, 2) WHERE id = 1;"
              + "CREATE TRIGGER change_row_stays BEFORE UPDATE ON change_row BEGIN"
              + "  SELECT RAISE(ABORT, 'the record of a change is never rewritten'); END;");
      damaged = image(statement);
    }
    try (Book book = Book.open(old, CLOCK)) {
      assertThat(book.verify())
          .containsExactly("The history is damaged: 1 of its rows cannot be read.");
      assertThat(book.sessionsOn(MONDAY)).extracting(Session::id).containsExactly(2L);
      assertThat(book.loggedBetween(MONDAY, MONDAY).leftOut())
          .singleElement()
          .satisfies(
              session ->
                  assertThat(session.details())
                      .containsExactly("What the history holds of it cannot be read."));
      book.log(work("15:00", 30));
      assertThat(book.sessionsOn(MONDAY)).hasSize(2);
    }
    try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + old);
        Statement statement = raw.createStatement()) {
      assertThat(image(statement)).isEqualTo(damaged).startsWith("[");
    }
  }

  private static String image(Statement statement) throws SQLException {
    try (ResultSet row = statement.executeQuery("SELECT after FROM change_row WHERE id = 1")) {
      return row.getString(1);
    }
  }

  @Test
  void a_sample_of_the_older_form_becomes_a_personal_one_and_its_number_is_not_given_again()
      throws SQLException, IOException {
    Files.createDirectory(folder.resolve("old"));
    Path old = Shop.file(folder.resolve("old"));
    Book.open(old, CLOCK, new Migrations(SAMPLES_WERE_PERSONAL, Migration::shipped)).close();
    try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + old);
        Statement statement = raw.createStatement()) {
      raw.setAutoCommit(false);
      statement.executeUpdate(
          "INSERT INTO change (id, at, what) VALUES (1, '2026-03-02T18:00:00Z', 'Added a sample')");
      statement.executeUpdate("INSERT INTO open_change (id, change_id) VALUES (1, 1)");
      statement.executeUpdate(
          "INSERT INTO sample (id, person_id, date, from_minute, to_minute, fraction, kind,"
              + " mg_per_m3, below_detection, cv, note) VALUES (7, 1, '2026-03-02', 540, 600,"
              + " 'inhalable', 'gravimetric', 1.5, 0, 0.15, 'first')");
      statement.executeUpdate("DELETE FROM open_change");
      raw.commit();
    }
    try (Book book = Book.open(old, CLOCK)) {
      Sample kept = book.samples().all().get(0);
      assertThat(kept.id()).isEqualTo(7);
      assertThat(kept.use()).isEqualTo(Sample.Use.PERSONAL);
      assertThat(kept.note()).isEqualTo("first");
      book.samples().remove(7);
      Sample fresh = book.samples().add(List.of(kept), "Again").get(0);
      assertThat(fresh.id()).isEqualTo(8);
      book.changes().undo();
      book.changes().undo();
      assertThat(book.samples().all()).containsExactly(kept);
      // what was recorded in the older form says nothing of a use, and can be undone all the same
      book.changes().undo();
      assertThat(book.samples().all()).isEmpty();
    }
  }
}
