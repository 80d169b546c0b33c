package motebook.report;

import motebook.model.Figures;
import motebook.model.Units;

/** A shop's own measures in the units that its owner chose. */
public final class Measures {
  private static final double FOOT_M = 0.3048;
  private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;

  private Measures() {}

  /** A volume: {@code 90 m³}, {@code 3178 ft³}. */
  public static String volume(double m3, Units units) {
    return units == Units.US ? whole(m3 / CUBIC_FOOT_M3) + " ft³" : plain(m3) + " m³";
  }

  /** A flow of air: {@code 11.3 m³/min}, {@code 400 cfm}. */
  public static String flow(double m3PerMin, Units units) {
    return units == Units.US
        ? whole(m3PerMin / CUBIC_FOOT_M3) + " cfm"
        : plain(m3PerMin) + " m³/min";
  }

  /** A speed of air: {@code 6 m/min}, {@code 20 ft/min}. */
  public static String speed(double mPerMin, Units units) {
    return units == Units.US
        ? feetAMinute(mPerMin / FOOT_M) + " ft/min"
        : plain(mPerMin) + " m/min";
  }

  private static String feetAMinute(double value) {
    return value < 100 ? Figures.plain(Math.rint(10 * value) / 10) : whole(value);
  }

  private static String whole(double value) {
    return Figures.plain(Math.rint(value));
  }

  // What was typed in feet has no end in metres; two decimals are all that a room is known to.
  private static String plain(double value) {
    return Figures.plain(value < 1 ? value : Math.rint(100 * value) / 100);
  }
}
