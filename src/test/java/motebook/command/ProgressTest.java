package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter err = new StringWriter();
  private final Map<String, String> environment =
      new HashMap<>(Map.of("MOTEBOOK_ERROR_TERMINAL", "1"));
  private long milliseconds;

  private Progress begin(long total) {
    World world =
        new World(
            Clock.systemUTC(),
            environment,
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            true,
            (book, openAt, color, plain) -> 0);
    return Progress.over(world, "Writing", total, () -> milliseconds * 1_000_000);
  }

  @Test
  void within_the_first_second_nothing_is_shown() {
    try (Progress progress = begin(10)) {
      milliseconds = 999;
      progress.step(9);
    }
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void after_a_second_a_bar_is_drawn_and_taken_away_at_the_end() {
    try (Progress progress = begin(10)) {
      milliseconds = 1000;
      progress.step(4);
      assertThat(err.toString())
          .isEqualTo("\rWriting  " + "█".repeat(16) + "░".repeat(24) + "  40 %");
    }
    assertThat(err.toString()).endsWith("\r" + " ".repeat(9 + 40 + 6) + "\r");
  }

  @Test
  void it_is_drawn_ten_times_a_second_at_most() {
    try (Progress progress = begin(1000)) {
      for (int i = 0; i < 1000; i++) {
        milliseconds = 1000L + i;
        progress.step(1);
      }
      assertThat(err.toString().chars().filter(c -> c == '\r')).hasSize(10);
    }
  }

  @Test
  void more_steps_than_foreseen_stay_at_the_end() {
    try (Progress progress = begin(10)) {
      milliseconds = 1000;
      progress.step(12);
      assertThat(err.toString()).contains("█".repeat(40) + " 100 %");
    }
  }

  @Test
  void where_no_terminal_reads_it_is_silent() {
    environment.clear();
    try (Progress progress = begin(10)) {
      milliseconds = 5000;
      progress.step(5);
    }
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void it_keeps_to_ascii_where_it_is_asked_to() {
    environment.put("MOTEBOOK_ASCII", "1");
    try (Progress progress = begin(10)) {
      milliseconds = 1000;
      progress.step(5);
    }
    assertThat(err.toString())
        .contains("#".repeat(20) + ".".repeat(20))
        .matches("[\\x20-\\x7e\\r]+");
  }
}
