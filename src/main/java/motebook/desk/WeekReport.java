package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Function;
import motebook.journal.Flawed;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.science.Estimate;

/**
 * The answer to "what did this person breathe in this week".
 *
 * @param monday the first day
 * @param person whose
 * @param days the seven days, Monday first
 * @param outsideMean mean over 40 h outside the mask, mg/m³ inhalable, of all days' sources
 *     together: its median lies a little higher than the mean of the days
 * @param insideMean the same inside it
 * @param contributions whose and what work the dust outside came from, most first; add to 100 %
 */
public record WeekReport(
    LocalDate monday,
    String person,
    List<DayReport> days,
    Estimate outsideMean,
    Estimate insideMean,
    List<Contribution> contributions) {

  /**
   * One kind of work and its part of the week's dose.
   *
   * @param job who did what to what
   * @param sharePercent of the expected dose outside
   */
  public record Contribution(Job job, double sharePercent) {
    /**
     * A kind of work of one person.
     *
     * @param person who did it
     * @param operation what was done
     * @param material to what
     */
    public record Job(String person, Operation operation, Material material) {
      static Job of(Source source) {
        return new Job(source.session().work().person(), source.operation(), source.material());
      }
    }
  }

  /** How many of the shop's own samples the estimates learned from. */
  public int learnedFrom() {
    return days.stream().mapToInt(DayReport::learnedFrom).max().orElse(0);
  }

  /** Sessions of the week that cannot be gone by and are in no figure. */
  public List<Flawed> leftOut() {
    return days.stream().flatMap(day -> day.leftOut().stream()).toList();
  }

  /** Minutes of the person's sessions. */
  public int minutesLogged() {
    return days.stream().mapToInt(DayReport::minutesLogged).sum();
  }

  /**
   * The mean of the days outside the mask, mg/m³: the sum of their best estimates over 40 h. For
   * the trend; no limit is held against it.
   */
  public double meanOfDays() {
    return meanOfDays(DayReport::outside);
  }

  /** The same inside the mask. */
  public double meanOfDaysInside() {
    return meanOfDays(DayReport::inside);
  }

  private double meanOfDays(Function<DayReport, DayReport.Twa> side) {
    return Week.meanOfDays(days.stream().mapToDouble(day -> side.apply(day).estimate().central()));
  }

  /** The shifts over midnight that begin or end in the week, each once. */
  public List<NightShift> nights() {
    return days.stream().flatMap(day -> day.limits().nights().stream()).distinct().toList();
  }

  /** The days of more than 8 h, against the limit lowered for them. */
  public List<LongDay> longDays() {
    return days.stream().flatMap(day -> day.limits().longDay().stream()).toList();
  }

  /** The day with the highest headline figure outside. */
  public DayReport worstDay() {
    return days.stream()
        .filter(day -> day.minutesLogged() > 0)
        .max(Comparator.comparingDouble(day -> day.outside().estimate().central()))
        .orElse(days.get(0));
  }

  /** Days whose headline figure lies above their limit. */
  public long daysOverLimit() {
    return days.stream()
        .filter(day -> day.limit().map(held -> held.ratio() > 1).orElse(false))
        .count();
  }

  /** Days whose best estimate lies above the advisory limit beside a legal one; empty without. */
  public OptionalLong daysOverAdvisory() {
    List<HeldLimit> held = days.stream().flatMap(day -> day.limits().advisory().stream()).toList();
    return held.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of(held.stream().filter(limit -> limit.ratio() > 1).count());
  }

  /**
   * What gave off the dust that no limit covers, where all of it together is more than the worst
   * other work gave; empty where it is less, and where there is no other dust to put behind it.
   */
  public List<Material> uncoveredAhead() {
    List<Contribution> uncovered =
        contributions.stream().filter(one -> !one.job().material().coveredByLimit()).toList();
    double worstOther =
        contributions.stream()
            .filter(one -> one.job().material().coveredByLimit())
            .mapToDouble(Contribution::sharePercent)
            .max()
            .orElse(0);
    double together = uncovered.stream().mapToDouble(Contribution::sharePercent).sum();
    return worstOther > 0 && together > worstOther
        ? uncovered.stream().map(one -> one.job().material()).distinct().toList()
        : List.of();
  }

  /** The parts of the dose by operation, most first, in percent. */
  public List<Map.Entry<Operation, Double>> byOperation() {
    return summed(job -> job.operation());
  }

  /** The parts of the dose by material, most first, in percent. */
  public List<Map.Entry<Material, Double>> byMaterial() {
    return summed(job -> job.material());
  }

  private <K> List<Map.Entry<K, Double>> summed(Function<Contribution.Job, K> part) {
    Map<K, Double> sums = new LinkedHashMap<>();
    contributions.forEach(c -> sums.merge(part.apply(c.job()), c.sharePercent(), Double::sum));
    return sums.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .toList();
  }
}
