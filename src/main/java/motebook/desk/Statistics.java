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
 * @param sample the lognormal that fits them; none where too few have a figure, or no two of those
 *     differ beside results below detection
 * @param mean plain mean; none where a result is not known
 * @param unbiasedMean minimum-variance unbiased estimate of the mean; none likewise
 * @param normality Shapiro and Wilk's test of the logarithms, where it can be made
 * @param upper95 what 95 % lie below, with 95 % confidence; none where results that do not differ
 *     say nothing of how others scatter
 * @param upper70 the same with 70 % confidence
 * @param held what they say about a limit, if one was given
 */
public record Statistics(
    int results,
    int censored,
    Optional<LognormalSample> sample,
    OptionalDouble mean,
    OptionalDouble unbiasedMean,
    Optional<ShapiroWilk> normality,
    OptionalDouble upper95,
    OptionalDouble upper70,
    Optional<Held> held) {

  /**
   * Share of results below detection above which no spread is estimated: common practice, from
   * memory of Helsel 2012, Statistics for Censored Environmental Data.
   */
  public static final double MOST_BELOW = 0.8;

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
   * @param over the share of all that lies over it; none where {@code upper95} is none
   * @param verdict by the tests of EN 689
   */
  public record Held(double limit, Optional<Over> over, LimitVerdict verdict) {}

  /**
   * The share of all that lies over a limit.
   *
   * @param percent best estimate, %
   * @param low90 lower end of its 90 % confidence interval, %
   * @param high90 upper end of it, %
   * @param band 0 to 4, by what 95 % lie below
   */
  public record Over(double percent, double low90, double high90, int band) {
    static Over of(double limit, LognormalSample sample) {
      return new Over(
          100 * sample.shareOver(limit),
          100 * sample.shareOver(limit, 0.05),
          100 * sample.shareOver(limit, 0.95),
          ExposureBand.of(sample.p95(), limit));
    }
  }

  /**
   * Whether results say anything of a spread: two or more of a known figure, and among them two
   * that differ where any is below detection.
   */
  public static boolean enough(List<Result> results) {
    double[] told = values(results, false);
    boolean differ = Arrays.stream(told).distinct().count() > 1;
    return told.length > 1 && (differ || told.length == results.size());
  }

  private static boolean mostlyBelow(int below, int results) {
    return below > MOST_BELOW * results;
  }

  /** Whether so many are below detection that no spread is estimated. */
  public boolean mostlyBelow() {
    return mostlyBelow(censored, results);
  }

  private static boolean fits(List<Result> results) {
    return enough(results) && !mostlyBelow(values(results, true).length, results.size());
  }

  /**
   * The statistics of one result or more; what needs a fit is none where they are not {@link
   * #enough} or too many are below detection.
   *
   * @param limit above 0, in their unit
   */
  public static Statistics of(List<Result> results, OptionalDouble limit) {
    double[] told = values(results, false);
    double[] below = values(results, true);
    boolean whole = below.length == 0;
    Optional<LognormalSample> sample =
        Optional.of(results)
            .filter(Statistics::fits)
            .map(any -> whole ? LognormalSample.of(told) : CensoredSample.fit(told, below));
    Optional<LognormalSample> spread = sample.filter(LognormalSample::spreads);
    return new Statistics(
        results.size(),
        below.length,
        sample,
        optional(sample.filter(any -> whole).map(LognormalSample::mean)),
        optional(sample.filter(any -> whole).map(LognormalSample::unbiasedMean)),
        normality(told, whole),
        optional(spread.map(one -> one.upperToleranceLimit(0.95))),
        optional(spread.map(one -> one.upperToleranceLimit(0.70))),
        limit.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Held(
                    limit.getAsDouble(),
                    spread.map(one -> Over.of(limit.getAsDouble(), one)),
                    LimitVerdict.of(told, below, sample, limit.getAsDouble()))));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
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
