package motebook.report.sheet;

import java.util.OptionalDouble;
import motebook.desk.DayReport;

/** Where a limit stands on a scale of inhalable dust. */
final class InhalableLimit {
  private InhalableLimit() {}

  /**
   * The inhalable concentration at which a day would have met its limit, mg/m³: the limit itself
   * where it counts inhalable dust, else by the proportion of the two in the day's own dust.
   */
  static OptionalDouble of(DayReport day) {
    double mean = day.outside().estimate().central();
    return day.limit().stream()
        .mapToDouble(held -> held.ratio() == 0 ? held.limit().mgPerM3() : mean / held.ratio())
        .findFirst();
  }
}
