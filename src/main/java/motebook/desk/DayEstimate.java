package motebook.desk;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import motebook.desk.DayReport.Twa;
import motebook.reference.Limit;

/**
 * What a person's day is estimated at, without the lines, remarks and cautions that {@link
 * DayReport} has beside it.
 *
 * @param date the day
 * @param person whose
 * @param limit the limit that the day is judged by; empty where none applies or covers its dust
 * @param outside the inhalable 8-hour TWA outside the mask, mg/m³
 * @param inside the same inside it
 */
public record DayEstimate(
    LocalDate date, String person, Optional<HeldLimit> limit, Twa outside, Twa inside) {
  /** The estimate of a day already reckoned. */
  static DayEstimate of(DayReckoning day) {
    Optional<HeldLimit> limit = HeldLimit.of(day);
    return new DayEstimate(
        day.date(),
        day.person(),
        limit,
        new Twa(day.outside(Limit.Fraction.INHALABLE), chance(limit, HeldLimit::chanceOutside)),
        new Twa(day.inside(Limit.Fraction.INHALABLE), chance(limit, HeldLimit::chanceInside)));
  }

  private static OptionalDouble chance(
      Optional<HeldLimit> limit, ToDoubleFunction<HeldLimit> side) {
    return limit.stream().mapToDouble(side).findFirst();
  }
}
