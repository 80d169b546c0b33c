package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.function.IntFunction;

/**
 * Brings a book to the form this program knows.
 *
 * @param latest the newest version known
 * @param step the step that leads to a version, from 1 to the latest
 */
record Migrations(int latest, IntFunction<Migration> step) {
  /** "Mote" in the file's header: the file is a book. */
  static final int APPLICATION = 0x4d6f7465;

  private static final Duration PAUSE = Duration.ofMillis(10);

  /** The steps that are packed with the program. */
  static Migrations shipped() {
    return new Migrations(Migration.FILES.size(), Migration::shipped);
  }

  /**
   * Runs the steps that the book lacks, each in a transaction of its own, after a verified copy of
   * a book that holds something. A book that is up to date costs one statement.
   *
   * @throws BookTrouble if the file is no book, or one of a newer program
   */
  void bringUpToDate(Store store, Copies copies, LocalDate today) {
    State state = state(store);
    state.refuseForeign(store);
    refuseNewer(store, state);
    if (state.version < latest && state.holdsTables) {
      copies.beforeVersion(latest, today);
    }
    if (!state.inWal) {
      switchToWal(store);
    }
    stepsAfter(state.version, store);
  }

  /** Runs the steps after a version; all of them, after 0, make a fresh book. */
  void stepsAfter(int version, Store store) {
    for (int next = version + 1; next <= latest; next++) {
      run(store, step.apply(next));
    }
  }

  /**
   * Refuses a book of a newer program.
   *
   * @throws BookTrouble saying so
   */
  void refuseNewer(Store store, State state) {
    if (state.version > latest) {
      throw new BookTrouble(newer(store, state.version));
    }
  }

  private String newer(Store store, int version) {
    return "The book "
        + store.file()
        + " was last used with a newer Motebook (its form is "
        + version
        + ", this program knows "
        + latest
        + "). Use the newer program.";
  }

  /** Another program may have run the step since we looked: inside the transaction none can. */
  private static void run(Store store, Migration migration) {
    store.atomically(
        () -> {
          if (state(store).version < migration.version()) {
            store.script(migration.script());
            requireVersion(store, migration.version());
          }
          return migration;
        });
  }

  private static void requireVersion(Store store, int version) {
    if (state(store).version != version) {
      throw new IllegalStateException("The step to version " + version + " does not set it");
    }
  }

  /** SQLite does not wait by itself here when another program opens the same fresh file. */
  private static void switchToWal(Store store) {
    long giveUp = System.nanoTime() + Connections.PATIENCE.toNanos();
    while (true) {
      try {
        store.first("switch-to-wal", Row::text);
        return;
      } catch (BookTrouble e) {
        if (!Troubles.passes(e) || System.nanoTime() > giveUp || !pause()) {
          throw e;
        }
      }
    }
  }

  private static boolean pause() {
    try {
      Thread.sleep(PAUSE.toMillis());
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  static State state(Store store) {
    return store.first("book-state", State::read).orElseThrow();
  }

  /** What the header of the file says. */
  record State(int application, int version, boolean inWal, boolean holdsTables) {
    private static State read(ResultSet row) throws SQLException {
      return new State(
          row.getInt("application_id"),
          row.getInt("user_version"),
          row.getString("journal_mode").equals("wal"),
          row.getBoolean("holds_tables"));
    }

    /** Whether the file is a book that holds something. */
    boolean ours() {
      return application == APPLICATION && version > 0 && holdsTables;
    }

    private void refuseForeign(Store store) {
      boolean fresh = application == 0 && version == 0 && !holdsTables;
      if (!fresh && !ours()) {
        throw new BookTrouble(Troubles.foreign(store.file()));
      }
    }
  }
}
