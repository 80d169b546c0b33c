package motebook.desk;

import motebook.model.Figures;

/** What is said of a clock. */
public final class Clocks {
  private Clocks() {}

  /** What has run and how far: {@code hours worn (6.5 of 8 h)}. */
  public static String ended(CareClock clock) {
    return clock.kind().words() + " (" + figures(clock) + ")";
  }

  /** {@code 6.5 of 8 h}, {@code 60 % used}. */
  static String figures(CareClock clock) {
    return switch (clock.kind()) {
      case VAPOUR, GAUGE -> Figures.percent(100 * clock.share()) + " used";
      case OPENED, EXAMINATION -> "ends on " + clock.ends().orElseThrow();
      case SHELF -> "to " + clock.ends().orElseThrow();
      case SHIFT -> "begun on " + clock.ends().orElseThrow();
      default ->
          Figures.rounded(clock.used())
              + " of "
              + Figures.plain(clock.limit())
              + " "
              + clock.kind().unit();
    };
  }

  /** {@code about 3 working days at this rate}; empty where nothing is foreseen. */
  public static String forecast(CareClock clock) {
    if (clock.workingDaysLeft().isEmpty()) {
      return "";
    }
    double left = clock.workingDaysLeft().getAsDouble();
    return left < 1
        ? "less than a working day at this rate"
        : "about " + Figures.count(Math.round(left), "working day") + " at this rate";
  }
}
