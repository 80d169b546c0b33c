package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Retirement;

/** Columns that may be empty. */
final class Columns {
  private Columns() {}

  static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
    return Row.optional(row, column).map(LocalDate::parse);
  }

  static OptionalDouble number(ResultSet row, String column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  static Optional<Retirement> retired(ResultSet row) throws SQLException {
    Optional<LocalDate> on = day(row, "retired_on");
    return on.isEmpty()
        ? Optional.empty()
        : Optional.of(new Retirement(on.get(), row.getString("retired_why")));
  }

  /** When an element was retired, the minute of that day told. */
  static Optional<Retirement> retiredAt(ResultSet row) throws SQLException {
    int minute = row.getInt("retired_minute");
    return retired(row).map(end -> new Retirement(end.on(), minute, end.why()));
  }

  /** The minute of a day, or NULL where all of the day is meant. */
  static Object minute(int minute) {
    return minute == 0 ? null : minute;
  }

  /** The value or NULL. */
  static Object orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
