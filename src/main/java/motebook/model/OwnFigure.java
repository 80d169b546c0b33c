package motebook.model;

import java.util.Locale;

/**
 * A figure of the care of masks and filters that rules leave to the owner, or that an owner may
 * draw tighter than they do.
 */
public enum OwnFigure {
  CARTRIDGE_SAFETY_FRACTION(
      0.75,
      0.1,
      1,
      Unit.SHARE,
      "share of a vapour life that is used",
      "judgement; 1 uses all of it"),
  CARTRIDGE_HUMIDITY(
      50,
      0,
      100,
      Unit.PERCENT,
      "relative humidity of the shop's air",
      "OSHA's printed times are for up to 50 %; above 85 % a vapour life is halved"),
  OPENED_GAS_MONTHS(
      6,
      1,
      24,
      Unit.MONTHS,
      "that an opened gas element holds",
      "six months at most is common, from memory; the maker's figure comes first"),
  FIT_MONTHS_OSHA(
      12,
      1,
      12,
      Unit.MONTHS,
      "from fit test to fit test, OSHA",
      "at least yearly: 29 CFR 1910.134(f)(2)"),
  FIT_MONTHS_UK(
      12, 1, 36, Unit.MONTHS, "from fit test to fit test, UK", "no rule fixes it: common practice"),
  TRAINING_MONTHS(
      12,
      1,
      12,
      Unit.MONTHS,
      "from one training to the next",
      "at least yearly: 29 CFR 1910.134(k)(5)"),
  EXAMINATION_MONTHS(
      14,
      1,
      14,
      Unit.MONTHS,
      "between examinations of exhaust, UK",
      "at least every 14 months: COSHH regulation 9"),
  SOON_WORKING_DAYS(
      3, 0, 30, Unit.WORKING_DAYS, "ahead that count as soon", "for what the work uses up"),
  SOON_DAYS(14, 0, 90, Unit.DAYS, "ahead that count as soon", "for what has a date");

  private enum Unit {
    SHARE("", false),
    PERCENT("%", false),
    MONTHS("months", true),
    WORKING_DAYS("working days", true),
    DAYS("days", true);

    private final String word;
    private final boolean whole;

    Unit(String word, boolean whole) {
      this.word = word;
      this.whole = whole;
    }
  }

  private final double shipped;
  private final double low;
  private final double high;
  private final Unit unit;
  private final String what;
  private final String basis;

  OwnFigure(double shipped, double low, double high, Unit unit, String what, String basis) {
    this.shipped = shipped;
    this.low = low;
    this.high = high;
    this.unit = unit;
    this.what = what;
    this.basis = basis;
  }

  /** The word that it is set by, and kept under. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What counts unless the owner chooses otherwise, in its unit. */
  public double shipped() {
    return shipped;
  }

  /** The unit, empty for a share. */
  public String unit() {
    return unit.word;
  }

  /** What it is, in a few words that follow its value and unit. */
  public String what() {
    return what;
  }

  /** Where the shipped value and its bounds come from. */
  public String basis() {
    return basis;
  }

  /** {@code 0.1 to 1}, {@code 1 to 24, whole}. */
  public String allowed() {
    return Figures.exact(low) + " to " + Figures.exact(high) + (unit.whole ? ", whole" : "");
  }

  /**
   * A value that is allowed.
   *
   * @throws Refusal if it lies outside its bounds, or is no whole number where it must be one
   */
  double checked(double value) {
    Checks.within(key(), value, low, high, unit.word);
    if (unit.whole && value != Math.rint(value)) {
      throw new Refusal(
          "The %s is a whole number of %s: got %s."
              .formatted(key(), unit.word, Figures.exact(value)));
    }
    return value;
  }
}
