package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** An answer that is read row by row, however long it is. */
final class Cursor implements AutoCloseable {
  private final Path file;
  private final PreparedStatement statement;
  private final ResultSet rows;

  Cursor(Path file, Connection connection, String sql, Object... values) {
    this.file = file;
    try {
      statement = connection.prepareStatement(sql);
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      rows = statement.executeQuery();
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** Goes on to the next row; false where there is none. */
  boolean next() {
    return told(ResultSet::next);
  }

  /** A value of the row. */
  <T> T told(Row<T> row) {
    try {
      return row.read(rows);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** The value of a column, counted from 1, in a form of the export; null where it is empty. */
  Object value(int column, Form form) {
    return told(
        row -> {
          Object value =
              switch (form) {
                case WHOLE, TIME -> row.getLong(column);
                case NUMBER -> row.getDouble(column);
                case FLAG -> row.getBoolean(column);
                default -> row.getString(column);
              };
          return row.wasNull() ? null : value;
        });
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
