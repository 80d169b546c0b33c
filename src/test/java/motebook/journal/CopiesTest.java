package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopiesTest {
  @TempDir Path folder;

  private List<String> copies() throws IOException {
    Path copies = Copies.folder(Shop.file(folder));
    if (!Files.exists(copies)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(copies)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private void logOn(LocalDate day) {
    try (Book book = Book.open(Shop.file(folder), Shop.on(day))) {
      book.log(work("me", day, "09:00", 5));
      assertThat(book.changes().warning()).isEmpty();
    }
  }

  @Test
  void the_first_change_of_a_day_copies_what_was_there_before() throws IOException {
    logOn(MONDAY);
    assertThat(copies()).isEmpty();
    logOn(MONDAY.plusDays(1));
    assertThat(copies()).containsExactly("2026-03-03.db");
    Path copy = Copies.folder(Shop.file(folder)).resolve("2026-03-03.db");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy.getParent())))
        .isEqualTo("rwx------");
    try (Book before = Book.open(copy, Shop.CLOCK)) {
      assertThat(before.sessionCount()).isEqualTo(1);
      assertThat(before.changes().history(9)).hasSize(1);
      assertThat(before.verify()).isEmpty();
    }
  }

  @Test
  void reading_makes_no_copy_and_a_day_has_only_one() throws IOException {
    logOn(MONDAY);
    LocalDate tuesday = MONDAY.plusDays(1);
    try (Book book = Book.open(Shop.file(folder), Shop.on(tuesday))) {
      book.sessionsOn(MONDAY);
      book.changes().history(9);
      assertThat(copies()).isEmpty();
      book.log(work("me", tuesday, "10:00", 5));
      book.log(work("me", tuesday, "11:00", 5));
    }
    try (Book copy =
        Book.open(Copies.folder(Shop.file(folder)).resolve("2026-03-03.db"), Shop.CLOCK)) {
      assertThat(copy.sessionCount()).isEqualTo(1);
    }
  }

  @Test
  void old_copies_go_and_other_files_stay() throws IOException {
    for (int day = 0; day < 20; day++) {
      logOn(MONDAY.plusDays(day));
    }
    Path stranger = Copies.folder(Shop.file(folder)).resolve("2026-02-30.db");
    Files.writeString(stranger, "not a day");
    logOn(MONDAY.plusDays(20));
    assertThat(copies())
        .containsExactly(
            "2026-02-30.db",
            "2026-03-08.db",
            "2026-03-15.db",
            "2026-03-16.db",
            "2026-03-17.db",
            "2026-03-18.db",
            "2026-03-19.db",
            "2026-03-20.db",
            "2026-03-21.db",
            "2026-03-22.db");
  }

  @Test
  void a_copy_that_cannot_be_made_costs_no_entry_and_is_told() throws IOException {
    logOn(MONDAY);
    Files.writeString(Copies.folder(Shop.file(folder)), "in the way");
    LocalDate tuesday = MONDAY.plusDays(1);
    try (Book book = Book.open(Shop.file(folder), Shop.on(tuesday))) {
      book.log(work("me", tuesday, "09:00", 5));
      assertThat(book.sessionCount()).isEqualTo(2);
      assertThat(book.changes().warning().orElseThrow())
          .startsWith("Today's copy of the book was not made. The copy ")
          .endsWith(".");
      Files.delete(Copies.folder(Shop.file(folder)));
      book.changes().undo();
      assertThat(book.changes().warning()).isEmpty();
      assertThat(copies()).containsExactly("2026-03-03.db");
    }
  }

  @Test
  void a_backup_holds_what_the_book_holds_and_stands_where_it_was_asked_for() {
    try (Book book = Shop.open(folder)) {
      book.log(work("09:00", 5));
      Path target = folder.resolve("far/away/copy.db");
      assertThat(book.backup(Optional.of(target), bytes -> {})).isEqualTo(target);
      try (Book copy = Book.open(target, Shop.CLOCK)) {
        assertThat(copy.sessionsOn(MONDAY)).isEqualTo(book.sessionsOn(MONDAY));
        assertThat(copy.changes().undo()).isPresent();
        assertThat(copy.verify()).isEmpty();
      }
      assertThat(book.sessionCount()).isEqualTo(1);
    }
  }

  @Test
  void a_backup_into_a_folder_is_named_by_the_day_and_only_an_earlier_copy_is_written_over()
      throws Exception {
    try (Book book = Shop.open(folder)) {
      Path copy = folder.resolve("book-2026-03-02.db");
      assertThat(backup(book, folder)).isEqualTo(copy);
      book.log(work("09:00", 5));
      assertThat(backup(book, folder)).isEqualTo(copy);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)))
          .isEqualTo("rw-------");
      Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear reader");
      Path other = folder.resolve("other-shop.db");
      Book.open(other, Shop.CLOCK).close();
      for (Path taken : List.of(letter, other, book.file())) {
        assertThatThrownBy(() -> backup(book, taken))
            .isInstanceOf(Refusal.class)
            .hasMessageContaining("no earlier copy of a book");
      }
      assertThat(letter).hasContent("Dear reader");
      assertThatThrownBy(() -> backup(book, Path.of("/proc/copy.db")))
          .isInstanceOf(BookTrouble.class)
          .hasMessageContaining("/proc/copy.db");
      try (Book held = Book.open(copy, Shop.CLOCK)) {
        assertThat(held.sessionCount()).isEqualTo(1);
      }
    }
  }

  private static Path backup(Book book, Path target) {
    return book.backup(Optional.of(target), bytes -> {});
  }
}
