package motebook.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * What it costs to import a sheet of 200,000 sessions over 40 years, against the sqlite3 shell's
 * own {@code .import} of the same rows into the same tables.
 *
 * <p>Ours is the whole command as a process: it reads a hand-made sheet, checks every rule, writes
 * and keeps the record for undo. The shell's is {@code .import} of three CSV files that hold
 * exactly the rows that ours wrote, into the tables of an equal book, in one transaction, with the
 * tables' own triggers, indexes and checks, since these belong to the tables.
 */
public final class ImportBenchmark {
  private static final int SESSIONS = 200_000;
  private static final int YEARS = 40;
  private static final int RUNS = 3;
  private static final List<String> PEOPLE = List.of("me", "Ana", "Ben", "Chloe");
  private static final List<String> TABLES =
      List.of("session", "session_control", "session_finish");
  private static final List<String> WORKS =
      List.of(
          "orbital sanding,oak,tool vacuum,",
          "table saw,pine,collector; doors open,",
          "hand router,plywood,tool vacuum,",
          "finishing,oak,doors open,250ml lacquer",
          "band saw,beech,collector,",
          "planer,oak,collector; doors open,");

  private final Path program;
  private final Path folder;

  private ImportBenchmark(Path program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** Runs it; the arguments are the program and an empty folder. */
  public static void main(String[] arguments) throws Exception {
    new ImportBenchmark(Path.of(arguments[0]).toAbsolutePath(), Path.of(arguments[1])).run();
  }

  private void run() throws Exception {
    Path sheet = folder.resolve("sessions.csv");
    write(sheet);
    Path book = folder.resolve("book.db");
    Path fresh = folder.resolve("fresh.db");
    prepare(fresh);
    double ours = median(() -> copied(fresh, book), () -> importSheet(sheet, book));
    tables(book);
    if (!thereIs("sqlite3")) {
      System.out.printf(
          "importing %,d sessions: %.2f s; no sqlite3 to compare with%n", SESSIONS, ours);
      return;
    }
    Path other = folder.resolve("other.db");
    double theirs = median(() -> copied(fresh, other), () -> shellImport(other));
    System.out.printf(
        "importing %,d sessions against the sqlite3 shell's .import of the same rows: %.2f x as fast"
            + " (%.2f s against %.2f s)%n",
        SESSIONS, theirs / ours, ours, theirs);
  }

  /** Something that is done. */
  @FunctionalInterface
  private interface Deed {
    void run() throws Exception;
  }

  private static double median(Deed before, Deed timed) throws Exception {
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      before.run();
      long from = System.nanoTime();
      timed.run();
      seconds[i] = (System.nanoTime() - from) / 1e9;
    }
    Arrays.sort(seconds);
    return seconds[RUNS / 2];
  }

  /** Four people, each with sessions of 20 minutes one after the other, spread over 40 years. */
  private static void write(Path sheet) throws IOException {
    LocalDate last = LocalDate.of(2026, 3, 1);
    long days = YEARS * 365L;
    int aDay = (int) Math.ceil((double) SESSIONS / days / PEOPLE.size());
    try (BufferedWriter out = Files.newBufferedWriter(sheet)) {
      out.write("date,start,minutes,operation,material,controls,using,place,person,respirator,");
      out.write("checked,worn %,note\n");
      for (int i = 0; i < SESSIONS; i++) {
        int ofDay = i / PEOPLE.size() % aDay;
        LocalDate day = last.minusDays(days - 1 - i / (PEOPLE.size() * aDay));
        out.write(
            "%s,%02d:%02d,20,%s,shop,%s,half mask,yes,95,%s%n"
                .formatted(
                    day,
                    8 + ofDay,
                    i % 40,
                    WORKS.get(i % 37 % WORKS.size()),
                    PEOPLE.get(i % PEOPLE.size()),
                    i % 11 == 0 ? "piece " + i : ""));
      }
    }
  }

  private void prepare(Path book) {
    for (String person : PEOPLE.subList(1, PEOPLE.size())) {
      say(book, "person", "add", person);
    }
    say(book, "gear", "add", "respirator", "half mask", "--facepiece", "half mask");
  }

  private static void say(Path book, String... words) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    World world =
        new World(
            Clock.systemUTC(),
            Map.of("MOTEBOOK_BOOK", book.toString()),
            System.in,
            nowhere,
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            false,
            (file, openAt, color, plain) -> 1);
    if (Commands.run(world, words) != 0) {
      throw new IllegalStateException(String.join(" ", words));
    }
  }

  private static void copied(Path from, Path to) throws IOException {
    for (String tail : List.of("-wal", "-shm")) {
      Files.deleteIfExists(to.resolveSibling(to.getFileName() + tail));
    }
    Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
  }

  private void importSheet(Path sheet, Path book) throws Exception {
    done(
        new ProcessBuilder(
            program.toString(), "import", sheet.toString(), "--yes", "--book", book.toString()));
  }

  private void done(ProcessBuilder builder) throws Exception {
    Process process =
        builder
            .redirectOutput(folder.resolve("said").toFile())
            .redirectError(folder.resolve("complaints").toFile())
            .start();
    process.getOutputStream().close();
    if (process.waitFor() != 0) {
      throw new IllegalStateException(builder.command() + " failed");
    }
  }

  private static Connection connect(Path book) throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + book);
  }

  /** Writes what ours wrote as a CSV file for each table. */
  private void tables(Path book) throws Exception {
    try (Connection connection = connect(book);
        Statement statement = connection.createStatement()) {
      for (String table : TABLES) {
        ResultSet row = statement.executeQuery("SELECT * FROM " + table);
        int rows = 0;
        try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(table + ".csv"))) {
          for (; row.next(); rows++) {
            out.write(row.getString(1));
            for (int i = 2; i <= row.getMetaData().getColumnCount(); i++) {
              out.write("," + row.getString(i));
            }
            out.write("\n");
          }
        }
        if (table.equals("session") && rows != SESSIONS) {
          throw new IllegalStateException(rows + " sessions were imported");
        }
      }
    }
  }

  private static boolean thereIs(String program) {
    return Arrays.stream(System.getenv("PATH").split(":", -1))
        .anyMatch(path -> Files.isExecutable(Path.of(path, program)));
  }

  private void shellImport(Path book) throws Exception {
    StringBuilder script = new StringBuilder();
    script.append("PRAGMA foreign_keys = ON;\nPRAGMA recursive_triggers = ON;\n");
    script.append("PRAGMA synchronous = FULL;\nBEGIN IMMEDIATE;\n");
    script.append("INSERT INTO change (at, what) VALUES ('2026-03-02T00:00:00Z', 'import');\n");
    script.append("INSERT INTO open_change (id, change_id) SELECT 1, max(id) FROM change;\n");
    for (String table : TABLES) {
      script.append(".import --csv %s %s\n".formatted(folder.resolve(table + ".csv"), table));
    }
    script.append("DELETE FROM open_change;\nCOMMIT;\n");
    script.append(".output stdout\nSELECT count(*) FROM session;\n");
    Path file = folder.resolve("import.sql");
    Files.writeString(file, script);
    done(new ProcessBuilder("sqlite3", "-bail", book.toString(), ".read " + file));
    String said = Files.readString(folder.resolve("said")).strip();
    if (!said.endsWith(String.valueOf(SESSIONS))) {
      throw new IllegalStateException("the shell imported " + said);
    }
  }
}
