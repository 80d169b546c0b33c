package motebook.report;

import java.util.Optional;
import motebook.desk.WeekReport.Contribution.Job;
import motebook.desk.Weeks;

/** What there is to say of weeks in sentences. */
public final class WeekWords {
  private static final double ABOUT_THE_SAME = 1.1;

  private WeekWords() {}

  /** What changed against the week before, in one sentence; empty unless both have work. */
  public static Optional<String> change(Weeks weeks) {
    return weeks.change().map(change -> sentence(change, weeks.last().person()));
  }

  private static String sentence(Weeks.Change change, String person) {
    double ratio = change.after() / change.before();
    if (ratio < ABOUT_THE_SAME && ratio > 1 / ABOUT_THE_SAME) {
      return "About the same as the week before.";
    }
    boolean more = ratio > 1;
    String amount = Figures.rough(Math.abs(change.after() - change.before())) + " mg/m³ ";
    return "About "
        + amount
        + (more ? "more" : "less")
        + " than the week before (about "
        + Figures.rough(change.before())
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
}
