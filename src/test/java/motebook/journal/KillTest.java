package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A program that is killed while it writes loses nothing it has said is written. */
class KillTest {
  @TempDir Path folder;

  /** Logs sessions without end and prints the number of each once it is written. */
  static final class Writer {
    private Writer() {}

    public static void main(String[] arguments) {
      try (Book book = Book.open(Path.of(arguments[0]), Shop.CLOCK)) {
        for (int n = 0; ; n++) {
          LocalDate day = Shop.MONDAY.plusDays(n / 100);
          String start = LocalTime.MIDNIGHT.plusMinutes(10L * (n % 100)).toString();
          System.out.println(book.log(Shop.work("me", day, start, 10)).id());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 37, 120})
  void every_session_told_as_written_is_there_after_a_kill(int count) throws Exception {
    List<Long> told = writeAndKill(count);
    try (Book book = Shop.open(folder)) {
      for (long id : told) {
        assertThat(book.session(id)).as("session %s", id).isPresent();
      }
      assertThat(book.sessionCount()).isBetween((long) told.size(), told.size() + 1L);
      assertThat(book.changes().history(10_000)).hasSize((int) book.sessionCount());
      assertThat(book.verify()).isEmpty();
    }
  }

  /** The numbers told by the time the writer was dead; at least as many as asked for. */
  private List<Long> writeAndKill(int count) throws IOException, InterruptedException {
    Process writer = start();
    List<Long> told = new ArrayList<>();
    try (BufferedReader out = writer.inputReader()) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        told.add(Long.valueOf(line));
        if (told.size() == count) {
          writer.toHandle().destroyForcibly(); // leaves the rest of its words to be read
        }
      }
    }
    assertThat(writer.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(writer.exitValue()).as("killed, not ended").isNotZero();
    assertThat(told).hasSizeGreaterThanOrEqualTo(count);
    return told;
  }

  private Process start() throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes = System.getProperty("java.class.path");
    return new ProcessBuilder(
            java, "-cp", classes, Writer.class.getName(), Shop.file(folder).toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
