package motebook.report;

import java.util.Map;
import motebook.desk.DueItem;
import motebook.desk.DueReport;
import motebook.reference.Caution;

/** What is due as JSON. */
public final class DueJson {
  private static final ActionText COMMANDS = new ActionText(Invocation.USUAL);

  private DueJson() {}

  /** The object of {@code due --json}. */
  public static Map<String, Object> of(DueReport report) {
    return Json.object(
        "date", report.today().toString(),
        "due", report.items().stream().map(DueJson::item).toList(),
        "cautions", report.cautions().stream().map(Caution::sentence).toList());
  }

  private static Map<String, Object> item(DueItem item) {
    return Json.object(
        "what", item.what(),
        "kind", item.kind().key(),
        "whose", item.whose(),
        "when", item.when().toString(),
        "state", item.state().key(),
        "working_days_left",
            item.workingDaysLeft().isPresent() ? item.workingDaysLeft().getAsDouble() : null,
        "why", item.why(),
        "settle", COMMANDS.command(item.settle()));
  }
}
