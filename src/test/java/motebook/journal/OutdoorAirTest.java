package motebook.journal;

import static motebook.journal.Shop.CLOCK;
import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import motebook.model.Surroundings.Outdoors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The step after which an air speed outdoors is that at the face, not the wind's. */
class OutdoorAirTest {
  private static final Migrations BEFORE = new Migrations(10, Migration::shipped);

  @TempDir Path folder;

  private Book before() {
    return Book.open(Shop.file(folder), CLOCK, BEFORE);
  }

  private static double speed(Book book, String place) {
    return book.premises().place(place, MONDAY).orElseThrow().surroundings().airSpeedMPerMin();
  }

  @Test
  void what_the_old_words_gave_becomes_what_the_new_ones_give_and_other_figures_stay() {
    try (Book book = before()) {
      assertThat(speed(book, "yard")).isEqualTo(60);
      book.premises().addPlace("breeze", new Outdoors(150));
      book.premises().addPlace("gentle", new Outdoors(270));
      book.premises().addPlace("still", new Outdoors(12));
      book.premises().addPlace("given", new Outdoors(90));
      book.log(work("09:00", 60));
    }
    try (Book book = Shop.open(folder)) {
      assertThat(List.of("yard", "breeze", "gentle", "still", "given"))
          .extracting(place -> speed(book, place))
          .containsExactly(15.0, 20.0, 30.0, 12.0, 90.0);
      assertThat(speed(book, "shop")).isEqualTo(6);
      assertThat(book.verify()).isEmpty();
      assertThat(book.changes().history(1))
          .singleElement()
          .satisfies(
              change ->
                  assertThat(change.what())
                      .isEqualTo(
                          "The air at the face outdoors is estimated in a new way: yard 60 to 15"
                              + " m/min, breeze 150 to 20 m/min, gentle 270 to 30 m/min"));
    }
  }

  @Test
  void an_undo_takes_back_what_a_person_did_before_it_and_no_old_figure_comes_back() {
    try (Book book = before()) {
      book.premises()
          .changePlace("yard", was -> new Outdoors(270), Optional.empty(), "A windy yard");
      book.log(work("09:00", 60));
    }
    try (Book book = Shop.open(folder)) {
      assertThat(book.changes().undo().orElseThrow().what()).startsWith("Logged");
      assertThat(speed(book, "yard")).isEqualTo(30);
      assertThat(book.changes().undo().orElseThrow().what()).isEqualTo("A windy yard");
      assertThat(speed(book, "yard")).isEqualTo(15);
      assertThat(book.changes().undo()).isEmpty();
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void a_fresh_book_begins_with_the_new_figure_and_without_a_history() {
    try (Book book = Shop.open(folder)) {
      assertThat(speed(book, "yard")).isEqualTo(15);
      assertThat(book.changes().history(9)).isEmpty();
    }
  }
}
