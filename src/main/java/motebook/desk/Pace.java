package motebook.desk;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import motebook.model.Session;

/**
 * How much the shop works: what clocks that run with the work are foreseen by.
 *
 * @param workingDays days with a session among the last four weeks
 * @param days the days that those are among, 7 to 28: fewer where the book is younger
 */
public record Pace(int workingDays, int days) {
  static final int FOUR_WEEKS = 28;
  private static final int ONE_WEEK = 7;

  /** First of the four weeks that end with a day. */
  static LocalDate first(LocalDate last) {
    return last.minusDays(FOUR_WEEKS - 1);
  }

  /** The pace of the four weeks that end with a day. */
  static Pace of(WearLog log) {
    List<LocalDate> worked =
        log.sessionsFrom(first(log.last())).stream()
            .map(Session::work)
            .map(work -> work.date())
            .distinct()
            .toList();
    if (worked.isEmpty()) {
      return new Pace(0, FOUR_WEEKS);
    }
    int since = (int) ChronoUnit.DAYS.between(worked.get(0), log.last()) + 1;
    return new Pace(worked.size(), Math.max(ONE_WEEK, since));
  }

  /** Whether nothing can be foreseen. */
  boolean still() {
    return workingDays == 0;
  }

  /** Working days that lie between two days, both at the same time of day. */
  double workingDays(LocalDate from, LocalDate to) {
    return (double) ChronoUnit.DAYS.between(from, to) * workingDays / days;
  }

  /** The day on which so many working days, at least one, will have been worked after a day. */
  LocalDate after(LocalDate today, double count) {
    double ahead = Math.min(count * days / Math.max(1, workingDays), 100 * 365.0);
    return today.plusDays((long) Math.floor(ahead));
  }
}
