package motebook.desk;

import java.time.LocalDate;
import java.util.Optional;
import motebook.science.Dose;
import motebook.science.LongShift;

/**
 * A day of more than 8 h in the shop, against its limit lowered for it: practice, not law.
 *
 * <p>After Brief and Scala, and once only: the divisor of the day's mean is 8 h already, so what is
 * left is {@code (24 − h)/16}.
 *
 * @param date the day
 * @param minutes in the shop: sessions, and short gaps that were counted
 * @param held the limit of the day as it is written
 * @param factor on the limit
 */
public record LongDay(LocalDate date, int minutes, HeldLimit held, double factor) {
  private static final double HOUR = 60;

  /** A day against its lowered limit; empty up to 8 h, or where no limit judges it. */
  static Optional<LongDay> of(DayReckoning day, Optional<HeldLimit> judged) {
    int minutes = day.minutesInShop();
    return judged
        .filter(held -> minutes > Dose.EIGHT_HOURS)
        .map(
            held -> new LongDay(day.date(), minutes, held, LongShift.factorForTwa(minutes / HOUR)));
  }

  /** Hours in the shop. */
  public double hours() {
    return minutes / HOUR;
  }

  /** The limit lowered for the day's length, mg/m³. */
  public double adjustedMgPerM3() {
    return held.limit().mgPerM3() * factor;
  }

  /** The best estimate outside as a multiple of the lowered limit. */
  public double ratio() {
    return held.ratio() / factor;
  }

  /** Whether the best estimate outside lies above the lowered limit. */
  public boolean over() {
    return held.ratio() > factor;
  }
}
