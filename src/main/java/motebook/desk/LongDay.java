package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import motebook.science.Dose;
import motebook.science.LongShift;

/**
 * A day of more than 8 h in the shop, against its limit lowered for it.
 *
 * <p>After Brief and Scala, and once only: the divisor of the day's mean is 8 h already, so what is
 * left is {@code (24 − h)/16}.
 *
 * @param date the day
 * @param hours in the shop: sessions, and short gaps that were counted
 * @param held the limit of the day as it is written, and the day's means in its fraction
 * @param factor on the limit
 */
public record LongDay(LocalDate date, double hours, HeldLimit held, double factor) {
  private static final double HOUR = 60;

  /** The long days of a week that have a limit. */
  static List<LongDay> of(WeekReport week) {
    return week.days().stream()
        .filter(day -> WeekLimit.minutes(day) > Dose.EIGHT_HOURS)
        .flatMap(day -> day.limit().stream().map(held -> of(day, held)))
        .toList();
  }

  private static LongDay of(DayReport day, HeldLimit held) {
    double hours = WeekLimit.minutes(day) / HOUR;
    return new LongDay(day.date(), hours, held, LongShift.factorForTwa(hours));
  }

  /** The limit lowered for the day's length, mg/m³. */
  public double adjustedMgPerM3() {
    return held.limit().mgPerM3() * factor;
  }

  /** Whether the headline figure outside lies above the lowered limit. */
  public boolean over() {
    return held.outside().central() > adjustedMgPerM3();
  }
}
