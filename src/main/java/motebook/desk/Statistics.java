package motebook.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.science.CensoredSample;
import motebook.science.ExposureBand;
import motebook.science.LimitVerdict;
import motebook.science.LognormalSample;
import motebook.science.ShapiroWilk;

/**
 * What some measured results say about the air they were drawn from, all in their own unit.
 *
 * @param results how many, those below detection among them
 * @param censored how many of them are only known to lie below a limit of detection
 * @param sample the lognormal that fits them
 * @param mean plain mean; none where a result is not known
 * @param unbiasedMean minimum-variance unbiased estimate of the mean; none likewise
 * @param normality Shapiro and Wilk's test of the logarithms, where it can be made
 * @param upper95 what 95 % lie below, with 95 % confidence
 * @param upper70 the same with 70 % confidence
 * @param held what they say about a limit, if one was given
 */
public record Statistics(
    int results,
    int censored,
    LognormalSample sample,
    OptionalDouble mean,
    OptionalDouble unbiasedMean,
    Optional<ShapiroWilk> normality,
    double upper95,
    double upper70,
    Optional<Held> held) {

  /**
   * A result as it was told.
   *
   * @param value above 0
   * @param below whether it is only known to lie below the value
   */
  public record Result(double value, boolean below) {}

  /**
   * Results held against a limit.
   *
   * @param limit in the unit of the results
   * @param percentOver share over it, %
   * @param low90 lower end of the share's 90 % confidence interval, %
   * @param high90 upper end of it, %
   * @param band 0 to 4, by what 95 % lie below
   * @param verdict by the tests of EN 689
   */
  public record Held(
      double limit,
      double percentOver,
      double low90,
      double high90,
      int band,
      LimitVerdict verdict) {
    static Held of(double limit, double[] results, LognormalSample sample) {
      return new Held(
          limit,
          100 * sample.shareOver(limit),
          100 * sample.shareOver(limit, 0.05),
          100 * sample.shareOver(limit, 0.95),
          ExposureBand.of(sample.p95(), limit),
          LimitVerdict.of(results, sample, limit));
    }
  }

  /**
   * Whether results can be reckoned with: two or more of a known figure, and among them two that
   * differ where any is below detection.
   */
  public static boolean enough(List<Result> results) {
    double[] told = values(results, false);
    boolean differ = Arrays.stream(told).distinct().count() > 1;
    return told.length > 1 && (differ || told.length == results.size());
  }

  /**
   * The statistics of results that are {@link #enough}.
   *
   * @param limit above 0, in their unit
   */
  public static Statistics of(List<Result> results, OptionalDouble limit) {
    double[] told = values(results, false);
    double[] below = values(results, true);
    boolean whole = below.length == 0;
    LognormalSample sample = whole ? LognormalSample.of(told) : CensoredSample.fit(told, below);
    double[] all = results.stream().mapToDouble(Result::value).toArray();
    return new Statistics(
        results.size(),
        below.length,
        sample,
        whole ? OptionalDouble.of(sample.mean()) : OptionalDouble.empty(),
        whole ? OptionalDouble.of(sample.unbiasedMean()) : OptionalDouble.empty(),
        normality(told, whole),
        sample.upperToleranceLimit(0.95),
        sample.upperToleranceLimit(0.70),
        limit.isPresent()
            ? Optional.of(Held.of(limit.getAsDouble(), all, sample))
            : Optional.empty());
  }

  private static double[] values(List<Result> results, boolean below) {
    return results.stream().filter(r -> r.below() == below).mapToDouble(Result::value).toArray();
  }

  private static Optional<ShapiroWilk> normality(double[] told, boolean whole) {
    boolean testable =
        whole
            && told.length >= ShapiroWilk.FEWEST
            && told.length <= ShapiroWilk.MOST
            && Arrays.stream(told).distinct().count() > 1;
    return Stream.of(told)
        .filter(any -> testable)
        .map(values -> ShapiroWilk.of(Arrays.stream(values).map(Math::log).toArray()))
        .findFirst();
  }
}
