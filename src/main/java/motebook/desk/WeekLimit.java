package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.reference.Limit;
import motebook.reference.WoodClass;
import motebook.science.Dose;
import motebook.science.Estimate;
import motebook.science.LongShift;

/**
 * The limit that a week's mean over 40 h is held against, lowered for a week of more than 40 h.
 *
 * <p>After Brief and Scala, and once only: the divisor of the mean is 40 h already, so what is left
 * is {@code (168 − h)/128}; the factor for long days is for the days' own means and not used here.
 *
 * @param limit of those in force at the week's end for the wood in its air, the one that the week
 *     comes closest to
 * @param outside the mean over 40 h outside the mask in the limit's own fraction, mg/m³
 * @param hours in the shop: sessions, and short gaps that were counted
 * @param factor on the limit, 1 up to 40 h
 */
public record WeekLimit(Limit limit, Estimate outside, double hours, double factor) {
  private static final double HOUR = 60;

  static Optional<WeekLimit> of(WeekReport week, List<DayReckoning> days) {
    Set<WoodClass> wood =
        days.stream()
            .flatMap(day -> day.sources().stream().filter(day::reached))
            .map(source -> source.material().woodClass())
            .collect(Collectors.toSet());
    DayReckoning last = days.get(days.size() - 1);
    double hours = week.days().stream().mapToInt(WeekLimit::minutes).sum() / HOUR;
    return last
        .shop()
        .reference()
        .limits(last.shop().settings().limitSet(), last.date(), wood)
        .stream()
        .map(limit -> held(limit, days, hours))
        .max(Comparator.comparingDouble(held -> held.outside().central() / held.limit().mgPerM3()));
  }

  private static WeekLimit held(Limit limit, List<DayReckoning> days, double hours) {
    return new WeekLimit(
        limit,
        Week.outsideMean(days, limit.fraction()),
        hours,
        LongShift.factorForFortyHourMean(hours));
  }

  /** Minutes that a day counts for: sessions and the gaps between them. */
  static int minutes(DayReport day) {
    return day.minutesLogged() + day.minutesBetween();
  }

  /** Whether the week is longer than the limit is written for. */
  public boolean longWeek() {
    return hours > Dose.FORTY_HOURS / HOUR;
  }

  /** The limit lowered for the week's length, mg/m³. */
  public double adjustedMgPerM3() {
    return limit.mgPerM3() * factor;
  }

  /** The headline figure as a share of the lowered limit. */
  public double ratio() {
    return outside.central() / adjustedMgPerM3();
  }
}
