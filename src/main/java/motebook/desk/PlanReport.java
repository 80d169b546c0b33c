package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.desk.DayReport.SessionLine;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Control;

/**
 * What some work would make of its day; none of it is in the book.
 *
 * @param work the work
 * @param replaced the person's sessions in whose place it would come: those that it shares a minute
 *     with
 * @param before the day as the book has it
 * @param day the day with the work in it, as the session with the number {@link #NUMBER}
 * @param reach when the day is over its limit if such work goes on
 * @param helps what would take a tenth or more off the day's headline figure outside, of dust or of
 *     vapour, whichever is {@link #foremost}; the most first. None after which work must end all
 *     the same
 */
public record PlanReport(
    Work work,
    List<Session> replaced,
    DayReport before,
    DayReport day,
    LimitReach reach,
    List<Help> helps) {

  /** What stands for the number of a session that the book does not hold. */
  public static final long NUMBER = -1;

  public PlanReport {
    replaced = List.copyOf(replaced);
    helps = List.copyOf(helps);
  }

  /**
   * The same work done in another way.
   *
   * @param work the work so
   * @param control the control that it would have more; empty where it would be done outdoors
   * @param day the day then
   */
  public record Help(Work work, Optional<Control> control, DayReport day) {}

  /** What the day comes nearer to its limit by with the work in it. */
  public Foremost foremost() {
    return Foremost.of(day);
  }

  /** Whether work must end and nothing that is offered would change it. */
  public boolean tooMuch() {
    return helps.isEmpty() && day.vapour().filter(VapourReport::mustEnd).isPresent();
  }

  /** The work in its day. */
  public SessionLine line() {
    return day.sessions().stream()
        .filter(line -> line.source().session().id() == NUMBER)
        .findFirst()
        .orElseThrow();
  }

  /**
   * What it adds to the 8-hour TWA outside, mg/m³: the best estimate of the day with it less that
   * without; below 0 where it takes off.
   */
  public double added() {
    return day.outside().estimate().central() - before.outside().estimate().central();
  }

  /** What it adds to the typical 8-hour TWA outside, mg/m³; less than 0 where it takes off. */
  public double addedTypical() {
    return day.outside().estimate().typical() - before.outside().estimate().typical();
  }
}
