package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ctrl-C while the real program works leaves everything as it was. */
class CtrlCTest {
  private static final int SESSIONS = 60_000;
  private static final int A_DAY = 14;

  @TempDir Path folder;
  private Path big;
  private Path small;
  private Process program;

  @BeforeEach
  void manySessions() throws IOException {
    big = folder.resolve("big");
    small = folder.resolve("small");
    Shell shell = new Shell(folder.resolve("small.db"));
    assertThat(shell.say("export --csv " + big).code()).isZero();
    assertThat(shell.say("export --csv " + small).code()).isZero();
    try (BufferedWriter out = Files.newBufferedWriter(big.resolve("sessions.csv"))) {
      out.write(
          "id,date,start,minutes,person,place,operation,material,controls,finishes_ml,respirator,"
              + "seal_checked,worn_percent,note,zone,starts_at\n");
      for (int i = 0; i < SESSIONS; i++) {
        LocalDate day = LocalDate.of(2000, 1, 1).plusDays(i / A_DAY);
        String start = "%02d:00".formatted(6 + i % A_DAY);
        out.write(
            "%d,%s,%s,40,me,shop,table-saw,oak,collector,,,,,,UTC,%sT%s:00Z\n"
                .formatted(i + 1, day, start, day, start));
      }
    }
  }

  @AfterEach
  void end() {
    if (program != null) {
      program.destroyForcibly();
    }
  }

  private void start(String... words) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "motebook.Motebook"));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("MOTEBOOK_ERROR_TERMINAL", "1");
    program = builder.start();
  }

  private void send(String signal) throws IOException, InterruptedException {
    ignoredHere();
    int code =
        new ProcessBuilder("kill", "-" + signal, Long.toString(program.pid())).start().waitFor();
    assertThat(code).isZero();
    assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(program.exitValue()).isEqualTo(signal.equals("INT") ? 130 : 143);
  }

  /** A shell that runs this in the background may have had Ctrl-C ignored for all below it. */
  private void ignoredHere() throws IOException {
    Path status = Path.of("/proc", Long.toString(program.pid()), "status");
    if (Files.exists(status)) {
      String ignored =
          Files.readString(status).lines().filter(l -> l.startsWith("SigIgn")).findFirst().get();
      long mask = Long.parseUnsignedLong(ignored.replaceFirst("\\D+", "").strip(), 16);
      assumeFalse((mask & 2) != 0, "SIGINT is ignored here");
    }
  }

  private static Map<String, String> files(Path of) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(of)) {
      for (Path file : (Iterable<Path>) all::iterator) {
        files.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return files;
  }

  /** Reads the messages until the bar is drawn. */
  private void awaitBar() throws IOException {
    InputStream err = program.getErrorStream();
    StringBuilder told = new StringBuilder();
    for (int c = err.read(); c != '\r'; c = err.read()) {
      assertThat(c).as("ended before it drew a bar: " + told).isNotNegative();
      told.append((char) c);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"INT", "TERM"})
  void while_a_book_comes_in_nothing_has_come_in(String signal) throws Exception {
    Path book = folder.resolve("new.db");
    start("import", big.toString(), "--book", book.toString());
    awaitBar();
    send(signal);
    Shell shell = new Shell(book);
    assertThat(shell.json("history")).containsEntry("changes", List.of());
    assertThat(shell.say("verify").code()).isZero();
    assertThat(shell.say("day 2000-01-01").out()).doesNotContain("table saw");
    assertThat(shell.say("import " + small).code()).as("the book is still fresh").isZero();
  }

  @Test
  void while_a_book_goes_out_the_earlier_export_stays_and_nothing_is_left_beside_it()
      throws Exception {
    Path book = folder.resolve("new.db");
    Path out = folder.resolve("out");
    Path document = folder.resolve("out.json");
    Shell shell = new Shell(book);
    String export = "export --csv " + out + " --json " + document;
    assertThat(shell.say(export).code()).isZero();
    Map<String, String> before = files(out);
    assertThat(shell.say("import " + big).code()).isZero();
    try (WatchService watch = folder.getFileSystem().newWatchService()) {
      folder.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
      start("export", "--csv", out.toString(), "--book", book.toString());
      awaitPart(watch, ".out-");
      send("INT");
      assertThat(files(out)).isEqualTo(before);
      start("export", "--json", document.toString(), "--book", book.toString());
      awaitPart(watch, ".out.json-");
      send("INT");
    }
    assertThat(Files.readString(document)).doesNotContain("table-saw");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).noneMatch(path -> path.getFileName().toString().startsWith("."));
    }
    assertThat(shell.say(export).code()).isZero();
    assertThat(files(out).get("sessions.csv")).contains("table-saw");
  }

  private static void awaitPart(WatchService watch, String begin) throws InterruptedException {
    boolean seen = false;
    while (!seen) {
      var key = watch.poll(60, TimeUnit.SECONDS);
      assertThat(key).as("a part of " + begin).isNotNull();
      seen = key.pollEvents().stream().anyMatch(e -> e.context().toString().startsWith(begin));
      key.reset();
    }
  }
}
