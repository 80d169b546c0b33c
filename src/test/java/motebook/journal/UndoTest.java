package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.bare;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Surroundings.Outdoors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UndoTest {
  @TempDir Path folder;
  private Book book;

  @BeforeEach
  void open() {
    book = Shop.open(folder);
  }

  @AfterEach
  void close() {
    book.close();
  }

  /** One of every kind of change, in an order in which each can be made. */
  private List<Runnable> everyKind() {
    return List.of(
        () -> book.premises().addPerson("Ana"),
        () -> book.premises().addPlace("attic", Shop.ATTIC),
        () -> book.log(work("09:00", 60)),
        () -> book.logAll(List.of(work("Ana", MONDAY, "09:00", 5), work("12:00", 5)), "Two"),
        () -> book.amend(1, bare("09:30", 20, "sweeping")),
        () ->
            book.premises()
                .changePlace("attic", s -> new Outdoors(9), Optional.of(MONDAY), "Roof off"),
        () ->
            book.premises()
                .changePlace("yard", s -> new Outdoors(99), Optional.empty(), "Windy yard"),
        () -> book.change(book.settings().withPerson("Ana").withPlace("attic"), "Ana's book"),
        () -> book.delete(1));
  }

  @Test
  void repeated_undo_walks_back_through_every_kind_of_change() {
    List<List<String>> before = new ArrayList<>();
    for (Runnable change : everyKind()) {
      before.add(Shop.content(folder));
      change.run();
    }
    for (int i = before.size() - 1; i >= 0; i--) {
      assertThat(book.changes().undo()).isPresent();
      assertThat(Shop.content(folder)).isEqualTo(before.get(i));
    }
    assertThat(book.changes().undo()).isEmpty();
    assertThat(book.verify()).isEmpty();
  }

  @Test
  void the_history_tells_every_change_newest_first_with_its_undo() {
    everyKind().forEach(Runnable::run);
    book.changes().undo();
    List<Change> history = book.changes().history(100);
    assertThat(history)
        .extracting(Change::what)
        .containsExactly(
            "Took back: Deleted 2026-03-02 09:30 to 09:50 sweeping by me in yard",
            "Deleted 2026-03-02 09:30 to 09:50 sweeping by me in yard",
            "Ana's book",
            "Windy yard",
            "Roof off",
            "Changed a session to 2026-03-02 09:30 to 09:50 sweeping by me in yard",
            "Two",
            "Logged 2026-03-02 09:00 to 10:00 table saw of oak by me in shop",
            "Added place attic",
            "Added person Ana");
    assertThat(history.get(0).undoes()).contains(history.get(1).id());
    assertThat(history.get(1).undone()).isTrue();
    assertThat(history.get(2).undone()).isFalse();
    assertThat(history.get(0).at()).isEqualTo(Instant.parse("2026-03-02T18:00:00Z"));
    assertThat(book.changes().history(1)).hasSize(1);
  }

  @Test
  void a_change_after_an_undo_is_taken_back_before_older_ones() {
    book.log(work("09:00", 10));
    book.log(work("10:00", 10));
    book.changes().undo();
    book.log(work("11:00", 10));
    assertThat(book.changes().undo().orElseThrow().what()).contains("11:00 to 11:10");
    Change first = book.changes().undo().orElseThrow();
    assertThat(first.what()).contains("09:00 to 09:10");
    assertThat(first.undone()).isTrue();
    assertThat(book.changes().undo()).isEmpty();
    assertThat(book.hasSessions()).isFalse();
  }

  @Test
  void an_undone_deletion_brings_the_session_back_under_its_number() {
    long id = book.log(work("09:00", 10)).id();
    book.delete(id);
    book.changes().undo();
    assertThat(book.session(id).orElseThrow().work()).isEqualTo(work("09:00", 10));
  }
}
