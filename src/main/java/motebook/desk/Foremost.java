package motebook.desk;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** What a day is looked at by: the hazard that comes nearer to its limit. */
public enum Foremost {
  /** Inhalable dust. */
  DUST,
  /** The vapours of finishes taken together. */
  VAPOUR;

  /** What comes nearer to a limit outside the mask on a day; dust where neither is near. */
  static Foremost of(DayReport day) {
    return of(List.of(day));
  }

  /** The same of several days: what comes nearest on any of them. */
  static Foremost of(List<DayReport> days) {
    if (days.stream().anyMatch(day -> day.vapour().filter(VapourReport::mustEnd).isPresent())) {
      return VAPOUR;
    }
    return most(days, Foremost::vapour) > most(days, Foremost::dust) ? VAPOUR : DUST;
  }

  private static double most(List<DayReport> days, ToDoubleFunction<DayReport> nearness) {
    return days.stream().mapToDouble(nearness).max().orElse(0);
  }

  /** How near a day comes outside the mask: the figure of either as a multiple of its limit. */
  static double nearness(DayReport day) {
    return Math.max(vapour(day), dust(day));
  }

  private static double dust(DayReport day) {
    return day.limit().map(HeldLimit::ratio).orElse(0.0);
  }

  private static double vapour(DayReport day) {
    return day.vapour().map(VapourReport::nearness).orElse(0.0);
  }

  /** A day's headline figure outside the mask: mg/m³ of dust, or the index of the vapours. */
  double figure(DayReport day) {
    return this == VAPOUR
        ? day.vapour().map(vapour -> vapour.indexOutside().central()).orElse(0.0)
        : day.outside().estimate().central();
  }
}
