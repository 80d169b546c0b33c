package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.desk.WeekReport.Contribution.Job;
import motebook.model.Session;
import motebook.reference.Control;
import motebook.reference.Limit;
import motebook.science.Estimate;

/**
 * The one change that would have helped most: of the worst job that a control could still have
 * helped, the control that leaves the week's mean lowest when the model reckons the week anew with
 * it.
 *
 * @param job the job that would have been done with it
 * @param control the control
 * @param was the week's mean over 40 h outside the mask, mg/m³ inhalable
 * @param would what it would have been
 */
public record BestChange(Job job, Control control, Estimate was, Estimate would) {
  // Less than a tenth off is lost in the doubt about every figure and not worth a sentence.
  static final double WORTH_SAYING = 0.9;

  /** The best change of a week; empty where none would have taken off a tenth. */
  static Optional<BestChange> of(WeekReport week, List<DayReckoning> days) {
    return week.contributions().stream()
        .flatMap(contribution -> best(contribution.job(), week, days).stream())
        .findFirst();
  }

  private static Optional<BestChange> best(Job job, WeekReport week, List<DayReckoning> days) {
    return days.get(0).shop().reference().controls().stream()
        .filter(control -> serves(control, job))
        .map(control -> new BestChange(job, control, week.outsideMean(), with(control, job, days)))
        .filter(change -> change.would.central() <= WORTH_SAYING * change.was.central())
        .min(Comparator.comparingDouble(change -> change.would.central()));
  }

  private static boolean serves(Control control, Job job) {
    return control.rowFor(job.operation().key()).isPresent();
  }

  private static Estimate with(Control control, Job job, List<DayReckoning> days) {
    return Week.outsideMean(
        days.stream().map(day -> with(control, job, day)).toList(), Limit.Fraction.INHALABLE);
  }

  private static DayReckoning with(Control control, Job job, DayReckoning day) {
    List<Session> sessions =
        day.sources().stream()
            .map(
                source ->
                    Job.of(source).equals(job)
                            && OneMore.usable(control, source.session().work(), day.shop())
                        ? OneMore.with(control, source.session())
                        : source.session())
            .toList();
    return new DayReckoning(day.date(), day.person(), sessions, day.shop());
  }

  /** What the change would have taken off the week's mean, 0 to 1. */
  public double savedShare() {
    return 1 - would.central() / was.central();
  }
}
