package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;

/** How one row of an answer becomes a value. */
@FunctionalInterface
interface Row<T> {
  /** Reads the row that the result set stands on, without moving it. */
  T read(ResultSet row) throws SQLException;

  /** The only column of the row, as text. */
  static String text(ResultSet row) throws SQLException {
    return row.getString(1);
  }

  /** The first column of the row, as a whole number. */
  static long number(ResultSet row) throws SQLException {
    return row.getLong(1);
  }

  /** A column that may be empty, as text. */
  static Optional<String> optional(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column));
  }
}
