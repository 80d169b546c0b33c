package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Several plans, each for itself: what may be done instead of one another. */
public record Plans(List<PlanReport> all) {

  public Plans {
    all = List.copyOf(all);
  }

  /**
   * Their indices by the day's headline figure outside, the lowest first; empty where they are not
   * of one day of one person, and cannot be held against each other.
   */
  public List<Integer> ranked() {
    return all.stream().map(plan -> plan.day().date() + plan.day().person()).distinct().count() > 1
        ? List.of()
        : IntStream.range(0, all.size())
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> all.get(i).day().outside().estimate().central()))
            .toList();
  }
}
