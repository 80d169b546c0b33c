package motebook.screen.state;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/**
 * The week that is looked at.
 *
 * @param monday its first day
 * @param page what was read; it may still be of another week or person
 * @param chosen the day that is pointed at, 0 for Monday
 */
public record WeekSheet(LocalDate monday, Optional<WeekPage> page, int chosen) {
  private static final int LAST_DAY = 6;

  static WeekSheet of(LocalDate day) {
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return new WeekSheet(monday, Optional.empty(), day.getDayOfWeek().getValue() - 1);
  }

  /** What was read of exactly this week and person, if it has come already. */
  public Optional<WeekPage> current(String person) {
    return page.filter(p -> p.monday().equals(monday) && p.person().equals(person));
  }

  /** The week of another day, pointing at it. */
  WeekSheet on(LocalDate day) {
    WeekSheet fresh = of(day);
    return new WeekSheet(fresh.monday, page, fresh.chosen);
  }

  WeekSheet with(WeekPage fresh) {
    return fresh.monday().equals(monday) ? new WeekSheet(monday, Optional.of(fresh), chosen) : this;
  }

  WeekSheet pointing(int day) {
    return new WeekSheet(monday, page, Math.max(0, Math.min(day, LAST_DAY)));
  }

  /** The day that is pointed at. */
  public LocalDate day() {
    return monday.plusDays(chosen);
  }
}
