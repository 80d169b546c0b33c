package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.report.Invocation;
import motebook.screen.state.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line that cannot be previewed stops nothing and stays as it was typed. */
class PreviewShieldTest {
  private static final String LINE = "20m drilling of oak yesterday at 14:00";
  private static final String NOTE = "This line cannot be previewed";

  @TempDir Path folder;

  @Test
  void whatever_goes_wrong_while_a_line_is_read_becomes_a_note_beside_it() {
    try (Book book = Book.open(folder.resolve("book.db"), Clock.systemUTC())) {
      Lines lines = new Lines(book, Clock.systemUTC(), Invocation.USUAL);
      Reading reading =
          lines.reading(
              LINE,
              List.of(),
              Optional.empty(),
              () -> {
                throw new IllegalStateException("nobody thought of this");
              });
      assertThat(reading.text()).isEqualTo(LINE);
      assertThat(reading.understood()).isEmpty();
      assertThat(reading.fault().orElseThrow().sentence()).contains(NOTE);
    }
  }
}
