package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import motebook.desk.DayReport.Twa;
import motebook.journal.Book;
import motebook.journal.LongBook;
import motebook.model.Refusal;
import motebook.science.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EveryDayTest {
  private static final LocalDate LONG_AGO = LocalDate.of(1990, 3, 1);

  @TempDir Path folder;

  private Book year() {
    Path file = folder.resolve("book.db");
    LongBook.write(file, 5_600, 40);
    return Book.open(file, LongBook.clock());
  }

  private static List<DayEstimate> all(Ledger ledger, LocalDate first, LocalDate last) {
    List<DayEstimate> all = new ArrayList<>();
    ledger.everyDay(first, last, all::add);
    return all;
  }

  @Test
  void every_day_of_everybody_is_estimated_as_when_it_is_asked_for_alone() {
    try (Book book = year()) {
      Ledger ledger = new Ledger(book);
      List<DayEstimate> all = all(ledger, LONG_AGO, LongBook.LAST);
      assertThat(all).hasSize(295 * LongBook.PEOPLE.size());
      for (int i = 0; i < all.size(); i += 8) {
        DayEstimate one = all.get(i);
        DayReport alone = ledger.day(one.date(), one.person());
        same(one.outside(), alone.outside());
        same(one.inside(), alone.inside());
        assertThat(one.limit().map(HeldLimit::limit))
            .isEqualTo(alone.limit().map(HeldLimit::limit));
      }
    }
  }

  private static void same(Twa one, Twa other) {
    Estimate estimate = one.estimate();
    assertThat(estimate.typical()).isCloseTo(other.estimate().typical(), within(1e-12));
    assertThat(estimate.central()).isCloseTo(other.estimate().central(), within(1e-12));
    assertThat(estimate.sigma()).isCloseTo(other.estimate().sigma(), within(1e-12));
    assertThat(one.chanceOverLimit().orElseThrow())
        .isCloseTo(other.chanceOverLimit().orElseThrow(), within(1e-12));
  }

  @Test
  void the_days_come_in_order_and_masks_count_among_them() {
    try (Book book = year()) {
      List<DayEstimate> all = all(new Ledger(book), LONG_AGO, LongBook.LAST);
      assertThat(all).isSortedAccordingTo(Comparator.comparing(DayEstimate::date));
      assertThat(all)
          .filteredOn(one -> one.inside().estimate().typical() < one.outside().estimate().typical())
          .hasSizeGreaterThan(300);
    }
  }

  @Test
  void only_the_days_that_are_asked_for_are_told_and_what_lies_before_still_counts() {
    try (Book book = year()) {
      Ledger ledger = new Ledger(book);
      LocalDate first = LongBook.LAST.minusDays(4);
      List<DayEstimate> week = all(ledger, first, LongBook.LAST);
      List<DayEstimate> all = all(ledger, LONG_AGO, LongBook.LAST);
      assertThat(week).hasSize(15).isEqualTo(all.subList(all.size() - 15, all.size()));
      assertThat(all(ledger, LongBook.LAST.plusDays(1), LongBook.LAST.plusYears(3))).isEmpty();
    }
  }

  @Test
  void what_whoever_is_told_throws_ends_it() {
    try (Book book = year()) {
      Ledger ledger = new Ledger(book);
      assertThatThrownBy(
              () ->
                  ledger.everyDay(
                      LONG_AGO,
                      LongBook.LAST,
                      one -> {
                        throw new Refusal("Enough.");
                      }))
          .isInstanceOf(Refusal.class);
      assertThat(all(ledger, LongBook.LAST, LongBook.LAST)).hasSize(3);
    }
  }
}
