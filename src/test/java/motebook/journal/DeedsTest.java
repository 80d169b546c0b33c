package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import motebook.model.FitRecord.Medical;
import motebook.model.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A change says what it did to what in values; nobody reads its sentence back. */
class DeedsTest {
  @TempDir Path folder;

  /** The version of a book before its changes had kinds. */
  private static int before() {
    return (int) Migration.FILES.stream().takeWhile(name -> !name.endsWith("-deeds.sql")).count();
  }

  private static String line(Deed deed) {
    return "%s %s %s".formatted(deed.act().key(), deed.subject().key(), deed.target()).strip();
  }

  @Test
  void what_is_done_now_has_its_kind_and_target() {
    try (Book book = Shop.open(folder)) {
      Session session = book.log(Shop.work("09:00", 30));
      book.amend(session.id(), session.work().lasting(40));
      book.delete(session.id());
      book.premises().addPerson("Ana");
      book.fits().note(new Medical(0, "Ana", Shop.MONDAY));
      book.changes().undo();
      assertThat(book.changes().history(9))
          .extracting(change -> line(change.deed()))
          .containsExactly(
              "added fit-record Ana",
              "added fit-record Ana",
              "added person Ana",
              "removed session " + session.id(),
              "changed session " + session.id(),
              "added session");
      assertThat(book.changes().history(9))
          .extracting(Change::what)
          .noneMatch(what -> what.contains("session " + session.id()));
    }
  }

  @Test
  void the_history_of_an_old_book_gets_kinds_and_targets_from_its_sentences() throws IOException {
    Map<String, String> old =
        Map.ofEntries(
            Map.entry("Logged 30m table saw of oak in shop by me", "added session"),
            Map.entry(
                "Changed session 12 to 2026-03-02 09:00 me: planing to size", "changed session 12"),
            Map.entry("Deleted session 7, 2026-03-02 09:00 me: assembly", "removed session 7"),
            Map.entry("Imported 3 sessions from sessions.csv", "added session"),
            Map.entry("Added the respirator half mask", "added respirator half mask"),
            Map.entry("Added the element pads to half mask", "added element"),
            Map.entry("Changed dust pads on 2026-03-02", "changed element dust pads"),
            Map.entry("Opened spare on 2026-03-02", "changed element spare"),
            Map.entry("Added the filter collector bag", "added shop-filter collector bag"),
            Map.entry("Wrote down for the filter bag on 2026-03-02: emptied", "added upkeep"),
            Map.entry("Wrote down the training of me on 2026-03-02", "added fit-record"),
            Map.entry(
                "Wrote down the end of hair under the seal of me on 2026-03-02",
                "changed fit-record"),
            Map.entry("Took out the training of me on 2026-03-02", "removed fit-record"),
            Map.entry("Retired pads on 2026-03-02 (damaged)", "changed gear"),
            Map.entry("Deleted pads", "removed gear pads"),
            Map.entry("Changed finish Quick Clear", "changed finish Quick Clear"),
            Map.entry("Deleted the finish Quick Clear", "removed finish Quick Clear"),
            Map.entry("Added favourite morning", "added favourite morning"),
            Map.entry("Added person Ana", "added person Ana"),
            Map.entry("Renamed me to Ben", "changed person"),
            Map.entry("changed shop", "changed place shop"),
            Map.entry("Removed sample 3 of 2026-03-02 by me", "removed sample 3"),
            Map.entry("Started the stopwatch of me: table saw", "added stopwatch"),
            Map.entry("Stopped the stopwatch of me and logged 1 session", "removed stopwatch"),
            Map.entry("chose the limits niosh", "changed setting"),
            Map.entry("Imported the book from /media/stick/my-book", "added book"));
    Path file = Shop.file(folder);
    Files.createFile(file);
    List<String> sentences = List.copyOf(old.keySet());
    try (Store store = Connections.open(file, Connections.PATIENCE)) {
      new Migrations(before(), Migration::shipped).stepsAfter(0, store);
      for (String sentence : sentences) {
        store.script(
            "INSERT INTO change (at, what) VALUES ('2026-03-02T10:00:00.000Z', '"
                + sentence
                + "')");
      }
      store.script(
          "INSERT INTO change (at, what, undoes) SELECT '2026-03-02T11:00:00.000Z',"
              + " 'Took back: ' || what, id FROM change WHERE what GLOB 'Changed session*'");
    }
    try (Book book = Shop.open(folder)) {
      List<Change> history = book.changes().history(99);
      // The newest is what a later step says of the air outdoors.
      assertThat(line(history.get(0).deed())).isEqualTo("changed place");
      Change undo = history.get(1);
      assertThat(line(undo.deed())).isEqualTo("changed session 12");
      assertThat(undo.what())
          .isEqualTo("Took back: Changed a session to 2026-03-02 09:00 me: planing to size");
      for (int i = 0; i < sentences.size(); i++) {
        Change change = history.get(history.size() - 1 - i);
        assertThat(line(change.deed())).as(sentences.get(i)).isEqualTo(old.get(sentences.get(i)));
      }
      assertThat(history)
          .extracting(Change::what)
          .contains(
              "Changed a session to 2026-03-02 09:00 me: planing to size",
              "Deleted 2026-03-02 09:00 me: assembly",
              "Added the respirator half mask");
    }
  }
}
