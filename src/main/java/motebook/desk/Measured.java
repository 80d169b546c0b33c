package motebook.desk;

import motebook.model.Sample;
import motebook.science.GravimetricSample;

/**
 * What a sample says about the air.
 *
 * @param mgPerM3 the concentration; where it is below detection, the one that it is below
 * @param below whether the result is below detection
 */
public record Measured(double mgPerM3, boolean below) {
  /** The concentration that a sample stands for. */
  public static Measured of(Sample sample) {
    if (sample.result() instanceof Sample.Weighed weighed) {
      GravimetricSample filter =
          new GravimetricSample(
              weighed.mg() - weighed.blankMg(),
              weighed.litresPerMin() * sample.minutes(),
              weighed.detectionLimitMg());
      return new Measured(filter.mgPerM3(), filter.belowDetection());
    }
    Sample.Told told = (Sample.Told) sample.result();
    return new Measured(told.mgPerM3() * sample.use().factor().orElse(1), told.below());
  }
}
