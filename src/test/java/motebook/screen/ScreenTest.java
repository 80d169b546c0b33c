package motebook.screen;

import static java.nio.charset.StandardCharsets.UTF_8;
import static motebook.screen.Options.Colour.AUTO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Map;
import motebook.journal.BookTrouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The screens as a whole, between two streams. */
@Timeout(60)
class ScreenTest {
  private static final String TAKEN = "\u001b[?1049h";
  private static final String GIVEN_BACK = "\u001b[?1049l";

  private final Clock clock = Clock.fixed(Pilot.NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  private final Options options =
      Options.from(Map.of("TERM", "xterm", "LANG", "C.UTF-8", "MOTEBOOK_SCREEN", "1"), AUTO);
  private final ByteArrayOutputStream frames = new ByteArrayOutputStream();

  @TempDir Path folder;

  /** Keys of somebody who presses nothing, for as long as the program runs. */
  private static InputStream silence() throws IOException {
    return new PipedInputStream(new PipedOutputStream());
  }

  private int show(InputStream keys, Path file) {
    try (ComingBook book = ComingBook.opening(file, clock)) {
      return Screen.between(keys, frames, book, clock, options);
    }
  }

  private String shown() {
    return frames.toString(UTF_8);
  }

  @Test
  void who_leaves_gets_the_terminal_back() {
    InputStream keys = new ByteArrayInputStream("\u0003".getBytes(UTF_8));
    assertThat(show(keys, folder.resolve("book.db"))).isZero();
    assertThat(shown()).contains(TAKEN).endsWith(GIVEN_BACK);
  }

  @Test
  void a_file_that_is_no_book_is_told_after_the_terminal_was_given_back() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear Zoë");
    InputStream nothing = silence();
    assertThatThrownBy(() -> show(nothing, letter))
        .isInstanceOf(BookTrouble.class)
        .hasMessageContaining("letter.txt");
    assertThat(shown()).contains(TAKEN).endsWith(GIVEN_BACK);
    assertThat(letter).hasContent("Dear Zoë");
  }

  @Test
  void what_was_typed_when_it_was_left_is_there_again() throws IOException {
    Path file = folder.resolve("book.db");
    try (Pilot pilot = new Pilot(file).open()) {
      pilot.type("20m assembly").press("Enter");
      assertThat(pilot.book().hasSessions()).isTrue();
    }
    show(new ByteArrayInputStream("40m orb\u0003".getBytes(UTF_8)), file);
    assertThat(Draft.beside(file).read()).isEqualTo("40m orb");
  }

  @Test
  void without_a_terminal_no_book_is_begun() {
    Path file = folder.resolve("book.db");
    Options none = Options.from(Map.of("TERM", "xterm"), AUTO);
    assertThat(Screen.run(file, clock, none)).isEqualTo(1);
    assertThat(file).doesNotExist();
  }
}
