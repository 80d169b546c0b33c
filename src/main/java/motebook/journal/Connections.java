package motebook.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;

/** Connects to a file with all that holds for a connection and not for the file. */
final class Connections {
  /** How long a write waits for another one to end before it is given up. */
  static final Duration PATIENCE = Duration.ofSeconds(5);

  private static final String IN_MEMORY = "jdbc:sqlite::memory:";

  private Connections() {}

  /**
   * A connection to a file that exists.
   *
   * @throws BookTrouble if it cannot be opened or is no database
   */
  static Store open(Path file, Duration patience) {
    NativeLibrary.prepare();
    try {
      return new Store(file, connect(file, patience));
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
  }

  /** A book that lives in memory only, to compare others with. */
  static Store inMemory() {
    Path nowhere = Path.of("in-memory");
    try {
      return new Store(nowhere, config(PATIENCE).createConnection(IN_MEMORY));
    } catch (SQLException e) {
      throw Troubles.of(nowhere, e);
    }
  }

  /** The file is named as a URI, so that no character of its name is taken for an option. */
  static Connection connect(Path file, Duration patience) throws SQLException {
    return config(patience).createConnection("jdbc:sqlite:" + file.toUri());
  }

  private static SQLiteConfig config(Duration patience) {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout((int) patience.toMillis());
    config.enforceForeignKeys(true);
    config.enableRecursiveTriggers(true);
    config.setSynchronous(SynchronousMode.FULL);
    return config;
  }
}
