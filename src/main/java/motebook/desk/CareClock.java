package motebook.desk;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing by which a mask's element or a shop's filter comes to its end.
 *
 * @param kind what runs
 * @param used what has run, in the kind's unit; for a date, days since it began
 * @param limit where it ends, in the same unit
 * @param ranOut the first day on which it may no longer be counted on, if it is over
 * @param workingDaysLeft working days until then at the shop's own pace; empty where it is over,
 *     where nothing moves it, or where a date ends it
 * @param ends the day it ended or is foreseen to end
 * @param hoursLeft hours of work like that of the last day it ran on; empty where it is over, or
 *     where nothing is known of such work
 * @param daysLeft the same in working days like that one
 */
public record CareClock(
    Kind kind,
    double used,
    double limit,
    Optional<RanOut> ranOut,
    OptionalDouble workingDaysLeft,
    Optional<LocalDate> ends,
    OptionalDouble hoursLeft,
    OptionalDouble daysLeft) {

  /** A clock of which no work like its last is known. */
  CareClock(
      Kind kind,
      double used,
      double limit,
      Optional<RanOut> ranOut,
      OptionalDouble workingDaysLeft,
      Optional<LocalDate> ends) {
    this(
        kind,
        used,
        limit,
        ranOut,
        workingDaysLeft,
        ends,
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  /** What runs. */
  public enum Kind {
    HOURS("hours worn", "h"),
    DIRTY("hours worn in dust, class N", "h"),
    OILY("hours worn since there was oil, class R", "h"),
    LOAD("dust load at the upper end of its range", "mg"),
    VAPOUR("vapour life, at the upper end of its range", ""),
    SHIFT("one shift", ""),
    OPENED("time since it was opened", "days"),
    SHELF("shelf life", "days"),
    CLEANING("run hours since it was cleaned", "h"),
    CHANGE("run hours since it was replaced", "h"),
    EMPTYING("run hours since it was emptied", "h"),
    GAUGE("gauge", ""),
    EXAMINATION("time since the exhaust was examined", "days");

    private final String words;
    private final String unit;

    Kind(String words, String unit) {
      this.words = words;
      this.unit = unit;
    }

    /** What runs, in words. */
    public String words() {
      return words;
    }

    /** The unit of its figures, empty where it is a share or a gauge's own. */
    public String unit() {
      return unit;
    }
  }

  /**
   * When a clock ran out.
   *
   * @param date the day
   * @param minute minute of that day from which on it counts no more
   */
  public record RanOut(LocalDate date, int minute) {
    boolean before(LocalDate day, int startMinute) {
      return date.isBefore(day) || (date.equals(day) && minute <= startMinute);
    }
  }

  /** A clock that ends with a day, the last one on which it may be counted on. */
  static CareClock date(Kind kind, LocalDate began, LocalDate lastDay, LocalDate today) {
    long used = began.until(today, java.time.temporal.ChronoUnit.DAYS);
    long limit = began.until(lastDay, java.time.temporal.ChronoUnit.DAYS);
    boolean over = today.isAfter(lastDay);
    return new CareClock(
        kind,
        used,
        limit,
        over ? Optional.of(new RanOut(lastDay.plusDays(1), 0)) : Optional.empty(),
        OptionalDouble.empty(),
        Optional.of(lastDay));
  }

  /**
   * The same with what is left of work like the last.
   *
   * @param hours on the face on the last day that it ran on
   * @param ran how far it ran on that day, above 0
   */
  CareClock likeLast(double hours, double ran) {
    double days = Math.max(0, limit - used) / ran;
    return ranOut.isPresent()
        ? this
        : new CareClock(
            kind,
            used,
            limit,
            ranOut,
            workingDaysLeft,
            ends,
            OptionalDouble.of(days * hours),
            OptionalDouble.of(days));
  }

  /** The same without a look ahead. */
  CareClock unforeseen() {
    return ranOut.isPresent()
        ? this
        : new CareClock(kind, used, limit, ranOut, OptionalDouble.empty(), Optional.empty());
  }

  /** What has run as a share of the whole; 1 and more where it is over. */
  public double share() {
    return limit == 0 ? 1 : used / limit;
  }
}
