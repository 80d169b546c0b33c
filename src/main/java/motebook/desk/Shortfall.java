package motebook.desk;

import motebook.reference.Solvent;
import motebook.science.Estimate;

/**
 * A mask that counts with its factor and is not enough all the same, however long it is worn: the
 * air is above its maximum use concentration, which is the factor times a limit, over the limit's
 * own time, and never more than its gas elements are made for.
 *
 * @param respirator its name
 * @param apf the factor that it counts as
 * @param over what it is not enough for
 */
public record Shortfall(String respirator, double apf, Over over) {
  /** Whether the best estimate is too much, and not the upper end of its range alone. */
  public boolean certain() {
    return !(over instanceof Quarter quarter)
        || quarter.outside().central() > apf * quarter.limit().ppm();
  }

  /** What a mask is not enough for. */
  public sealed interface Over {}

  /**
   * Dust or vapour as an 8-hour mean.
   *
   * @param hazard which of the two
   * @param needed the factor that the day needs, best estimate
   */
  public record Day(Foremost hazard, double needed) implements Over {}

  /**
   * One solvent over its worst 15 minutes.
   *
   * @param solvent which
   * @param limit the limit
   * @param outside mean outside the mask, ppm; at least its upper end is too much
   */
  public record Quarter(Solvent solvent, ShortTermLimit limit, Estimate outside) implements Over {}
}
