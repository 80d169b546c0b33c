package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.model.VapourLimits;
import motebook.science.Estimate;

/**
 * The vapour of a week: no mean over the week, since its limits are for a day.
 *
 * @param limits whose figures it is held against
 * @param days the days on which vapour was breathed, in order; at least one
 */
public record WeekVapour(VapourLimits limits, List<OfDay> days) {

  /**
   * One day's vapour.
   *
   * @param date the day
   * @param outside index of the mixture over 8 h outside the mask, over the limit above 1
   * @param inside the same inside it
   * @param masked whether a respirator was worn in any session of the day
   * @param notEstimated whether something was given off that no figure here holds
   * @param overShortTerm whether the worst 15 minutes pass a short-term limit or a ceiling
   */
  public record OfDay(
      LocalDate date,
      Estimate outside,
      Estimate inside,
      boolean masked,
      boolean notEstimated,
      boolean overShortTerm) {
    static OfDay of(DayReport day, VapourReport vapour) {
      return new OfDay(
          day.date(),
          vapour.indexOutside(),
          vapour.indexInside(),
          day.sessions().stream().anyMatch(s -> s.source().session().work().mask().isPresent()),
          !vapour.notEstimated().isEmpty() || !vapour.notJudged().isEmpty(),
          !vapour.overShortTerm().isEmpty());
    }
  }

  public WeekVapour {
    days = List.copyOf(days);
  }

  /** The vapour of a week; empty where none was breathed. */
  public static Optional<WeekVapour> of(WeekReport week) {
    List<OfDay> days =
        week.days().stream()
            .flatMap(day -> day.vapour().map(vapour -> OfDay.of(day, vapour)).stream())
            .toList();
    return week.days().stream()
        .flatMap(day -> day.vapour().stream())
        .findFirst()
        .map(vapour -> new WeekVapour(vapour.limits(), days));
  }

  /** The day with the highest headline figure outside. */
  public OfDay worst() {
    return days.stream()
        .max(Comparator.comparingDouble(day -> day.outside().central()))
        .orElseThrow();
  }

  /** How many days pass a short-term limit or a ceiling, by the best estimate outside. */
  public long daysOverShortTerm() {
    return days.stream().filter(OfDay::overShortTerm).count();
  }

  /** How many days lie over the limits taken together, by the headline figure outside. */
  public long daysOver() {
    return days.stream().filter(day -> day.outside().central() > 1).count();
  }
}
