package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import motebook.desk.DayReport.OtherSource;
import motebook.desk.DayReport.SessionLine;
import motebook.model.Session;
import motebook.reference.Limit;

/** The question "what did this person breathe on this day". */
public final class Day {
  private Day() {}

  /** Answers from everybody's sessions of that day; work over midnight is not looked for. */
  public static DayReport report(LocalDate date, String person, List<Session> sessions, Shop shop) {
    return report(new DayReckoning(date, person, sessions, shop));
  }

  /** Answers from a day already estimated; work over midnight is not looked for. */
  static DayReport report(DayReckoning day) {
    return report(day, date -> List.of());
  }

  /**
   * Answers from a day already estimated.
   *
   * @param sessions everybody's sessions of a date: the dates beside the day are asked for where
   *     the person's work may go on over midnight
   */
  public static DayReport report(DayReckoning day, Function<LocalDate, List<Session>> sessions) {
    return report(day, Fumes.of(day).map(Fumes::report), sessions);
  }

  private static DayReport report(
      DayReckoning day,
      Optional<VapourReport> vapour,
      Function<LocalDate, List<Session>> sessions) {
    DayEstimate estimate = DayEstimate.of(day);
    double expected = day.expectedTotal();
    List<Source> own = own(day);
    return new DayReport(
        day.date(),
        day.person(),
        day.shop().settings().limitSet(),
        DayLimits.of(day, estimate.limit(), sessions),
        own.stream().map(source -> line(source, day, expected)).toList(),
        estimate.outside(),
        estimate.inside(),
        day.outside(Limit.Fraction.RESPIRABLE).typical(),
        others(day, expected),
        day.leftOut(),
        own.stream().mapToInt(source -> source.session().work().minutes()).sum(),
        day.minutesBetween(),
        Remarks.of(day, estimate.limit()),
        DayCautions.of(day),
        vapour,
        day.shop().learned().samples(),
        day.published().map(unlearned -> unlearned.outside(Limit.Fraction.INHALABLE)));
  }

  private static List<Source> own(DayReckoning day) {
    return day.sources().stream()
        .filter(day::isOwn)
        .sorted(Comparator.comparingInt(Source::from))
        .toList();
  }

  private static SessionLine line(Source source, DayReckoning day, double expected) {
    return new SessionLine(
        source,
        day.credit(source),
        day.meanOutside(source),
        percent(day.expected(source), expected));
  }

  private static List<OtherSource> others(DayReckoning day, double expected) {
    return day.sources().stream()
        .filter(source -> !day.isOwn(source) && day.reached(source))
        .map(source -> new OtherSource(source, percent(day.expected(source), expected)))
        .toList();
  }

  private static double percent(double part, double whole) {
    return whole == 0 ? 0 : 100 * part / whole;
  }
}
