package motebook.report;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.desk.BestChange;
import motebook.desk.DayReport;
import motebook.desk.HeldLimit;
import motebook.desk.LongDay;
import motebook.desk.Trend;
import motebook.desk.Uncovered;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution.Job;
import motebook.desk.WeekReview;
import motebook.desk.WeekVapour;
import motebook.desk.Weeks;
import motebook.model.Figures;
import motebook.reference.Material;

/** What there is to say of weeks in sentences. */
public final class WeekWords {
  private static final double ABOUT_THE_SAME = 1.1;

  private WeekWords() {}

  /** What changed against the week before, in one sentence; empty unless both have work. */
  public static Optional<String> change(Weeks weeks) {
    return weeks.change().map(change -> change(change, weeks.last().person()));
  }

  /** What changed against the week before, in one sentence. */
  public static String change(Weeks.Change change, String person) {
    double ratio = change.after() / change.before();
    if (ratio < ABOUT_THE_SAME && ratio > 1 / ABOUT_THE_SAME) {
      return "About the same as the week before.";
    }
    boolean more = ratio > 1;
    String amount = Figures.rounded(Math.abs(change.after() - change.before())) + " mg/m³ ";
    return "About "
        + amount
        + (more ? "more" : "less")
        + " than the week before ("
        + Figures.about(change.before())
        + ")"
        + change
            .job()
            .map(job -> (more ? ": above all more " : ": above all less ") + said(job, person))
            .orElse("")
        + ".";
  }

  /** A kind of work: {@code Ana's orbital sanding of oak}. */
  public static String said(Job job, String person) {
    String whose = job.person().equals(person) ? "" : job.person() + "'s ";
    return whose + job.operation().name() + " of " + Wording.material(job.material());
  }

  /** A trend: {@code falling, about 0.1 mg/m³ a week}. */
  public static String trend(Trend trend) {
    int worked = trend.points().size();
    return trend
        .found()
        .map(found -> found(found, worked))
        .orElse("too few weeks with work to tell (" + worked + " of the 4 that it takes)");
  }

  private static String found(Trend.Found found, int worked) {
    if (found.direction() == 0) {
      return "no clear trend (" + worked + " weeks with work)";
    }
    double low = found.direction() * found.slope().low90();
    double high = found.direction() * found.slope().high90();
    return (found.direction() < 0 ? "falling" : "rising")
        + ", "
        + Figures.about(Math.abs(found.slope().perStep()))
        + " mg/m³ a week (90 % range "
        + Figures.range(Math.min(low, high), Math.max(low, high))
        + "; "
        + worked
        + " weeks with work)";
  }

  /**
   * What would have helped most, in one sentence: the best change, or what to do about dust that no
   * limit covers where that comes first.
   */
  public static Optional<String> help(WeekReview review) {
    List<Material> uncovered = review.week().uncoveredAhead();
    return uncovered.isEmpty()
        ? review.best().map(best -> best(best, review.week().person()))
        : Optional.of(
            "First the "
                + LimitText.names(uncovered)
                + ", whose dust no limit here covers. "
                + LimitText.instead(uncovered).get(0));
  }

  /** The one change that would have helped most, in one sentence. */
  public static String best(BestChange best, String person) {
    return "With "
        + Wording.offered(best.control(), best.job().operation())
        + " at all "
        + said(best.job(), person)
        + " the mean of the week's days would have been "
        + Figures.about(best.would())
        + " mg/m³ instead of "
        + Figures.rounded(best.was())
        + ": of the controls that serve the worst job, the one that helps most.";
  }

  /** {@code Monday: outside about 3.1 mg/m³ (90 % range …), about 3.1 times the limit}. */
  public static String worstDay(WeekReport week) {
    DayReport worst = week.worstDay();
    return Wording.weekday(worst.date())
        + ": outside "
        + Wording.estimate(worst.outside().estimate())
        + toLimit(worst)
        + worst.limits().advisory().map(held -> ", " + LimitText.advisory(held)).orElse("")
        + worseNight(week, worst.limit().map(HeldLimit::ratio).orElse(0.0));
  }

