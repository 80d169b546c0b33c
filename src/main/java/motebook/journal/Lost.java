package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a book holds that a copy of it does not.
 *
 * @param sessions how many
 * @param first day of the earliest of them
 * @param last day of the latest of them
 * @param changes how many changes of any kind
 */
public record Lost(
    long sessions, Optional<LocalDate> first, Optional<LocalDate> last, long changes) {
  static Lost read(ResultSet row) throws SQLException {
    return new Lost(
        row.getLong("sessions"),
        Row.optional(row, "first").map(LocalDate::parse),
        Row.optional(row, "last").map(LocalDate::parse),
        row.getLong("changes"));
  }
}
