package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import motebook.reference.Caution;

/**
 * The answer to "what is due".
 *
 * @param today the day it was asked on
 * @param items most urgent first
 * @param cautions raised by what is due
 */
public record DueReport(LocalDate today, List<DueItem> items, List<Caution> cautions) {
  public DueReport {
    items = List.copyOf(items);
    cautions = List.copyOf(cautions);
  }

  DueReport only(Predicate<DueItem> which) {
    return new DueReport(today, items.stream().filter(which).toList(), cautions);
  }

  /** Whether anything is due or overdue. */
  public boolean pressing() {
    return items.stream().anyMatch(DueItem::pressing);
  }
}
