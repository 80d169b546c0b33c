package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Books that come in with what cannot be: told with its place, ended with 2. */
class HostileImportTest {
  @TempDir Path folder;

  private Shell filled() {
    Shell shell = new Shell(folder.resolve("book.db"));
    assertThat(shell.say("log 30m table saw of oak at 11:00").code()).isZero();
    assertThat(
            shell
                .say(
                    "export --csv "
                        + folder.resolve("out")
                        + " --json "
                        + folder.resolve("out.json"))
                .code())
        .isZero();
    return shell;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2026-03-02,11 | 2525-03-02,11 | sessions.csv, line 2",
        "Europe/Berlin | \"\"\"x\" | sessions.csv, line 2",
        "Europe/Berlin | /../x | sessions.csv, line 2",
        "table-saw | \"table-saw | sessions.csv",
        "T10:00 | T99:00 | sessions.csv, line 2",
        "T10:00 | T10:00:00Z+ | sessions.csv, line 2",
      })
  void in_a_folder(String from, String to, String where) throws IOException {
    Shell shell = filled();
    Path sessions = folder.resolve("out/sessions.csv");
    String text = Files.readString(sessions);
    assertThat(text).contains(from);
    Files.writeString(sessions, text.replace(from, to));
    Shell.Said said =
        shell.say("import " + folder.resolve("out") + " --book " + folder.resolve("new.db"));
    assertThat(said.err()).contains(where).doesNotContain("Exception").doesNotContain("failed at");
    assertThat(said.code()).isEqualTo(2);
  }

  @Test
  void a_document_that_nests_without_end() throws IOException {
    Shell shell = filled();
    Path json = folder.resolve("out.json");
    String text = Files.readString(json);
    Files.writeString(json, text.replace("\"minutes\":30", "\"minutes\":" + "[".repeat(100_000)));
    Shell.Said said = shell.say("import " + json + " --book " + folder.resolve("new.db"));
    assertThat(said.err()).contains("line").doesNotContain("Exception").doesNotContain("failed at");
    assertThat(said.code()).isEqualTo(2);
  }
}
