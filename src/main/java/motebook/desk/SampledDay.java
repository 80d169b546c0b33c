package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.science.Dose;

/**
 * The samples of one person on one day, brought to the 8-hour mean of the day.
 *
 * @param date the day
 * @param minutes sampled
 * @param measuredMgPerM3 the mean over the sampled time
 * @param restMgPerM3 what the rest of the day adds to the 8-hour mean by the estimate
 * @param mgPerM3 the 8-hour mean; the mean over the sampled time where that stands for the shift
 * @param below whether all that was measured is below detection, so that the figure is an upper
 *     bound
 * @param standsForShift whether the sampled time stands for the whole shift
 */
public record SampledDay(
    LocalDate date,
    int minutes,
    double measuredMgPerM3,
    double restMgPerM3,
    double mgPerM3,
    boolean below,
    boolean standsForShift) {
  private static final int DAY = 24 * 60;

  /**
   * Brings samples to the mean of their day.
   *
   * @param samples personal ones of the day in one fraction, one or more
   * @param day by what was learned
   */
  static SampledDay of(List<Sample> samples, Limit.Fraction fraction, DayReckoning day) {
    List<Sample> forShift = samples.stream().filter(s -> s.use().wholeShift()).toList();
    List<Sample> used = forShift.isEmpty() ? samples : forShift;
    double weighed = 0;
    int minutes = 0;
    for (Sample sample : used) {
      weighed += sample.minutes() * Measured.of(sample).mgPerM3();
      minutes += sample.minutes();
    }
    double measured = weighed / minutes;
    boolean below = used.stream().allMatch(sample -> Measured.of(sample).below());
    if (!forShift.isEmpty()) {
      return new SampledDay(used.get(0).date(), minutes, measured, 0, measured, below, true);
    }
    List<int[]> rest = rest(used);
    int sampled = DAY - rest.stream().mapToInt(stretch -> stretch[1] - stretch[0]).sum();
    double others = day.outside(fraction, rest).central();
    return new SampledDay(
        used.get(0).date(),
        sampled,
        measured,
        others,
        measured * sampled / Dose.EIGHT_HOURS + others,
        below,
        false);
  }

  /** The stretches of a day in which nothing was sampled. */
  private static List<int[]> rest(List<Sample> samples) {
    List<int[]> rest = new ArrayList<>();
    int end = 0;
    for (Sample sample :
        samples.stream().sorted(Comparator.comparingInt(Sample::fromMinute)).toList()) {
      if (sample.fromMinute() > end) {
        rest.add(new int[] {end, sample.fromMinute()});
      }
      end = Math.max(end, sample.toMinute());
    }
    if (end < DAY) {
      rest.add(new int[] {end, DAY});
    }
    return rest;
  }
}