  private static String worseNight(WeekReport week, double ratioOfDay) {
    return week.nights().stream()
        .filter(night -> night.limit().map(HeldLimit::ratio).orElse(0.0) > ratioOfDay)
        .max(Comparator.comparingDouble(night -> night.limit().orElseThrow().ratio()))
        .map(
            night ->
                "; the night from "
                    + Wording.weekday(night.evening())
                    + " as one shift "
                    + Wording.ratio(night.limit().orElseThrow()))
        .orElse("");
  }

  /** A day of more than 8 h against its lowered limit. */
  public static String longDay(LongDay day) {
    return Wording.weekday(day.date()) + ", " + LimitText.longDay(day);
  }

  /** How a day stands to its limit, to follow its figure; nothing where no limit applies. */
  static String toLimit(DayReport day) {
    return day.limit().map(held -> ", " + Wording.ratio(held)).orElse("")
        + day.uncovered()
            .map(dust -> dust.alone() ? ", no limit covers it" : ", some of it no limit covers")
            .orElse("");
  }

  /**
   * {@code 2 days (best estimate, outside the mask)}, and how many days no limit judges; those
   * alone where no limit judges any.
   */
  public static String daysOver(WeekReport week) {
    List<DayReport> days = week.days();
    long alone =
        days.stream().flatMap(day -> day.uncovered().stream()).filter(Uncovered::alone).count();
    long mixed = days.stream().filter(day -> day.uncovered().isPresent()).count() - alone;
    String notJudged = "not judged: " + days(alone) + " (dust that no limit covers)";
    if (alone > 0 && days.stream().noneMatch(day -> day.limit().isPresent())) {
      return notJudged;
    }
    return judged(week)
        + (alone == 0 ? "" : "; " + notJudged)
        + (mixed == 0 ? "" : "; " + days(mixed) + " with some dust that no limit covers");
  }

  private static String judged(WeekReport week) {
    long days = week.daysOverLimit();
    return (days == 0 ? "no day" : days(days))
        + WeekVapour.of(week).map(WeekWords::vapourOver).orElse("")
        + " (best estimate, outside the mask)"
        + week.daysOverAdvisory().stream()
            .mapToObj(over -> "; over the advisory limit " + (over == 0 ? "no day" : days(over)))
            .collect(Collectors.joining());
  }

  private static String vapourOver(WeekVapour vapour) {
    return vapour.daysOver() + vapour.daysOverShortTerm() == 0
        ? ""
        : " by dust, "
            + (vapour.daysOver() == 0 ? "no day" : days(vapour.daysOver()))
            + " by vapour over 8 h, "
            + (vapour.daysOverShortTerm() == 0 ? "no day" : days(vapour.daysOverShortTerm()))
            + " by vapour over 15 min";
  }

  private static String days(long days) {
    return days == 1 ? "1 day" : days + " days";
  }

  /** {@code of the days over 40 h: outside about 0.63 mg/m³, inside the same; for the trend}. */
  public static String meanOfDays(WeekReport week) {
    boolean masked = week.days().stream().anyMatch(Wording::masked);
    return "of the days over 40 h: outside "
        + Figures.about(week.meanOfDays())
        + " mg/m³"
        + (masked ? ", inside " + Figures.about(week.meanOfDaysInside()) : "")
        + ", for the trend";
  }

  /** What to do about the dust of the week that no limit covers; empty where there is none. */
  public static Optional<String> uncovered(WeekReport week) {
    List<DayReport> days = week.days().stream().filter(day -> day.uncovered().isPresent()).toList();
    Set<Material> materials = new LinkedHashSet<>();
    days.forEach(day -> materials.addAll(day.uncovered().orElseThrow().materials()));
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            days.stream().map(day -> Wording.weekday(day.date())).collect(Collectors.joining(", "))
                + ": no limit here covers the dust of "
                + LimitText.names(materials)
                + ". "
                + String.join(" ", LimitText.instead(materials)));
  }
}
