package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.desk.WeekReport.Contribution.Job;
import motebook.model.Session;
import motebook.model.Surroundings.Indoors;
import motebook.model.Work;
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
  private static final double WORTH_SAYING = 0.9;

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
    return control.actsOn() == Control.ActsOn.ROOM
        || control.rowFor(job.operation().key()).isPresent();
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
                    Job.of(source).equals(job) && usable(control, source, day)
                        ? with(control, source.session())
                        : source.session())
            .toList();
    return new DayReckoning(day.date(), day.person(), sessions, day.shop());
  }

  // Outdoors there is no room to clean, and a cleaner or fan whose flow nobody gave cannot count.
  private static boolean usable(Control control, Source source, DayReckoning day) {
    if (source.uses(control.key())) {
      return false;
    }
    if (control.actsOn() == Control.ActsOn.SOURCE) {
      return true;
    }
    return day.shop().place(source.session().work().place()).surroundings() instanceof Indoors room
        && switch (control.key()) {
          case Control.AIR_CLEANER -> room.cleanerFlowM3PerMin().isPresent();
          case Control.WINDOW_FAN -> room.fanFlowM3PerMin().isPresent();
          default -> true;
        };
  }

  private static Session with(Control control, Session session) {
    Work work = session.work();
    List<String> controls = new ArrayList<>(work.controls());
    controls.add(control.key());
    return new Session(
        session.id(),
        new Work(
            work.person(),
            work.place(),
            work.date(),
            work.start(),
            work.minutes(),
            work.operation(),
            work.material(),
            controls,
            work.mask(),
            work.note()));
  }

  /** What the change would have taken off the week's mean, 0 to 1. */
  public double savedShare() {
    return 1 - would.central() / was.central();
  }
}
