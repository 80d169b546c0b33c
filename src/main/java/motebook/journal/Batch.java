package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import motebook.model.Refusal;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** One statement that is run for many rows. */
final class Batch implements AutoCloseable {
  private final Path file;
  private final PreparedStatement statement;

  Batch(Path file, Connection connection, String sql) {
    this.file = file;
    try {
      statement = connection.prepareStatement(sql);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** Runs it with the values of a row. */
  void run(Object... values) {
    try {
      execute(values);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /**
   * Runs it with the values of a row that may be wrong.
   *
   * @throws Refusal if the tables do not take such a row
   */
  void offer(Object... values) {
    try {
      execute(values);
    } catch (SQLException e) {
      throw refusal(e);
    }
  }

  private void execute(Object... values) throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    statement.executeUpdate();
  }

  private RuntimeException refusal(SQLException e) {
    SQLiteErrorCode code =
        e instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    return switch (code) {
      case SQLITE_CONSTRAINT_UNIQUE, SQLITE_CONSTRAINT_PRIMARYKEY, SQLITE_CONSTRAINT_ROWID ->
          new Refusal("Another row has that number, name or time already.");
      case SQLITE_CONSTRAINT_CHECK ->
          new Refusal("A figure is out of its range, or two of them cannot stand together.");
      case SQLITE_CONSTRAINT_NOTNULL, SQLITE_CONSTRAINT_FOREIGNKEY ->
          new Refusal("Something is missing that the row cannot be without.");
      default -> Troubles.of(file, e);
    };
  }

  @Override
  public void close() {
    try {
      statement.close();
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }
}
