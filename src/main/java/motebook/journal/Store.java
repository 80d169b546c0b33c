package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
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
import org.sqlite.ProgressHandler;
import org.sqlite.SQLiteConnection;
import org.sqlite.core.DB.ProgressObserver;

/**
 * One connection to the file: runs named statements, and holds a transaction together.
 *
 * <p>It may be shared by threads; each call, and each transaction as a whole, has it alone.
 */
final class Store implements AutoCloseable {
  private static final int PAUSE_MILLIS = 50;
  private static final int PAUSES = 100;
  private static final int PAGES_A_STEP = 16;
  private static final int STEPS_A_TICK = 100_000;

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

  /** Lets statements call {@link FoldedText}. */
  synchronized void knowFolded() {
    try {
      FoldedText.makeKnown(connection);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** Every row of the answer. */
  <T> List<T> list(String query, Row<T> row, Object... values) {
    return answer(Queries.named(query), row, values);
  }

  private synchronized <T> List<T> answer(String sql, Row<T> row, Object... values) {
    try {
      return runner.query(connection, sql, rows -> readAll(rows, row), plain(values));
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    } catch (Refusal e) {
      throw new BookTrouble(Troubles.damaged(file) + " It holds: " + e.getMessage(), e);
    }
  }

  /** Every row of the answer to a statement that another statement composed. */
  <T> List<T> composed(String sql, Row<T> row, Object... values) {
    return answer(sql, row, values);
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

  /** Runs a statement that answers nothing once for each list of values, prepared once. */
  synchronized void runEach(String query, List<Object[]> values) {
    if (values.isEmpty()) {
      return;
    }
    try (PreparedStatement statement = connection.prepareStatement(Queries.named(query))) {
      for (Object[] each : values) {
        for (int i = 0; i < each.length; i++) {
          statement.setObject(i + 1, plain(each[i]));
        }
        statement.addBatch();
      }
      statement.executeBatch();
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

  /**
   * Puts the whole content of another file in the place of this one's, in one write transaction:
   * others see the old content until it is done, and go on with the new one.
   *
   * @param sound a file of the same page size
   * @param pages told again and again how many pages are left and how many there are; this file is
   *     locked for writing from before the first time until after the last but one
   * @throws BookTrouble if somebody else is writing, or the disk is full; the file is as it was
   */
  synchronized void replaceBy(Path sound, ProgressObserver pages) {
    boolean[] begun = {false, false};
    try {
      connection
          .unwrap(SQLiteConnection.class)
          .getDatabase()
          .restore(
              "main",
              sound.toString(),
              (left, all) -> {
                begun[0] = true;
                begun[1] = left == 0;
                pages.progress(left, all);
              },
              PAUSE_MILLIS,
              PAUSES,
              PAGES_A_STEP);
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
    // The driver tells of errors of the other file only; that nothing is left is told at the end.
    if (!begun[1]) {
      throw new BookTrouble(begun[0] ? Troubles.full(file) : Troubles.inUse(file));
    }
  }

  /** Runs statements while somebody is told, again and again, that they still run. */
  synchronized void watched(Runnable ticks, Runnable body) {
    try {
      ProgressHandler.setHandler(connection, STEPS_A_TICK, ticking(ticks));
      try {
        body.run();
      } finally {
        ProgressHandler.clearHandler(connection);
      }
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  private static ProgressHandler ticking(Runnable ticks) {
    return new ProgressHandler() {
      @Override
      protected int progress() {
        ticks.run();
        return 0;
      }
    };
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
