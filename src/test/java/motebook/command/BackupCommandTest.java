package motebook.command;

import static motebook.command.Shell.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupCommandTest {
  @TempDir Path folder;
  private Shell shell;
  private Path copy;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
    copy = folder.resolve("stick").resolve("copy.db");
    shell.say("log 30m assembly at 9:00 on 2026-02-27");
  }

  private Object sessions() {
    return at(shell.json("week 2026-02-27"), "minutes_logged");
  }

  @Test
  void a_copy_is_told_with_its_place_its_sessions_and_its_size() {
    Shell.Said said = shell.say("backup " + copy);
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .matches("Copied to \\Q" + copy + "\\E: 1 session, \\d+ kB, checked\\.\n");
    assertThat(shell.json("backup " + copy))
        .containsEntry("file", copy.toString())
        .containsEntry("sessions", 1)
        .containsEntry("bytes", (int) copy.toFile().length());
  }

  @Test
  void what_is_no_earlier_copy_is_not_written_over() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear reader");
    Shell.Said said = shell.say("backup " + letter);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("no earlier copy of a book");
    assertThat(letter).hasContent("Dear reader");
  }

  @Test
  void the_list_shows_every_copy_and_why_it_is_kept() throws IOException {
    assertThat(shell.say("backup --list").out()).startsWith("There is no copy in ");
    for (int day = 1; day <= 12; day++) {
      shell.at("2026-03-%02dT18:00".formatted(day)).say("log 10m assembly at 9:00");
    }
    shell.say("backup");
    Path copies = folder.resolve("book.db.copies");
    Files.writeString(copies.resolve("2026-01-31.db"), "not a book");
    Files.writeString(copies.resolve("2025-12-31.db"), "not a book");
    List<?> all = (List<?>) at(shell.json("backup --list"), "copies");
    assertThat(all.stream().map(one -> at(one, "date") + " " + at(one, "kind")))
        .startsWith("2026-03-12 daily", "2026-03-12 asked-for", "2026-03-11 daily")
        .contains(
            "2026-03-06 daily", "2026-03-01 weekly", "2026-01-31 weekly", "2025-12-31 monthly");
    Map<?, ?> last = (Map<?, ?>) all.get(all.size() - 1);
    assertThat(at(last, "sessions")).isNull();
    assertThat(at(all.get(0), "sessions")).isEqualTo(12);
    assertThat(shell.say("backup --list").out())
        .contains(
            "2026-03-12  asked-for         13 sessions, ",
            "2026-01-31  weekly            cannot be read");
  }

  @Test
  void a_restore_says_what_would_be_lost_and_waits_for_a_yes() {
    shell.say("backup " + copy);
    shell.say("log 30m assembly at 11:00 on 2026-02-27");
    Shell.Said shown = shell.say("restore " + copy);
    assertThat(shown.out())
        .isEqualTo(
            "The copy "
                + copy
                + " is whole: 1 session.\n"
                + "It lacks 1 session of the present book, on 2026-02-27, and 1"
                + " change in all.\n"
                + "Nothing is done yet. Add --yes to put it in the place of the book.\n");
    assertThat(sessions()).isEqualTo(60);
    assertThat(shell.json("restore " + copy))
        .containsEntry("copy", copy.toString())
        .containsEntry("sessions", 1)
        .containsEntry("lost_sessions", 1)
        .containsEntry("lost_from", "2026-02-27")
        .containsEntry("lost_to", "2026-02-27")
        .containsEntry("lost_changes", 1)
        .containsEntry("restored", false)
        .containsEntry("kept", null);
  }

  @Test
  void with_a_yes_it_is_done_and_the_day_s_copy_brings_it_back() {
    shell.say("backup " + copy);
    shell.say("log 30m assembly at 11:00 on 2026-02-27");
    Shell.Said done = shell.say("restore " + copy + " --yes");
    assertThat(done.out())
        .contains("The book is now as the copy was.\nWhat it held before is kept in ");
    assertThat(sessions()).isEqualTo(30);
    String kept = done.out().strip().replaceFirst("(?s).* is kept in ", "");
    assertThat(shell.json("restore " + kept + " --yes")).containsEntry("restored", true);
    assertThat(sessions()).isEqualTo(60);
    assertThat(shell.say("verify").code()).isZero();
  }

  @Test
  void a_day_of_the_list_names_its_copy() {
    shell.at("2026-03-03T18:00").say("log 30m assembly at 11:00");
    assertThat(shell.say("restore 2026-03-03 --yes").out()).contains("is whole: 1 session");
    assertThat(shell.say("restore 2026-03-04").err()).contains("There are: 2026-03-03.");
  }

  @Test
  void on_a_terminal_it_asks() {
    shell.say("backup " + copy);
    shell.say("log 30m assembly at 11:00 on 2026-02-27");
    shell.atTerminal();
    assertThat(shell.typing("n\n").say("restore " + copy).out()).contains("Nothing is done yet");
    assertThat(sessions()).isEqualTo(60);
    assertThat(shell.typing("yes\n").say("restore " + copy).out()).contains("as the copy was");
    assertThat(sessions()).isEqualTo(30);
  }

  @Test
  void a_damaged_copy_ends_with_4_and_the_book_is_as_it_was() throws IOException {
    shell.say("backup " + copy);
    byte[] bytes = Files.readAllBytes(copy);
    Arrays.fill(bytes, 8192, 40_000, (byte) 7);
    Files.write(copy, bytes);
    Shell.Said said = shell.say("restore " + copy + " --yes");
    assertThat(said.code()).isEqualTo(4);
    assertThat(said.err()).contains("is damaged").doesNotContain("Exception");
    assertThat(sessions()).isEqualTo(30);
  }

  @Test
  void a_damaged_book_can_be_restored_though_nothing_else_can_open_it() throws IOException {
    shell.say("backup " + copy);
    Files.write(folder.resolve("book.db"), new byte[5000]);
    Files.createDirectories(folder.resolve("book.db.copies"));
    assertThat(shell.say("day").code()).isEqualTo(4);
    assertThat(shell.say("restore " + copy + " --yes").out())
        .contains("The present book is damaged; it is kept as it is found.");
    assertThat(sessions()).isEqualTo(30);
  }
}
