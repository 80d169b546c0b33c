package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that go out: in place whole, over nothing of anybody else's, for their owner alone. */
class ExportedFilesTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void log() {
    shell = new Shell(folder.resolve("book.db"));
    done("log 35m orbital sanding of oak at 9:00");
  }

  private void done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @CsvSource({"json, out.json", "pdf, week.pdf", "html, week.html", "calendar, due.ics"})
  void a_file_is_replaced_only_if_this_program_wrote_it_or_by_force(String option, String name)
      throws IOException {
    Path file = folder.resolve(name);
    String line = "export --" + option + " " + file;
    done(line);
    done(line);
    String begin =
        new String(Files.readAllBytes(file), 0, 14, java.nio.charset.StandardCharsets.ISO_8859_1);
    Files.writeString(file, begin + " somebody else's");
    Shell.Said said = shell.say(line);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("--force").contains("Nothing was written");
    assertThat(Files.readString(file)).endsWith("somebody else's");
    done(line + " --force");
    assertThat(Files.size(file)).isGreaterThan(100);
  }

  @ParameterizedTest
  @CsvSource({"json, out.json", "pdf, week.pdf", "html, week.html", "calendar, due.ics"})
  void a_file_is_for_its_owner_alone_and_never_opened_wider(String option, String name)
      throws IOException {
    Path file = folder.resolve(name);
    done("export --" + option + " " + file);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--------"));
    done("export --" + option + " " + file);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("r--------");
  }

  @Test
  void a_book_never_gives_way_not_even_by_force() throws IOException {
    byte[] book = Files.readAllBytes(folder.resolve("book.db"));
    Shell.Said said = shell.say("export --json " + folder.resolve("book.db") + " --force");
    assertThat(said.code()).isEqualTo(2);
    assertThat(Files.readAllBytes(folder.resolve("book.db"))).isEqualTo(book);
  }

  @Test
  void a_folder_is_for_its_owner_alone() throws IOException {
    done("export --csv " + folder.resolve("out"));
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("out"))))
        .isEqualTo("rwx------");
  }

  @Test
  void through_a_link_the_file_is_written_that_it_leads_to() throws IOException {
    Path real = folder.resolve("real.json");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    done("export --json " + real);
    done("log 20m assembly at 11:00");
    done("export --json " + link);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(real)).contains("assembly");
  }

  @Test
  void a_place_that_cannot_be_written_ends_with_1_and_leaves_the_earlier_file() {
    Shell.Said said = shell.say("export --json " + folder.resolve("no/such/out.json"));
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.err()).contains("there is no such folder").doesNotContain("Exception");
    Shell.Said under = shell.say("export --pdf " + folder.resolve("book.db/week.pdf"));
    assertThat(under.code()).isEqualTo(1);
    assertThat(under.err()).doesNotContain("Exception");
  }

  /** The file is never missing in between: a watcher that looks all the time always finds one. */
  @Test
  void the_earlier_file_gives_way_in_one_step() {
    Path file = folder.resolve("out.json");
    done("export --json " + file);
    CompletableFuture<Void> writing =
        CompletableFuture.runAsync(
            () -> IntStream.range(0, 8).forEach(i -> done("export --json " + file)));
    long looked = 0;
    while (!writing.isDone()) {
      assertThat(Files.exists(file)).isTrue();
      looked++;
    }
    writing.join();
    assertThat(looked).isPositive();
  }

  @ParameterizedTest
  @CsvSource({"json, out.json", "csv, out"})
  void several_exports_to_one_place_all_end_whole(String option, String name) throws IOException {
    Path target = folder.resolve(name);
    String line = "export --" + option + " " + target;
    List<CompletableFuture<Shell.Said>> all =
        IntStream.range(0, 4)
            .mapToObj(
                i ->
                    CompletableFuture.supplyAsync(
                        () -> new Shell(folder.resolve("book.db")).say(line)))
            .toList();
    all.forEach(one -> assertThat(one.join().code()).as(one.join().err()).isZero());
    done("import " + target + " --book " + folder.resolve("other.db"));
    assertThat(names()).noneMatch(left -> left.contains("motebook-"));
  }

  @Test
  void a_writing_that_fails_leaves_what_was_there() throws IOException {
    Path file = folder.resolve("out.json");
    done("export --json " + file);
    String before = Files.readString(file);
    assertThatThrownBy(
            () ->
                SheetFile.write(
                    file,
                    "motebook",
                    false,
                    out -> {
                      out.write(1);
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(Unwritable.class)
        .hasMessageContaining("No space left on device");
    assertThat(Files.readString(file)).isEqualTo(before);
    assertThat(names()).noneMatch(left -> left.contains("motebook-part"));
  }
}
