package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class KeepingTest {
  private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);

  @Provide
  Arbitrary<Set<LocalDate>> days() {
    return Arbitraries.integers().between(0, 900).map(FIRST::plusDays).set().ofMaxSize(200);
  }

  @Property
  void what_is_kept_was_there_and_is_never_more_than_23(@ForAll("days") Set<LocalDate> days) {
    Set<LocalDate> kept = Keeping.kept(days);
    assertThat(days).containsAll(kept);
    assertThat(kept).hasSizeLessThanOrEqualTo(7 + 4 + 12);
  }

  @Property
  void the_newest_seven_are_kept(@ForAll("days") Set<LocalDate> days) {
    Set<LocalDate> newest =
        new TreeSet<>(days).descendingSet().stream().limit(7).collect(Collectors.toSet());
    assertThat(Keeping.kept(days)).containsAll(newest);
  }

  @Property
  void each_of_the_newest_four_weeks_and_twelve_months_keeps_one(
      @ForAll("days") Set<LocalDate> days) {
    Set<LocalDate> kept = Keeping.kept(days);
    Set<LocalDate> mondays = new TreeSet<>();
    days.forEach(day -> mondays.add(monday(day)));
    new TreeSet<>(mondays)
        .descendingSet().stream()
            .limit(4)
            .forEach(week -> assertThat(kept).anyMatch(day -> monday(day).equals(week)));
    days.stream()
        .map(YearMonth::from)
        .distinct()
        .sorted(java.util.Comparator.reverseOrder())
        .limit(12)
        .forEach(month -> assertThat(kept).anyMatch(day -> YearMonth.from(day).equals(month)));
  }

  private static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  @Property
  void throwing_away_day_by_day_leaves_the_same_as_at_the_end(@ForAll("days") Set<LocalDate> days) {
    Set<LocalDate> left = new HashSet<>();
    for (LocalDate day : new TreeSet<>(days)) {
      left.add(day);
      left = new HashSet<>(Keeping.kept(left));
    }
    assertThat(left).isEqualTo(Keeping.kept(days));
  }

  @Property
  void what_is_kept_is_kept_again(@ForAll("days") Set<LocalDate> days) {
    assertThat(Keeping.kept(Keeping.kept(days))).isEqualTo(Keeping.kept(days));
  }

  @Example
  void a_book_used_every_day_for_two_years_keeps_these() {
    Set<LocalDate> days = FIRST.datesUntil(LocalDate.of(2026, 1, 1)).collect(Collectors.toSet());
    assertThat(new TreeSet<>(Keeping.kept(days)))
        .extracting(LocalDate::toString)
        .containsExactly(
            "2025-01-31",
            "2025-02-28",
            "2025-03-31",
            "2025-04-30",
            "2025-05-31",
            "2025-06-30",
            "2025-07-31",
            "2025-08-31",
            "2025-09-30",
            "2025-10-31",
            "2025-11-30",
            "2025-12-14",
            "2025-12-21",
            "2025-12-25",
            "2025-12-26",
            "2025-12-27",
            "2025-12-28",
            "2025-12-29",
            "2025-12-30",
            "2025-12-31");
  }
}
