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
 * helped, the control that leaves the mean of the week's days lowest when the model estimates them
 * again with it. To work whose dust no limit covers it says nothing: a lower figure is not enough;
 * nor does it to a week whose vapour comes nearer to a limit than its dust. Where such dust comes
 * before all other work there is no best change: it is to be dealt with first.
 *
 * @param job the job that would have been done with it
 * @param control the control
 * @param was the mean of the week's days outside the mask, mg/m³ inhalable
 * @param would what it would have been
 * @param together what the joint mean over 40 h would have been
 */
public record BestChange(Job job, Control control, double was, double would, Estimate together) {
  // Less than a tenth off is lost in the doubt about every figure and not worth a sentence.
  static final double WORTH_SAYING = 0.9;

  /** The best change of a week; empty where none would have taken off a tenth. */
  static Optional<BestChange> of(WeekReport week, List<DayReckoning> days) {
    if (Foremost.of(week.days()) == Foremost.VAPOUR || !week.uncoveredAhead().isEmpty()) {
      return Optional.empty();
    }
    return week.contributions().stream()
        .filter(contribution -> contribution.job().material().coveredByLimit())
        .flatMap(contribution -> best(contribution.job(), week, days).stream())
        .findFirst();
  }

  private static Optional<BestChange> best(Job job, WeekReport week, List<DayReckoning> days) {
    return days.get(0).shop().reference().controls().stream()
        .filter(control -> serves(control, job))
        .map(control -> with(control, job, week, days))
        .filter(change -> change.would <= WORTH_SAYING * change.was)
        .min(Comparator.comparingDouble(BestChange::would));
  }

  private static boolean serves(Control control, Job job) {
    return control.rowFor(job.operation().key()).isPresent();
  }

  private static BestChange with(
      Control control, Job job, WeekReport week, List<DayReckoning> days) {
    List<DayReckoning> with = days.stream().map(day -> with(control, job, day)).toList();
    return new BestChange(
        job,
        control,
        week.meanOfDays(),
        Week.meanOfDays(with),
        Week.outsideMean(with, Limit.Fraction.INHALABLE));
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
}
