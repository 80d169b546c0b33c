package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.Amount;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Amounts of finishes and the owner's data sheets in the book. */
class FinishesTest {
  private static final List<Amount> TWO =
      List.of(new Amount("lacquer-thinner", 473.176473), new Amount("lacquer", 250));

  @TempDir Path folder;

  private static OwnFinish sheet(String name, double gramsPerLitre) {
    Map<String, Double> solvents = new LinkedHashMap<>();
    solvents.put("toluene", 1 / 3.0);
    solvents.put("acetone", 2 / 3.0);
    return new OwnFinish(name, "lacquer", gramsPerLitre, solvents);
  }

  @Test
  void the_amounts_of_a_session_come_back_in_the_order_said_and_to_the_last_digit() {
    try (Book book = Shop.open(folder)) {
      Session session = book.log(Shop.bare("09:00", 30, "finishing").using(TWO));
      assertThat(session.work().amounts()).isEqualTo(TWO);
      assertThat(book.session(session.id()).orElseThrow().work().amounts()).isEqualTo(TWO);
    }
  }

  @Test
  void an_amended_session_holds_its_new_amounts_and_undo_brings_the_old_ones_back() {
    try (Book book = Shop.open(folder)) {
      Session session = book.log(Shop.bare("09:00", 30, "finishing").using(TWO));
      List<Amount> less = List.of(new Amount("lacquer", 100));
      assertThat(book.amend(session.id(), session.work().using(less)).work().amounts())
          .isEqualTo(less);
      book.changes().undo();
      assertThat(book.session(session.id()).orElseThrow().work().amounts()).isEqualTo(TWO);
    }
  }

  @Test
  void a_deleted_session_takes_its_amounts_with_it_and_brings_them_back() {
    try (Book book = Shop.open(folder)) {
      Session session = book.log(Shop.bare("09:00", 30, "finishing").using(TWO));
      book.delete(session.id());
      assertThat(Shop.content(folder)).noneMatch(row -> row.startsWith("session_finish"));
      book.changes().undo();
      assertThat(book.session(session.id()).orElseThrow().work().amounts()).isEqualTo(TWO);
    }
  }

  @Test
  void sessions_are_found_by_what_was_used() {
    try (Book book = Shop.open(folder)) {
      book.log(Shop.bare("09:00", 30, "finishing").using(TWO));
      book.log(Shop.bare("10:00", 30, "finishing"));
      Wanted thinner = new Wanted("thinner", List.of());
      assertThat(book.find(List.of(thinner), Optional.empty(), 9)).hasSize(1);
    }
  }

  @Test
  void a_data_sheet_comes_back_as_it_was_entered_and_undo_takes_it_out() {
    try (Book book = Shop.open(folder)) {
      OwnFinish sheet = sheet("Quick Clear", 640.25);
      book.finishes().add(sheet);
      assertThat(book.finishes().all()).containsExactly(sheet);
      assertThat(book.finishes().all().get(0).solvents().keySet())
          .containsExactly("toluene", "acetone");
      assertThat(book.verify()).isEmpty();
      assertThat(book.changes().undo().orElseThrow().what()).isEqualTo("Added finish Quick Clear");
      assertThat(book.finishes().all()).isEmpty();
    }
  }

  @Test
  void a_second_sheet_of_one_name_is_refused_unless_it_replaces_the_first() {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Quick Clear", 640));
      assertThatThrownBy(() -> book.finishes().add(sheet("quick-clear", 500)))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("\"Quick Clear\" already");
      book.finishes().replace(sheet("Quick Clear", 500));
      assertThat(book.finishes().all()).containsExactly(sheet("Quick Clear", 500));
      book.changes().undo();
      assertThat(book.finishes().all()).containsExactly(sheet("Quick Clear", 640));
      assertThatThrownBy(() -> book.finishes().replace(sheet("Slow Clear", 500)))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("knows no finish");
    }
  }

  @Test
  void shares_that_were_altered_behind_the_program_are_told() throws SQLException {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Quick Clear", 640));
    }
    Shop.behind(
        folder,
        "BEGIN",
        "INSERT INTO change (at, what) VALUES ('2026-03-02T18:00:00Z', 'x')",
        "INSERT INTO open_change (id, change_id) VALUES (1, 2)",
        "UPDATE finish_solvent SET weight_share = 0.5 WHERE solvent = 'acetone'",
        "DELETE FROM open_change",
        "COMMIT");
    try (Book book = Shop.open(folder)) {
      assertThat(book.verify())
          .anyMatch(problem -> problem.contains("shares of the finish \"Quick Clear\""));
    }
  }

  @Test
  void a_sheet_that_no_session_used_is_deleted() {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Quick Clear", 640));
      assertThat(book.finishes().remove("quick clear", Shop.MONDAY))
          .isEqualTo(OwnFinishes.Removed.DELETED);
      assertThat(book.finishes().all()).isEmpty();
      book.changes().undo();
      assertThat(book.finishes().all()).containsExactly(sheet("Quick Clear", 640));
    }
  }

  @Test
  void a_sheet_that_sessions_used_is_retired_and_comes_back_with_undo_or_a_new_sheet() {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Quick Clear", 640));
      Session session =
          book.log(
              Shop.bare("09:00", 30, "finishing").using(List.of(new Amount("quick-clear", 100))));
      assertThat(book.finishes().remove("Quick Clear", Shop.MONDAY))
          .isEqualTo(OwnFinishes.Removed.RETIRED);
      assertThat(book.finishes().all())
          .extracting(OwnFinish::retiredOn)
          .containsExactly(Optional.of(Shop.MONDAY));
      assertThat(book.session(session.id())).contains(session);
      assertThatThrownBy(() -> book.finishes().remove("Quick Clear", Shop.MONDAY))
          .isInstanceOf(Refusal.class)
          .hasMessage("\"Quick Clear\" was retired on 2026-03-02 already.");
      book.changes().undo();
      assertThat(book.finishes().all()).containsExactly(sheet("Quick Clear", 640));
      book.finishes().remove("Quick Clear", Shop.MONDAY);
      book.finishes().replace(sheet("Quick Clear", 500));
      assertThat(book.finishes().all()).containsExactly(sheet("Quick Clear", 500));
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void a_sheet_in_the_place_of_a_shipped_finish_gives_the_place_back() {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Lacquer", 640));
      book.log(Shop.bare("09:00", 30, "finishing").using(List.of(new Amount("lacquer", 100))));
      assertThat(book.finishes().remove("lacquer", Shop.MONDAY))
          .isEqualTo(OwnFinishes.Removed.SHIPPED_AGAIN);
      assertThat(book.finishes().all()).isEmpty();
    }
  }

  @Test
  void what_is_no_sheet_cannot_be_removed() {
    try (Book book = Shop.open(folder)) {
      book.finishes().add(sheet("Quick Clear", 640));
      assertThatThrownBy(() -> book.finishes().remove("lacquer", Shop.MONDAY))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("knows no finish \"lacquer\". It knows: Quick Clear");
    }
  }
}
