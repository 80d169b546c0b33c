package motebook.entry;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.MinuteOfDay;
import motebook.model.Work;

/** When each row's work was: from two of start, end and minutes, and a date. */
final class SheetSpans {
  private static final int DAY = 24 * 60;
  private static final Pattern DATED =
      Pattern.compile("(.*\\d)[ T,]+(\\d{1,2}[:.h]\\d{2}.*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern MIDNIGHT = Pattern.compile("[ T]+0?0:00(?::00(?:\\.0+)?)?$");

  private final SheetDates dates;
  private final SheetTimes times;

  SheetSpans(SheetDates dates, SheetTimes times) {
    this.dates = dates;
    this.times = times;
  }

  /** When the work was. */
  record Span(LocalDate date, int startMinute, int minutes) {}

  /** A time of day, with the date before it where the cell holds one. */
  private record Moment(Optional<LocalDate> date, int minute) {}

  /** Reads a row; where it cannot be read, the row knows what is wrong. */
  Optional<Span> read(SheetRow row) {
    int before = row.faultCount();
    Optional<LocalDate> day =
        row.read(SheetColumn.DATE, cell -> dates.read(MIDNIGHT.matcher(cell).replaceFirst("")));
    Optional<Moment> start = row.read(SheetColumn.START, this::moment);
    Optional<Moment> end = row.read(SheetColumn.END, this::moment);
    Optional<Integer> length = row.read(SheetColumn.LENGTH, times::length);
    Optional<LocalDate> date = day.or(() -> start.flatMap(Moment::date));
    if (date.isEmpty() && !row.filled(SheetColumn.DATE) && row.faultCount() == before) {
      row.fault(SheetColumn.DATE, "the date is missing: write it as 2026-03-02.");
    }
    if (row.faultCount() > before) {
      return Optional.empty();
    }
    return span(row, date.orElseThrow(), start.map(Moment::minute), closing(end), length);
  }

  private Moment moment(String cell) {
    Matcher dated = DATED.matcher(cell);
    return dated.matches()
        ? new Moment(Optional.of(dates.read(dated.group(1))), times.clock(dated.group(2)))
        : new Moment(Optional.empty(), times.clock(cell));
  }

  /** Midnight as an end closes the day. */
  private static Optional<Integer> closing(Optional<Moment> end) {
    return end.map(moment -> moment.minute == 0 ? DAY : moment.minute);
  }

  private static Optional<Span> span(
      SheetRow row,
      LocalDate date,
      Optional<Integer> start,
      Optional<Integer> end,
      Optional<Integer> length) {
    if (start.isEmpty() && (end.isEmpty() || length.isEmpty())) {
      row.fault(SheetColumn.START, "the start is missing: write it as 9:15.");
    } else if (length.isEmpty() && end.isEmpty()) {
      row.fault(
          SheetColumn.LENGTH, "how long it took is missing: write it as 40m, or give an end.");
    } else {
      int minutes = length.orElseGet(() -> end.orElseThrow() - start.orElseThrow());
      int from = start.orElseGet(() -> end.orElseThrow() - minutes);
      return sound(row, from, end, minutes)
          ? Optional.of(new Span(date, from, minutes))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static boolean sound(SheetRow row, int from, Optional<Integer> end, int minutes) {
    int before = row.faultCount();
    SheetColumn last = row.filled(SheetColumn.LENGTH) ? SheetColumn.LENGTH : SheetColumn.END;
    if (from < 0 || from + minutes > DAY || (minutes < 0 && last == SheetColumn.END)) {
      row.fault(last, "the work would run past midnight: write a row for each of the two dates.");
    } else if (minutes < 1) {
      row.fault(last, "the work lasts at least one minute.");
    } else if (minutes > Work.LONGEST_MINUTES) {
      row.fault(last, "a session lasts up to 16 hours: write the work in parts.");
    } else if (end.isPresent() && end.get() != from + minutes) {
      row.fault(
          SheetColumn.END,
          "start and duration make it end at %s: correct one of the three."
              .formatted(MinuteOfDay.told(from + minutes)));
    }
    return row.faultCount() == before;
  }
}
