package motebook.desk;

import java.util.Optional;
import motebook.science.Estimate;

/**
 * How much protection a day calls for against one thing in the air, and how much is counted.
 *
 * @param central the day outside the mask as a multiple of its limit, best estimate
 * @param high90 the same at the upper end of the 90 % range
 * @param counted the day outside over the day inside
 */
public record RequiredProtection(double central, double high90, double counted) {

  /** Of a day as multiples of its limit; empty where there was nothing of it. */
  static Optional<RequiredProtection> of(Estimate outside, Estimate inside) {
    return outside.central() == 0
        ? Optional.empty()
        : Optional.of(
            new RequiredProtection(
                outside.central(), outside.high90(), outside.central() / inside.central()));
  }

  /** Whether what is counted is less than the best estimate calls for. */
  public boolean falls() {
    return counted < central;
  }
}
