package motebook.journal;

import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that can be wrong with a book is found. */
class CheckupTest {
  private static final String OPEN =
      "INSERT INTO change (id, at, what) VALUES (50, '2026-01-01T00:00:00Z', 'x');"
          + "INSERT INTO open_change (id, change_id) VALUES (1, 50);";
  private static final String CLOSE = "DELETE FROM open_change;";

  @TempDir Path folder;

  @BeforeEach
  void write() {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 60));
      book.log(work("12:00", 60));
      assertThat(book.verify()).isEmpty();
    }
  }

  private void finds(String problem, String... statements) throws SQLException {
    Shop.behind(folder, statements);
    try (Book book = Shop.open(folder)) {
      assertThat(book.verify()).containsExactly(problem);
    }
  }

  private void findsAfter(String change, String problem) throws SQLException {
    finds(problem, "BEGIN;" + OPEN + change + CLOSE + "COMMIT;");
  }

  @Test
  void sessions_that_overlap() throws SQLException {
    findsAfter(
        "UPDATE session SET start_minute = 570 WHERE id = 2;",
        "Sessions 1 and 2 of one person overlap.");
  }

  @Test
  void a_place_without_a_beginning() throws SQLException {
    findsAfter(
        "UPDATE place_version SET valid_from = '2026-01-01' WHERE place_id = 2;",
        "The place \"yard\" has no figures from the beginning.");
  }

  @Test
  void settings_that_are_gone() throws SQLException {
    findsAfter("DELETE FROM setting;", "The book holds no settings.");
  }

  @Test
  void a_trigger_that_was_dropped() throws SQLException {
    finds("The book lacks the trigger session_deleted.", "DROP TRIGGER session_deleted");
  }

  @Test
  void a_table_that_was_altered() throws SQLException {
    finds(
        "The table session of the book is not what it should be.",
        "ALTER TABLE session ADD COLUMN extra TEXT");
  }

  @Test
  void a_reference_that_leads_nowhere() throws SQLException {
    finds(
        "A reference leads nowhere: session row 1.",
        "PRAGMA foreign_keys = OFF; BEGIN;"
            + OPEN
            + "UPDATE session SET place_id = 77 WHERE id = 1;"
            + CLOSE
            + "COMMIT;");
  }

  @Test
  void a_change_that_was_left_open() throws SQLException {
    finds(
        "A reference leads nowhere: open_change row 1.",
        "PRAGMA foreign_keys = OFF; BEGIN;" + OPEN + "COMMIT;");
  }

  @Test
  void a_row_that_breaks_the_rules_of_its_table() throws SQLException {
    finds(
        "The file is damaged: CHECK constraint failed in session.",
        "PRAGMA ignore_check_constraints = ON; BEGIN;"
            + OPEN
            + "UPDATE session SET minutes = 5000 WHERE id = 1;"
            + CLOSE
            + "COMMIT;");
  }
}
