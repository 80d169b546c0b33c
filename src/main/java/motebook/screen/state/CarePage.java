package motebook.screen.state;

import java.util.List;
import motebook.desk.DueReport;

/**
 * Masks and filters as they stand.
 *
 * @param due what is due, most urgent first
 * @param rows what each of the pages lists
 */
public record CarePage(DueReport due, List<List<CareRow>> rows) {
  public CarePage {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** How many things are due or overdue. */
  public long pressing() {
    return due.items().stream().filter(item -> item.pressing()).count();
  }
}
