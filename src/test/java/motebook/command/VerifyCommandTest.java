package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import motebook.report.LeftOut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a disk or another tool changed in a book, as a person meets it and puts it right. */
class VerifyCommandTest {
  private static final String OPEN_CHANGE =
      "INSERT INTO change (id, at, what) VALUES (90, '2026-03-02T00:00:00Z', 'by hand');"
          + "INSERT INTO open_change (id, change_id) VALUES (1, 90);";

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void log() {
    shell = new Shell(folder.resolve("book.db"));
    done("log 35m orbital sanding of oak with tool vacuum at 9:00");
    done("log 30m table saw of oak at 11:00");
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
    return said.out();
  }

  /** Changes rows as no program of ours does: nothing is recorded. */
  private void damage(String table, String sql) throws SQLException {
    String trigger = table + "_updated";
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      String text;
      try (ResultSet row =
          statement.executeQuery("SELECT sql FROM sqlite_schema WHERE name = '" + trigger + "'")) {
        text = row.getString(1);
      }
      statement.executeUpdate("DROP TRIGGER " + trigger);
      statement.executeUpdate(sql);
      statement.executeUpdate(text);
    }
  }

  /** Changes rows as another program may: the change is recorded. */
  private void byHand(String sql) throws SQLException {
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      statement.executeUpdate("BEGIN;" + OPEN_CHANGE + sql + "DELETE FROM open_change; COMMIT;");
    }
  }

  private Connection connect() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.db"));
  }

  private static double outside(Map<String, Object> day) {
    return Shell.number(day, "twa", "outside", "typical_mg_m3");
  }

  @Test
  void a_changed_row_is_told_with_its_day_and_what_the_history_holds() throws SQLException {
    damage("session", "UPDATE session SET minutes = 99 WHERE id = 1");
    Shell.Said said = shell.say("verify");
    assertThat(said.code()).isEqualTo(4);
    assertThat(said.out())
        .contains(
            "Session 1 of 2026-03-02 differs from the history: minutes is 99, the history holds"
                + " 35.")
        .contains("verify --mend")
        .doesNotContain("is whole");
  }

  @Test
  void a_day_and_its_week_leave_out_what_is_damaged_and_say_so() throws SQLException {
    double both = outside(shell.json("day"));
    damage("session", "UPDATE session SET minutes = 99 WHERE id = 1");
    Map<String, Object> day = shell.json("day");
    assertThat(outside(day)).isPositive().isLessThan(both);
    assertThat((List<?>) day.get("sessions")).hasSize(1);
    assertThat(Shell.at(day, "left_out", 0, "id")).isEqualTo(1);
    assertThat(Shell.at(day, "left_out", 0, "reason")).isEqualTo("damaged");
    assertThat(done("day"))
        .contains(
            "left out  Session 1 (2026-03-02 09:00, 99 min of orbital sanding by me) is damaged")
        .contains("minutes is 99, the history holds 35")
        .contains("may be too low");
    assertThat(done("week")).contains("left out    Session 1 (2026-03-02 09:00");
    assertThat(Shell.at(shell.json("week"), "left_out", 0, "id")).isEqualTo(1);
  }

  @Test
  void a_plan_leaves_out_what_is_damaged_and_says_so() throws SQLException {
    String line = "plan \"30m table saw of oak at 14:00\"";
    assertThat(done(line)).doesNotContain("left out");
    damage("session", "UPDATE session SET minutes = 99 WHERE id = 1");
    assertThat(done(line))
        .contains("left out  Session 1 (2026-03-02 09:00")
        .contains(LeftOut.MEANS);
  }

  @Test
  void amounts_and_controls_are_held_against_the_history_too() throws SQLException {
    damage("session_control", "UPDATE session_control SET control = 'collector'");
    assertThat(shell.say("verify").out())
        .contains("Session 1, control 1 differs from the history: control is \"collector\"");
    assertThat(done("day")).contains("left out  Session 1");
  }

  @Test
  void what_differs_is_put_back_after_a_yes_and_undo_takes_that_back() throws SQLException {
    Map<String, Object> before = shell.json("day");
    damage("session", "UPDATE session SET minutes = 99, note = 'x' WHERE id = 1");
    Shell.Said nobody = shell.say("verify --mend");
    assertThat(nobody.code()).as("nobody to ask").isEqualTo(4);
    assertThat(nobody.err()).contains("Add --yes to put this row back to what the history holds.");
    assertThat(shell.atTerminal().typing("no\n").say("verify --mend").code()).isEqualTo(4);
    assertThat(shell.typing("yes\n").say("verify --mend").out())
        .contains("Put right: 1 row", "The book is whole");
    assertThat(shell.json("day")).isEqualTo(before);
    assertThat(done("undo")).contains("Put rows right from the history");
    assertThat(done("verify")).contains("The book is whole");
    assertThat(Shell.at(shell.json("day"), "sessions", 0, "minutes")).isEqualTo(99);
  }

  @Test
  void what_differs_may_be_kept_instead() throws SQLException {
    damage("session", "UPDATE session SET minutes = 40 WHERE id = 1");
    assertThat(done("verify --keep --yes")).contains("entered into the history: 1 row");
    assertThat(done("verify")).contains("The book is whole");
    assertThat(Shell.at(shell.json("day"), "sessions", 0, "minutes")).isEqualTo(40);
    assertThat(shell.say("verify --keep --mend").code()).isEqualTo(2);
  }

  @Test
  void a_row_that_is_gone_comes_back() throws SQLException {
    damage("session", "UPDATE session SET id = 7 WHERE id = 2");
    assertThat(shell.say("verify").out())
        .contains("Session 2 of 2026-03-02 is missing")
        .contains("Session 7 of 2026-03-02 does not stand in the history");
    done("verify --mend --yes");
    assertThat(done("verify")).contains("The book is whole: 2 sessions");
    assertThat(Shell.at(shell.json("day"), "sessions", 1, "id")).isEqualTo(2);
  }

  @Test
  void what_this_program_does_not_know_is_shown_and_not_estimated() throws SQLException {
    double both = outside(shell.json("day"));
    byHand("UPDATE session SET operation = 'laser-cutting', material = 'ash-x' WHERE id = 1;");
    assertThat(outside(shell.json("day"))).isLessThan(both);
    assertThat(done("day"))
        .contains(
            "left out  Session 1 (2026-03-02 09:00, 35 min of laser cutting by me) is left out: this"
                + " Motebook does not know the operation \"laser-cutting\", the material \"ash-x\".");
    for (String line : List.of("week", "due", "gear clocks", "history", "export --html w.html")) {
      String at = line.replace("w.html", folder.resolve("w.html").toString());
      assertThat(shell.say(at).code()).as(line).isIn(0, 3);
    }
    assertThat(shell.say("verify").out())
        .contains("Session 1 of 2026-03-02 names the operation \"laser-cutting\"");
    assertThat(shell.say("verify").code()).isEqualTo(4);
  }

  @Test
  void controls_finishes_and_sheets_that_are_not_known_are_not_estimated() throws SQLException {
    done("log 20m finishing using 100ml lacquer at 13:00");
    done("gear add finish \"wax\" --like shellac --volatile 400 --solvents \"ethanol 1\"");
    done("log 20m finishing using 100ml wax at 14:00");
    byHand(
        "UPDATE session_control SET control = 'robot';"
            + "UPDATE session_finish SET finish = 'glue-x' WHERE session_id = 3;"
            + "UPDATE finish_solvent SET solvent = 'unobtainium';");
    assertThat(done("day"))
        .contains("does not know the control \"robot\"")
        .contains("does not know the finish \"glue-x\"")
        .contains("does not know the finish \"wax\"");
    assertThat(shell.say("verify").out())
        .contains("the finish \"wax\" names the solvent \"unobtainium\"");
    assertThat(shell.say("week").code()).isZero();
    assertThat(shell.say("due").code()).isIn(0, 3);
  }

  @Test
  void limits_that_are_not_known_are_told_on_every_day() throws SQLException {
    byHand("UPDATE setting SET limit_set = 'mars';");
    assertThat(done("day")).contains("This Motebook has no limits \"mars\"");
    assertThat(done("week")).contains("This Motebook has no limits \"mars\"");
    assertThat(shell.json("day").get("limit")).isNull();
    assertThat(shell.say("verify").out()).contains("the limit set \"mars\"");
    done("limits use acgih");
    assertThat(done("day")).doesNotContain("mars");
  }
}
