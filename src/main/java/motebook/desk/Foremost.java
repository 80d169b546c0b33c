package motebook.desk;

/** What a day is looked at by: the hazard that comes nearer to its limit. */
public enum Foremost {
  /** Inhalable dust. */
  DUST,
  /** The vapours of finishes taken together. */
  VAPOUR;

  /** What comes nearer to its limit outside the mask on a day; dust where neither is near. */
  static Foremost of(DayReport day) {
    return vapour(day) > dust(day) ? VAPOUR : DUST;
  }

  /** How near a day comes outside the mask: the figure of either as a multiple of its limit. */
  static double nearness(DayReport day) {
    return Math.max(vapour(day), dust(day));
  }

  private static double dust(DayReport day) {
    return day.limit().map(HeldLimit::ratio).orElse(0.0);
  }

  private static double vapour(DayReport day) {
    return day.vapour().map(vapour -> vapour.indexOutside().central()).orElse(0.0);
  }

  /** A day's headline figure outside the mask: mg/m³ of dust, or the index of the vapours. */
  double figure(DayReport day) {
    return this == VAPOUR ? vapour(day) : day.outside().estimate().central();
  }
}
