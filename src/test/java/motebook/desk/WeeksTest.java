package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import motebook.journal.Book;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.report.WeekWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WeeksTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

  @TempDir Path folder;

  private Book book() {
    return Book.open(
        folder.resolve("book.db"),
        Clock.fixed(MONDAY.atTime(18, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC));
  }

  private static Work work(LocalDate date, int minutes, String operation, String note) {
    return new Work(
        "me",
        "shop",
        date,
        LocalTime.of(9, 0),
        minutes,
        operation,
        Optional.of("oak"),
        List.of(),
        Optional.empty(),
        note);
  }

  @Test
  void the_change_against_the_week_before_names_what_moved_it_most() {
    try (Book book = book()) {
      book.log(work(MONDAY.minusDays(7), 60, "orbital-sanding", ""));
      book.log(work(MONDAY.minusDays(6), 60, "drilling", ""));
      book.log(work(MONDAY, 15, "orbital-sanding", ""));
      book.log(work(MONDAY.plusDays(1), 60, "drilling", ""));
      Weeks weeks = new Ledger(book).weeks(MONDAY, "me", 3);
      assertThat(weeks.weeks()).hasSize(3);
      assertThat(weeks.weeks().get(0).minutesLogged()).isZero();
      Weeks.Change change = weeks.change().orElseThrow();
      assertThat(change.after()).isLessThan(change.before());
      assertThat(change.job().orElseThrow().operation().key()).isEqualTo("orbital-sanding");
      assertThat(WeekWords.change(weeks).orElseThrow())
          .startsWith("About ")
          .contains("less than the week before")
          .endsWith("above all less orbital sanding of oak.");
    }
  }

  @Test
  void a_week_like_the_one_before_is_about_the_same_and_an_empty_one_has_no_change() {
    try (Book book = book()) {
      book.log(work(MONDAY.minusDays(7), 60, "drilling", ""));
      book.log(work(MONDAY, 62, "drilling", ""));
      Ledger ledger = new Ledger(book);
      assertThat(WeekWords.change(ledger.weeks(MONDAY, "me", 2)))
          .contains("About the same as the week before.");
      assertThat(ledger.weeks(MONDAY.plusDays(7), "me", 2).change()).isEmpty();
      assertThat(ledger.weeks(MONDAY, "me", 1).change()).isEmpty();
      assertThatThrownBy(() -> new Weeks(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void the_parts_by_operation_and_by_material_each_add_to_the_whole() {
    try (Book book = book()) {
      book.log(work(MONDAY, 60, "drilling", ""));
      book.log(work(MONDAY.plusDays(1), 60, "orbital-sanding", ""));
      WeekReport week = new Ledger(book).week(MONDAY, "me");
      assertThat(week.byOperation()).hasSize(2);
      assertThat(week.byOperation().get(0).getKey().key()).isEqualTo("orbital-sanding");
      assertThat(week.byOperation().stream().mapToDouble(e -> e.getValue()).sum())
          .isCloseTo(100, within(1e-9));
      assertThat(week.byMaterial()).hasSize(1);
      assertThat(week.byMaterial().get(0).getValue()).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void work_is_found_by_every_name_it_has_newest_first_and_piece_by_piece() {
    try (Book book = book()) {
      book.log(work(MONDAY.minusDays(2), 30, "orbital-sanding", "the long Table"));
      book.log(work(MONDAY.minusDays(1), 30, "table-saw", ""));
      book.log(work(MONDAY, 30, "orbital-sanding", ""));
      assertThat(found(book, "sanding of oak")).containsExactly(MONDAY, MONDAY.minusDays(2));
      assertThat(found(book, "TABLE")).containsExactly(MONDAY.minusDays(1), MONDAY.minusDays(2));
      assertThat(found(book, "2026-03-01")).containsExactly(MONDAY.minusDays(1));
      assertThat(found(book, "sanding pine")).isEmpty();
      assertThat(found(book, "%_'")).isEmpty();
      assertThat(found(book, "")).hasSize(3);
      List<Session> first = Finder.find(book, Reference.shipped(), "", Optional.empty(), 2);
      assertThat(Finder.find(book, Reference.shipped(), "", Optional.of(first.get(1)), 2))
          .extracting(s -> s.work().date())
          .containsExactly(MONDAY.minusDays(2));
    }
  }

  @Test
  void work_is_found_whatever_the_case_of_letters_that_no_english_word_has() {
    try (Book book = book()) {
      book.log(work(MONDAY, 30, "table-saw", "Für ÉLODIE, Übung"));
      for (String words : List.of("für", "FÜR", "élodie", "e\u0301lodie", "übung fu\u0308r")) {
        assertThat(found(book, words)).as(words).containsExactly(MONDAY);
      }
      assertThat(found(book, "elodie")).isEmpty();
    }
  }

  private static List<LocalDate> found(Book book, String words) {
    return Finder.find(book, Reference.shipped(), words, Optional.empty(), 10).stream()
        .map(session -> session.work().date())
        .toList();
  }
}
