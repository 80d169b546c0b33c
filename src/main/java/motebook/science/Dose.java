package motebook.science;

import java.util.List;

/** Sums that limits are held against. */
public final class Dose {
  /** The time that an 8-hour average is taken over, whatever was worked, min. */
  public static final double EIGHT_HOURS = 480;

  /** The time that a week's mean is taken over, min. */
  public static final double FORTY_HOURS = 2400;

  private Dose() {}

  /**
   * A stretch at one concentration.
   *
   * @param minutes ≥ 0
   * @param concentration ≥ 0, in any unit
   */
  public record Stretch(double minutes, double concentration) {}

  /**
   * 8-hour time-weighted average {@code E = ΣCT/8h}, 29 CFR 1910.1000(d)(1), in the unit of the
   * concentrations.
   */
  public static double twa(List<Stretch> stretches) {
    return stretches.stream().mapToDouble(s -> s.minutes() * s.concentration()).sum() / EIGHT_HOURS;
  }

  /**
   * A substance of a mixture.
   *
   * @param concentration ≥ 0
   * @param limit above 0, in the same unit
   */
  public record Ingredient(double concentration, double limit) {}

  /** Index of a mixture {@code ΣCᵢ/Lᵢ}, 29 CFR 1910.1000(d)(2); over the limit above 1. */
  public static double mixtureIndex(List<Ingredient> mixture) {
    return mixture.stream().mapToDouble(i -> i.concentration() / i.limit()).sum();
  }
}
