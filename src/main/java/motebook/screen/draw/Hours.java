package motebook.screen.draw;

import java.time.LocalDate;
import java.time.LocalDateTime;
import motebook.screen.state.DayPage;

/**
 * The stretch of the day that the air strip shows, laid over columns.
 *
 * @param from first minute of the day, a full hour
 * @param to the minute after the last, a full hour
 * @param columns how many columns it takes
 */
record Hours(int from, int to, int columns) {
  private static final int DAY = 24 * 60;
  private static final int SHORTEST = 6 * 60;
  private static final int AFTERWARDS = 2 * 60;

  /** From the first session to two hours after the last, so that what lingers is seen. */
  static Hours of(DayPage page, LocalDateTime now, int columns) {
    int first = page.sessions().stream().mapToInt(s -> s.work().startMinute()).min().orElse(8 * 60);
    int last = page.sessions().stream().mapToInt(s -> s.work().endMinute()).max().orElse(first);
    int from = first / 60 * 60;
    int after = Math.max(last + AFTERWARDS, from + SHORTEST);
    int to = Math.min(DAY, fullHour(Math.max(after, minuteOn(page.date(), now))));
    return new Hours(Math.min(from, DAY - SHORTEST), to, columns);
  }

  private static int minuteOn(LocalDate date, LocalDateTime now) {
    return date.equals(now.toLocalDate()) ? now.getHour() * 60 + now.getMinute() : 0;
  }

  private static int fullHour(int minute) {
    return (minute + 59) / 60 * 60;
  }

  /** The column of a minute; it may lie outside. */
  int column(int minute) {
    return (int) Math.floor((minute - from) * (double) columns / (to - from));
  }

  /** First minute of a column. */
  int minute(int column) {
    return from + (int) Math.floor(column * (double) (to - from) / columns);
  }

  /** The minute behind a column, at least one after its first. */
  int end(int column) {
    return Math.max(minute(column) + 1, minute(column + 1));
  }

  /** Hours between two labels so that they stay apart. */
  int step() {
    int step = 1;
    while (columns * 60.0 * step / (to - from) < 7) {
      step++;
    }
    return step;
  }
}
