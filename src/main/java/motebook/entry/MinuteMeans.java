package motebook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What an instrument showed, minute by minute; as little is kept of it as a day has minutes. */
public final class MinuteMeans {
  private static final int DAY = 24 * 60;
  private static final double MINUTE = 60;

  private final Map<LocalDate, Minutes> days = new TreeMap<>();
  private Minutes latest = new Minutes(LocalDate.MIN);

  private static final class Minutes {
    private final LocalDate date;
    private final double[] sums = new double[DAY];
    private final double[] seconds = new double[DAY];

    private Minutes(LocalDate date) {
      this.date = date;
    }
  }

  /**
   * A stretch of time without a gap of a minute.
   *
   * @param date the day
   * @param fromMinute first minute of the day
   * @param toMinute the minute after the last
   */
  public record Stretch(LocalDate date, int fromMinute, int toMinute) {
    /**
     * As much of it as lies in some minutes; its end is not after its beginning where none does.
     */
    public Stretch within(int from, int to) {
      return new Stretch(date, Math.max(fromMinute, from), Math.min(toMinute, to));
    }

    /** Its length, min. */
    public int minutes() {
      return toMinute - fromMinute;
    }
  }

  /** A value that stood for some seconds from a moment on. */
  void add(LocalDateTime from, double seconds, double value) {
    LocalDateTime moment = from;
    double left = seconds;
    while (left > 0) {
      double toNext = MINUTE - moment.getSecond() - moment.getNano() / 1e9;
      double here = Math.min(left, toNext);
      Minutes day = day(moment.toLocalDate());
      int minute = moment.getHour() * 60 + moment.getMinute();
      day.sums[minute] += here * value;
      day.seconds[minute] += here;
      left -= here;
      if (left > 0) {
        moment = moment.withSecond(0).withNano(0).plusMinutes(1);
      }
    }
  }

  private Minutes day(LocalDate date) {
    if (!latest.date.equals(date)) {
      latest = days.computeIfAbsent(date, Minutes::new);
    }
    return latest;
  }

  /** The stretches, in order of time. */
  public List<Stretch> stretches() {
    List<Stretch> all = new ArrayList<>();
    for (Minutes day : days.values()) {
      int from = -1;
      for (int minute = 0; minute <= DAY; minute++) {
        boolean covered = minute < DAY && day.seconds[minute] > 0;
        if (covered && from < 0) {
          from = minute;
        } else if (!covered && from >= 0) {
          all.add(new Stretch(day.date, from, minute));
          from = -1;
        }
      }
    }
    return all;
  }

  /** Time-weighted mean over a stretch that something was read in. */
  public double mean(Stretch stretch) {
    Minutes day = days.get(stretch.date());
    double sum = 0;
    double seconds = 0;
    for (int minute = stretch.fromMinute(); minute < stretch.toMinute(); minute++) {
      sum += day.sums[minute];
      seconds += day.seconds[minute];
    }
    return sum / seconds;
  }
}
