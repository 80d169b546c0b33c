package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands around a command: the numbers it is given, where its answer goes, its home. */
class AroundACommandTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T18:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final StringWriter messages = new StringWriter();

  private int run(Map<String, String> environment, Writer out, String... words) {
    World world =
        new World(
            CLOCK,
            environment,
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(messages),
            false,
            (book, openAt, color, plain) -> 0);
    return Commands.run(world, words);
  }

  private Map<String, String> booked() {
    return Map.of("MOTEBOOK_BOOK", folder.resolve("book.db").toString());
  }

  /** A disk without room, or a reader that has gone. */
  private static Writer full() {
    return new Writer() {
      @Override
      public void write(char[] text, int from, int length) throws IOException {
        throw new IOException("No space left on device");
      }

      @Override
      public void flush() throws IOException {
        throw new IOException("No space left on device");
      }

      @Override
      public void close() {}
    };
  }

  @Test
  void an_answer_that_cannot_be_written_ends_with_1_and_says_so() {
    assertThat(run(booked(), full(), "day")).isEqualTo(1);
    assertThat(messages.toString())
        .contains("The answer could not be written in full: its output is full or closed.");
  }

  @Test
  void an_entry_whose_answer_cannot_be_written_stands() {
    assertThat(run(booked(), full(), "log", "20m", "assembly", "at", "9:00")).isEqualTo(1);
    StringWriter out = new StringWriter();
    assertThat(run(booked(), out, "day", "--json")).isZero();
    assertThat(out.toString()).contains("\"operation\":\"assembly\"");
  }

  @Test
  void a_command_that_failed_already_keeps_its_own_code() {
    assertThat(run(booked(), full(), "log", "nonsense")).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "'reckon shift --limit 0.05 --hours 10d', --hours",
    "'reckon wear --apf 10f --worn 90', --apf",
    "'reckon wear --apf 10 --worn 0x1p3', --worn",
    "'reckon wear --apf NaN --worn 90', --apf",
    "'reckon wear --apf Infinity --worn 90', --apf",
    "'place add loft --volume 90m3 --air-changes 2f', --air-changes",
  })
  void a_number_with_a_foreign_ending_is_refused_by_the_name_of_its_option(
      String line, String option) {
    assertThat(run(booked(), new StringWriter(), line.split(" "))).isEqualTo(2);
    assertThat(messages.toString()).contains(option).doesNotContain("Exception");
  }

  @Test
  void without_a_home_and_a_book_one_sentence_says_what_to_name() {
    assertThat(run(Map.of(), new StringWriter(), "day")).isEqualTo(2);
    assertThat(messages.toString().strip())
        .isEqualTo(
            "There is no home folder to keep the book in, for HOME is not set. Name the book with"
                + " --book FILE or in MOTEBOOK_BOOK.");
    assertThat(Path.of(".local")).doesNotExist();
    Path named = folder.resolve("named.db");
    assertThat(run(Map.of(), new StringWriter(), "day", "--book", named.toString())).isZero();
    assertThat(Files.exists(named)).isTrue();
  }
}
