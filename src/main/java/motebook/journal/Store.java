package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import motebook.model.Refusal;
import org.apache.commons.dbutils.QueryRunner;

/**
 * One connection to the file: runs named statements, and holds a transaction together.
 *
 * <p>It may be shared by threads; each call, and each transaction as a whole, has it alone.
 */
final class Store implements AutoCloseable {
  private final Path file;
  private final Connection connection;
  private final QueryRunner runner = new QueryRunner(true);

  Store(Path file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  Path file() {
    return file;
  }

  /** Every row of the answer. */
  synchronized <T> List<T> list(String query, Row<T> row, Object... values) {
    try {
      String sql = Queries.named(query);
      return runner.query(connection, sql, rows -> readAll(rows, row), plain(values));
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    } catch (Refusal e) {
      throw new BookTrouble(Troubles.damaged(file) + " It holds: " + e.getMessage(), e);
    }
  }

  private static <T> List<T> readAll(ResultSet rows, Row<T> row) throws SQLException {
    List<T> all = new ArrayList<>();
    while (rows.next()) {
      all.add(row.read(rows));
    }
    return all;
  }

  /** The first row of the answer, if it has one. */
  <T> Optional<T> first(String query, Row<T> row, Object... values) {
    return list(query, row, values).stream().findFirst();
  }

  /** The one number that the answer consists of. */
  long number(String query, Object... values) {
    return first(query, Row::number, values).orElseThrow();
  }

  /** Runs a statement that answers nothing. */
  synchronized void run(String query, Object... values) {
    try {
      runner.update(connection, Queries.named(query), plain(values));
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** An answer to be read row by row, within a transaction. */
  Cursor cursor(String query, Object... values) {
    return new Cursor(file, connection, Queries.named(query), plain(values));
  }

  /** A statement to be run for many rows, within a transaction. */
  Batch batch(String query) {
    return new Batch(file, connection, Queries.named(query));
  }

  /** Runs a whole file of statements. */
  synchronized void script(String sql) {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /**
   * The one form of write transaction: all that the body writes, or nothing. The first error is the
   * one that is thrown; what goes wrong while rolling back is kept as suppressed.
   */
  <T> T atomically(Supplier<T> body) {
    return within("begin", body);
  }

  /** Reads several answers as of one moment, whatever other programs write meanwhile. */
  void reading(Runnable body) {
    within(
        "begin-reading",
        () -> {
          body.run();
          return file;
        });
  }

  private synchronized <T> T within(String begin, Supplier<T> body) {
    run(begin);
    try {
      T result = body.get();
      run("commit");
      return result;
    } catch (RuntimeException | Error first) {
      rollBack(first);
      throw first;
    }
  }

  private void rollBack(Throwable first) {
    try {
      run("roll-back");
    } catch (RuntimeException later) {
      first.addSuppressed(later);
    }
  }

  /** Optional values become their content or NULL, days and moments their ISO text. */
  private static Object[] plain(Object... values) {
    return Arrays.stream(values).map(Store::plain).toArray();
  }

  private static Object plain(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(Store::plain).orElse(null);
    }
    return value instanceof Number ? value : value == null ? null : value.toString();
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }
}
