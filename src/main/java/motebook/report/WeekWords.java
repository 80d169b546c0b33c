package motebook.report;

import java.util.Optional;
import motebook.desk.BestChange;
import motebook.desk.LongDay;
import motebook.desk.Trend;
import motebook.desk.WeekLimit;
import motebook.desk.WeekReport.Contribution.Job;
import motebook.desk.Weeks;
import motebook.model.Figures;

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

  /** The one change that would have helped most, in one sentence. */
  public static String best(BestChange best, String person) {
    return "With "
        + best.control().spoken()
        + " at all "
        + said(best.job(), person)
        + " the week would have come to "
        + Figures.about(best.would().central())
        + " mg/m³ instead of "
        + Figures.rounded(best.was().central())
        + ": of the controls that serve the worst job, the one that helps most.";
  }

  /** How the week's mean stands to its limit: {@code about 0.69 times 1 mg/m³ inhalable dust …}. */
  public static String limit(WeekLimit held) {
    String plain = Wording.limit(held.limit());
    return Figures.about(held.ratio())
        + " times "
        + (held.longWeek()
            ? "the "
                + Figures.rounded(held.adjustedMgPerM3())
                + " mg/m³ that are left of "
                + plain
                + " for a week of "
                + Figures.rounded(held.hours())
                + " h (Brief and Scala)"
            : plain);
  }

  /** A day of more than 8 h against its lowered limit. */
  public static String longDay(LongDay day) {
    return Wording.weekday(day.date())
        + ", "
        + Figures.rounded(day.hours())
        + " h: a limit of "
        + Figures.plain(day.held().limit().mgPerM3())
        + " mg/m³ comes down to "
        + Figures.rounded(day.adjustedMgPerM3())
        + " (Brief and Scala), "
        + (day.over() ? "and the day is over it" : "and the day is under it");
  }
}
