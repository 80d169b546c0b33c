package motebook.desk;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import motebook.desk.WeekReport.Contribution;
import motebook.model.Session;
import motebook.reference.Limit;
import motebook.science.Dose;
import motebook.science.Estimate;
import motebook.science.LognormalSum;

/** The question "what did this person breathe in this week". */
public final class Week {
  private static final int DAYS = 7;

  private Week() {}

  /** The Monday of the week that a day lies in. */
  public static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /**
   * Answers from the reckonings of the seven days.
   *
   * @param monday the first day
   * @param reckon reckons a day
   * @param sessions everybody's sessions of a date, for work over midnight
   */
  public static WeekReport report(
      LocalDate monday,
      String person,
      Function<LocalDate, DayReckoning> reckon,
      Function<LocalDate, List<Session>> sessions) {
    return report(monday, person, days(monday, reckon), sessions);
  }

  /** The reckonings of the seven days from a Monday. */
  static List<DayReckoning> days(LocalDate monday, Function<LocalDate, DayReckoning> reckon) {
    return IntStream.range(0, DAYS).mapToObj(monday::plusDays).map(reckon).toList();
  }

  /** Answers from seven days already reckoned. */
  static WeekReport report(
      LocalDate monday,
      String person,
      List<DayReckoning> days,
      Function<LocalDate, List<Session>> sessions) {
    return new WeekReport(
        monday,
        person,
        days.stream().map(day -> Day.report(day, sessions)).toList(),
        outsideMean(days, Limit.Fraction.INHALABLE),
        mean(days, day -> day.insideTerms(Limit.Fraction.INHALABLE)),
        contributions(days));
  }

  /** The mean of some days outside the mask, mg/m³. */
  static double meanOfDays(List<DayReckoning> days) {
    return meanOfDays(
        days.stream().mapToDouble(day -> day.outside(Limit.Fraction.INHALABLE).central()));
  }

  /** The mean of some days, mg/m³: the sum of their best estimates, each over 8 h, over 40 h. */
  static double meanOfDays(DoubleStream central) {
    return central.sum() * Dose.EIGHT_HOURS / Dose.FORTY_HOURS;
  }

  /** The mean over 40 h outside the mask, mg/m³, in one fraction. */
  static Estimate outsideMean(List<DayReckoning> days, Limit.Fraction fraction) {
    return mean(days, day -> day.outsideTerms(fraction));
  }

  private static Estimate mean(
      List<DayReckoning> days, Function<DayReckoning, List<LognormalSum.Term>> terms) {
    List<LognormalSum.Term> all = days.stream().map(terms).flatMap(List::stream).toList();
    return LognormalSum.of(all).times(Dose.EIGHT_HOURS / Dose.FORTY_HOURS);
  }

  private static List<Contribution> contributions(List<DayReckoning> days) {
    Map<Contribution.Job, Double> byJob = new LinkedHashMap<>();
    for (DayReckoning day : days) {
      for (Source source : day.sources()) {
        byJob.merge(Contribution.Job.of(source), day.expected(source), Double::sum);
      }
    }
    double total = byJob.values().stream().mapToDouble(Double::doubleValue).sum();
    List<Contribution> sorted = new ArrayList<>();
    byJob.forEach(
        (job, part) -> {
          if (part > 0) {
            sorted.add(new Contribution(job, 100 * part / total));
          }
        });
    sorted.sort(Comparator.comparingDouble(Contribution::sharePercent).reversed());
    return sorted;
  }
}
