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
      case VAPOUR -> left(clock);
      case GAUGE -> Figures.percent(100 * clock.share()) + " used";
      case OPENED, EXAMINATION -> "ends on " + clock.ends().orElseThrow();
      case SHELF -> "to " + clock.ends().orElseThrow();
      case SHIFT -> "begun on " + clock.ends().orElseThrow();
      default ->
          Figures.rounded(clock.used())
              + " of "
              + (clock.kind() == CareClock.Kind.EMPTYING
                  ? Figures.rounded(clock.limit())
                  : Figures.plain(clock.limit()))
              + " "
              + clock.kind().unit();
    };
  }

  /**
   * What is left of a life of vapour, the one figure of it: {@code about 2.50 h left of work like
   * its last}.
   */
  public static String left(CareClock clock) {
    if (clock.ranOut().isPresent()) {
      return "used up";
    }
    if (clock.daysLeft().isEmpty()) {
      return "unused";
    }
    double days = clock.daysLeft().getAsDouble();
    return (days < 1
            ? Figures.about(clock.hoursLeft().orElseThrow()) + " h"
            : "about " + Figures.count((long) Math.floor(days), "working day"))
        + " left of work like its last";
  }

  /**
   * {@code about 3 working days at this rate}; empty where nothing is foreseen, or where the clock
   * says itself what is left of it.
   */
  public static String forecast(CareClock clock) {
    if (clock.workingDaysLeft().isEmpty() || clock.kind() == CareClock.Kind.VAPOUR) {
      return "";
    }
    double left = clock.workingDaysLeft().getAsDouble();
    return left < 1
        ? "less than a working day at this rate"
        : "about " + Figures.count(Math.round(left), "working day") + " at this rate";
  }
}
