package motebook.command;

import static motebook.command.Shell.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionsImportTest {
  private static final String SHEET =
      """
      Day;Who;From;To;Work;Wood;Dust control;Finish;Note
      27.2.2026;;8:00;8:40;orbital sanding;oak;tool vacuum;;top
      27.2.2026;Ana;9:00;10:00;table saw;pine;collector, doors open;;
      28.2.2026;;14:00;14:25;finishing;;doors open;0,25 l lacquer;
      """;

  @TempDir Path folder;
  private Shell shell;
  private Path sheet;

  @BeforeEach
  void open() throws IOException {
    shell = new Shell(folder.resolve("book.db"));
    sheet = folder.resolve("sessions.csv");
    shell.say("person add Ana");
    shell.say("log 30m assembly at 9:00 on 2026-03-01");
    Files.writeString(sheet, SHEET);
  }

  private Shell.Said read(String... more) {
    String[] words = new String[2 + more.length];
    words[0] = "import";
    words[1] = sheet.toString();
    System.arraycopy(more, 0, words, 2, more.length);
    return shell.run(words);
  }

  private Object sessions(String day) {
    return at(shell.json("day " + day), "sessions");
  }

  @Test
  void it_is_shown_first_and_nothing_is_written() {
    Shell.Said said = read();
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .isEqualTo(
            """
            3 rows: 3 new sessions
            by        me, Ana
            from      2026-02-27 to 2026-02-28
            reads as  40m orbital sanding of oak with tool vacuum in shop by me at 08:00 on 2026-02-27 note top
            reads as  1h table saw of pine with collector and doors open in shop by Ana at 09:00 on 2026-02-27
            reads as  25m finishing with doors open using 250ml lacquer in shop by me at 14:00 on 2026-02-28
            Nothing is written yet. Add --yes to write it.
            """);
    assertThat(sessions("2026-02-27")).isEqualTo(List.of());
  }

  @Test
  void with_a_yes_it_is_one_change_that_one_undo_takes_back() {
    assertThat(read("--yes").out())
        .endsWith("Logged 3 sessions; motebook undo undoes all of it.\n");
    assertThat(at(shell.json("day 2026-02-28"), "sessions", 0, "finishes", 0, "ml"))
        .isEqualTo(250.0);
    assertThat(shell.say("undo").out())
        .isEqualTo("Taken back: Imported 3 sessions from sessions.csv\n");
    assertThat(sessions("2026-02-27")).isEqualTo(List.of());
    assertThat((List<?>) sessions("2026-03-01")).hasSize(1);
    assertThat(shell.say("verify").code()).isZero();
  }

  @Test
  void the_same_file_again_adds_nothing() throws IOException {
    read("--yes");
    Files.writeString(
        sheet, SHEET + "28.2.2026;;14:00;14:25;finishing;;doors open;250ml lacquer;\n");
    Shell.Said again = read("--yes");
    assertThat(again.out())
        .isEqualTo(
            "4 rows: 0 new sessions, 3 in the book already, 1 said twice\nNothing to write.\n");
    Files.writeString(sheet, SHEET + "28.2.2026;Ana;15:00;15:30;assembly;;;;\n");
    assertThat(read("--yes").out()).startsWith("4 rows: 1 new session, 3 in the book already\n");
  }

  @Test
  void what_overlaps_the_book_the_sheet_or_the_life_of_a_mask_is_told_all_at_once()
      throws IOException {
    shell.say("gear add respirator mask --facepiece \"half mask\" --for me");
    shell.say("gear retire mask --on 2026-02-01");
    Files.writeString(
        sheet,
        """
        date,start,minutes,operation,note,mask
        2026-03-01,8:45,30,assembly,,
        2026-03-01,9:00,30,assembly,longer,
        2026-03-01,12:00,30,assembly,,
        2026-03-01,12:20,30,assembly,,
        2026-03-01,13:00,30,assembly,,mask
        """);
    Shell.Said said = read("--yes");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines().toList())
        .satisfiesExactly(
            line -> assertThat(line).startsWith("line 2, start: Overlaps session 1 of me"),
            line -> assertThat(line).startsWith("line 3, start: Overlaps the work of line 2 of me"),
            line -> assertThat(line).startsWith("line 5, start: Overlaps the work of line 4 of me"),
            line -> assertThat(line).startsWith("line 6, mask: \"mask\" was retired on 2026-02-01"),
            line ->
                assertThat(line)
                    .isEqualTo(
                        "4 of 5 rows in sessions.csv cannot be read as they stand; nothing is"
                            + " written."));
    assertThat((List<?>) sessions("2026-03-01")).hasSize(1);
  }

  @Test
  void a_row_that_differs_from_the_book_at_the_same_time_says_in_what() throws IOException {
    Files.writeString(
        sheet, "date,start,minutes,operation,note\n2026-03-01,9:00,30,assembly,glue\n");
    assertThat(read("--yes").err())
        .startsWith(
            "line 2, start: Session 1 of the book is at this time already, but not the same: other"
                + " note.");
  }

  @Test
  void on_a_terminal_it_asks_and_only_yes_is_a_yes() {
    shell.atTerminal();
    Shell.Said no = shell.typing("no\n").run("import", sheet.toString());
    assertThat(no.err()).isEqualTo("Write this into the book? Type yes: ");
    assertThat(no.out()).endsWith("Nothing is written yet. Add --yes to write it.\n");
    Shell.Said yes = shell.typing("yes\n").run("import", sheet.toString());
    assertThat(yes.out()).contains("Logged 3 sessions");
  }

  @Test
  void the_answer_as_json_has_counts_and_every_bad_row() throws IOException {
    Map<String, Object> shown = shell.json("import " + sheet);
    assertThat(shown)
        .containsEntry("rows", 3)
        .containsEntry("new", 3)
        .containsEntry("known", 0)
        .containsEntry("repeated", 0)
        .containsEntry("bad_rows", 0)
        .containsEntry("people", List.of("me", "Ana"))
        .containsEntry("from", "2026-02-27")
        .containsEntry("to", "2026-02-28")
        .containsEntry("written", false)
        .containsEntry("ids", List.of());
    assertThat(shell.json("import " + sheet + " --yes"))
        .containsEntry("written", true)
        .containsEntry("ids", List.of(2, 3, 4));
    Files.writeString(sheet, "date,start,minutes,operation\n2026-03-01,9:00,30,assemblo\n");
    Shell.Said bad = shell.say("import " + sheet + " --yes --json");
    assertThat(bad.code()).isEqualTo(2);
    assertThat(bad.out())
        .contains("\"bad_rows\":1", "\"bad\":[{\"line\":2,\"column\":\"operation\",\"message\":");
  }

  @Test
  void standard_input_is_read_too() {
    Shell.Said said = shell.typing(SHEET).say("import - --yes");
    assertThat(said.out()).contains("Logged 3 sessions");
  }

  @Test
  void a_place_counts_as_it_was_on_the_date_of_the_row() throws IOException {
    shell.say("place change shop --cleaner-flow 10 --from 2026-02-28");
    Files.writeString(
        sheet,
        """
        date,start,minutes,operation,controls
        2026-02-27,9:00,30,table saw,air cleaner
        2026-02-28,9:00,30,table saw,air cleaner
        """);
    assertThat(read("--yes").err().lines().toList())
        .hasSize(2)
        .first()
        .asString()
        .startsWith("line 2, controls: ")
        .contains("clean-air flow");
  }
}
