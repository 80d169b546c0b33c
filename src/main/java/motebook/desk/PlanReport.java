package motebook.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
 * @param minutesToLimit minutes of such work after which the headline figure outside reaches the
 *     limit, 0 where the day has without it; empty where it does not on that day, or no limit
 *     applies
 * @param helps what would take a tenth or more off the day's headline figure outside, of dust or of
 *     vapour, whichever is {@link #foremost}; the most first
 */
public record PlanReport(
    Work work,
    List<Session> replaced,
    DayReport before,
    DayReport day,
    OptionalInt minutesToLimit,
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

  /** The work in its day. */
  public SessionLine line() {
    return day.sessions().stream()
        .filter(line -> line.source().session().id() == NUMBER)
        .findFirst()
        .orElseThrow();
  }

  /** What it adds to the typical 8-hour TWA outside, mg/m³; less than 0 where it takes off. */
  public double addedTypical() {
    return day.outside().estimate().typical() - before.outside().estimate().typical();
  }
}
