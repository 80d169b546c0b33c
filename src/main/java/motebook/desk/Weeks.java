package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.desk.WeekReport.Contribution.Job;

/**
 * Some weeks of one person, one after another.
 *
 * @param weeks oldest first, at least one
 */
public record Weeks(List<WeekReport> weeks) {
  public Weeks {
    weeks = List.copyOf(weeks);
    if (weeks.isEmpty()) {
      throw new IllegalArgumentException("no week at all");
    }
  }

  /** The newest of them. */
  public WeekReport last() {
    return weeks.get(weeks.size() - 1);
  }

  /**
   * What changed from the week before the last to the last; empty unless work was logged in both.
   */
  public Optional<Change> change() {
    if (weeks.size() < 2) {
      return Optional.empty();
    }
    WeekReport before = weeks.get(weeks.size() - 2);
    boolean both = before.minutesLogged() > 0 && last().minutesLogged() > 0;
    return both ? Optional.of(Change.between(before, last())) : Optional.empty();
  }

  /**
   * The change of the mean of the days from one week to the next.
   *
   * @param before the mean of the earlier week's days outside, mg/m³
   * @param after that of the later week, mg/m³
   * @param job the work that moved it most in the direction in which it moved, if any did
   * @param mgPerM3 what that work put in or took out, mg/m³
   */
  public record Change(double before, double after, Optional<Job> job, double mgPerM3) {
    static Change between(WeekReport before, WeekReport after) {
      double was = before.meanOfDays();
      double is = after.meanOfDays();
      Map<Job, Double> moved = new HashMap<>();
      parts(after).forEach((job, part) -> moved.merge(job, part, Double::sum));
      parts(before).forEach((job, part) -> moved.merge(job, -part, Double::sum));
      double sign = is >= was ? 1 : -1;
      Optional<Map.Entry<Job, Double>> most =
          moved.entrySet().stream()
              .filter(entry -> sign * entry.getValue() > 0)
              .max(Comparator.comparingDouble(entry -> sign * entry.getValue()));
      return new Change(
          was, is, most.map(Map.Entry::getKey), most.map(Map.Entry::getValue).orElse(0.0));
    }

    // A job's part of the headline figure, so that the parts add up to it.
    private static Map<Job, Double> parts(WeekReport week) {
      Map<Job, Double> parts = new HashMap<>();
      double mean = week.meanOfDays();
      week.contributions().forEach(c -> parts.put(c.job(), mean * c.sharePercent() / 100));
      return parts;
    }
  }

  /** The first day of the newest of them. */
  public LocalDate monday() {
    return last().monday();
  }
}
