package motebook.journal;

import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the tables themselves refuse, whoever writes to them. */
class GuardTest {
  @TempDir Path folder;
  private Connection connection;
  private Statement statement;

  @BeforeEach
  void connect() throws SQLException {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 60));
    }
    connection = Shop.connect(folder);
    statement = connection.createStatement();
  }

  @AfterEach
  void disconnect() throws SQLException {
    connection.close();
  }

  private void openChange() throws SQLException {
    statement.execute("BEGIN");
    statement.execute("INSERT INTO change (id, at, what) VALUES (50, '2026-01-01T00:00:00Z', 'x')");
    statement.execute("INSERT INTO open_change (id, change_id) VALUES (1, 50)");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE session SET minutes = 30",
        "DELETE FROM session_control",
        "INSERT INTO person (name, folded) VALUES ('Ana', 'ana')",
        "UPDATE person SET name = 'you'",
        "INSERT INTO place (name, folded) VALUES ('attic', 'attic')",
        "UPDATE place SET name = 'hall' WHERE id = 1",
        "UPDATE place_version SET volume_m3 = 50 WHERE place_id = 1",
        "DELETE FROM place_version",
        "UPDATE session_control SET control = 'none' WHERE position = 0",
        "INSERT INTO session_control VALUES (1, 5, 'more')",
        "UPDATE setting SET gap_minutes = 5",
        "DELETE FROM setting",
        "INSERT INTO change_row (change_id, table_name, after) VALUES (1, 'person', '{}')",
        "REPLACE INTO person (id, name, folded) VALUES (1, 'you', 'you')"
      })
  void nothing_is_written_while_no_change_is_open(String sql) {
    assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("no change is open");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE change SET what = 'something else'",
        "DELETE FROM change",
        "UPDATE change_row SET after = NULL",
        "DELETE FROM change_row"
      })
  void the_record_of_changes_cannot_be_rewritten(String sql) throws SQLException {
    assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("never");
    openChange();
    assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("never");
  }

  @Test
  void a_transaction_with_an_open_change_cannot_be_committed() throws SQLException {
    openChange();
    statement.execute("UPDATE setting SET gap_minutes = 5");
    assertThatThrownBy(() -> statement.execute("COMMIT"))
        .hasMessageContaining("FOREIGN KEY constraint failed");
    statement.execute("DELETE FROM open_change");
    statement.execute("COMMIT");
    try (Book book = Shop.open(folder)) {
      assertThat(book.settings().gapMinutes()).isEqualTo(5);
      assertThat(book.changes().undo().orElseThrow().what()).isEqualTo("x");
      assertThat(book.settings().gapMinutes()).isEqualTo(30);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "session       | minutes = 0",
        "session       | minutes = 961",
        "session       | minutes = 'long'",
        "session       | start_minute = 1381",
        "session       | start_minute = -1",
        "session       | date = '2026-02-30'",
        "session       | date = '2200-01-01'",
        "session       | date = 'yesterday'",
        "session       | date = 20260302",
        "session       | starts_at = '2026-03-02 09:00'",
        "session       | zone = ''",
        "session       | operation = ''",
        "session       | operation = NULL",
        "session       | material = ''",
        "session       | respirator = NULL",
        "session       | worn_percent = 0",
        "session       | worn_percent = 101",
        "session       | worn_percent = NULL",
        "session       | seal_checked = 2",
        "session       | note = NULL",
        "session       | person_id = 9",
        "session       | place_id = 9",
        "session_control | control = ''",
        "session_control | session_id = 9",
        "session_control | position = -1",
        "person        | name = ''",
        "person        | name = '12345678901234567890123456789012345678901'",
        "place         | folded = 'shop'",
        "place_version | kind = 'underground'",
        "place_version | kind = 'outdoors'",
        "place_version | volume_m3 = 0",
        "place_version | volume_m3 = NULL",
        "place_version | volume_m3 = 'big'",
        "place_version | open_air_changes_per_hour = 0.5",
        "place_version | air_speed_m_per_min = 0",
        "place_version | valid_from = 'soon'",
        "place_version | cleaner_run_on_minutes = 1.5",
        "setting       | id = 2",
        "setting       | total_conversion = 0",
        "setting       | gap_minutes = 1441"
      })
  void a_row_that_makes_no_sense_is_refused_by_the_table(String table, String set)
      throws SQLException {
    openChange();
    assertThatThrownBy(() -> statement.execute("UPDATE " + table.strip() + " SET " + set))
        .isInstanceOf(SQLException.class)
        .hasMessageContaining("CONSTRAINT");
  }

  @Test
  void every_table_is_strict() throws SQLException {
    List<String> loose = new java.util.ArrayList<>();
    var tables =
        statement.executeQuery(
            "SELECT name FROM pragma_table_list WHERE type = 'table' AND NOT strict"
                + " AND name NOT LIKE 'sqlite%'");
    while (tables.next()) {
      loose.add(tables.getString(1));
    }
    assertThat(loose).isEmpty();
  }

  @Test
  void a_reused_start_of_the_same_person_is_refused_by_the_table() throws SQLException {
    openChange();
    assertThatThrownBy(
            () ->
                statement.execute(
                    "INSERT INTO session (person_id, place_id, date, start_minute, minutes, zone,"
                        + " starts_at, operation, note) SELECT person_id, place_id, date,"
                        + " start_minute, minutes, zone, starts_at, operation, '' FROM session"))
        .hasMessageContaining("UNIQUE");
  }
}
