package motebook.screen.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.Plans;

/**
 * The page of plans.
 *
 * @param lines what may be done instead of one another, each as it was said
 * @param plans what each would bring, if it was reckoned already
 * @param chosen the one that is pointed at
 * @param top the first row that is shown of what is told of it
 */
public record PlanSheet(List<PlanLine> lines, Optional<Plans> plans, int chosen, int top) {
  static final PlanSheet NOTHING = new PlanSheet(List.of(), Optional.empty(), 0, 0);

  public PlanSheet {
    lines = List.copyOf(lines);
  }

  /**
   * A line of a plan.
   *
   * @param typed as it was typed: without a time it begins when it is reckoned
   * @param said what may be done, in full
   * @param again the same without when and by whom: a line that logs it, ending now
   */
  public record PlanLine(String typed, String said, String again) {}

  /** What is said, and one more. */
  List<String> and(String line) {
    List<String> all = new ArrayList<>(typed());
    all.add(line);
    return all;
  }

  /** All but the one that is pointed at. */
  List<String> others() {
    List<String> all = new ArrayList<>(typed());
    all.remove(chosen);
    return all;
  }

  List<String> typed() {
    return lines.stream().map(PlanLine::typed).toList();
  }

  /** Points at the one that was said last where there are more than before. */
  PlanSheet with(List<PlanLine> fresh, Plans reckoned) {
    int last = fresh.size() - 1;
    int point = fresh.size() > lines.size() ? last : Math.min(chosen, last);
    return new PlanSheet(fresh, Optional.of(reckoned), Math.max(0, point), 0);
  }

  PlanSheet pointing(int index) {
    return new PlanSheet(lines, plans, Math.max(0, Math.min(index, lines.size() - 1)), 0);
  }

  PlanSheet from(int row) {
    return new PlanSheet(lines, plans, chosen, Math.max(0, row));
  }

  Optional<PlanLine> pointedAt() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(chosen));
  }
}
