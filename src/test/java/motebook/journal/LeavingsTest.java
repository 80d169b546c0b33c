package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a killed program left half done goes with the next start; what another one writes stays. */
class LeavingsTest {
  private static final long NOBODY = 999_999_999;

  @TempDir Path folder;

  @Test
  void half_copies_of_programs_that_are_gone_go_when_the_book_is_opened() throws IOException {
    Shop.open(folder).close();
    Path copies = Files.createDirectories(folder.resolve("book.db.copies"));
    Path copying = Files.createFile(copies.resolve("copying-" + NOBODY + "-7.part"));
    Path journal = Files.createFile(copies.resolve("copying-" + NOBODY + "-7.part-journal"));
    Path restoring = Files.createFile(folder.resolve("restoring-" + NOBODY + "-7.part"));
    long me = ProcessHandle.current().pid();
    Path running = Files.createFile(copies.resolve("copying-" + me + "-7.part"));
    Path other = Files.createFile(folder.resolve("restoring-notes.part"));
    Shop.open(folder).close();
    assertThat(copying).doesNotExist();
    assertThat(journal).doesNotExist();
    assertThat(restoring).doesNotExist();
    assertThat(running).exists();
    assertThat(other).exists();
  }

  @Test
  void what_is_begun_bears_the_number_of_this_program() throws IOException {
    assertThat(Leavings.begin(folder, "copying").getFileName().toString())
        .matches("copying-" + ProcessHandle.current().pid() + "-\\d+\\.part");
  }
}
