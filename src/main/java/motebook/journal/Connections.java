package motebook.journal;

import java.nio.file.Path;
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
    // As a URI, so that no character of the name is taken for an option.
    return connect(file, "jdbc:sqlite:" + file.toUri(), patience);
  }

  /** A book that lives in memory only, to compare others with. */
  static Store inMemory() {
    NativeLibrary.prepare();
    return connect(Path.of("in-memory"), IN_MEMORY, PATIENCE);
  }

  private static Store connect(Path file, String url, Duration patience) {
    try {
      return new Store(file, config(patience).createConnection(url));
    } catch (SQLException e) {
      throw Troubles.of(file, e);
    }
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
