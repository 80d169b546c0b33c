package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Several plans, each for itself: what may be done instead of one another. */
public record Plans(List<PlanReport> all) {

  public Plans {
    all = List.copyOf(all);
  }

  /** What they are held against each other by; empty where it is not the same for all. */
  public Optional<Foremost> foremost() {
    List<Foremost> each = all.stream().map(PlanReport::foremost).distinct().toList();
    return each.size() == 1 ? Optional.of(each.get(0)) : Optional.empty();
  }

  /**
   * The figure by which one is held against the others: of what is foremost in all, or else how
   * near its day comes to the limit of what is nearer.
   */
  public double figure(int index) {
    DayReport day = all.get(index).day();
    return foremost().map(one -> one.figure(day)).orElseGet(() -> Foremost.nearness(day));
  }

  /** Whether the dust of one is such as no limit covers: less of it is not what counts. */
  public boolean uncovered() {
    return all.stream().anyMatch(plan -> plan.reach().state() == LimitReach.State.UNCOVERED);
  }

  /**
   * Their indices by that figure, the lowest first; empty where they are not of one day of one
   * person, or where no limit covers the dust of one, and they cannot be held against each other.
   */
  public List<Integer> ranked() {
    return uncovered()
            || all.stream().map(plan -> plan.day().date() + plan.day().person()).distinct().count()
                > 1
        ? List.of()
        : IntStream.range(0, all.size())
            .boxed()
            .sorted(Comparator.comparingDouble(this::figure))
            .toList();
  }
}
