package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.desk.DueItem;
import motebook.desk.DueItem.State;
import motebook.desk.DueReport;

/** What is due as text. */
public final class DueText {
  private DueText() {}

  /** The lines of {@code due}. */
  public static List<String> of(DueReport report, Ink ink, Invocation program) {
    List<String> lines = new ArrayList<>();
    if (report.items().isEmpty()) {
      lines.add("Nothing is due.");
      return lines;
    }
    lines.add(ink.headline("Due on " + Wording.date(report.today())));
    report.items().forEach(item -> lines.addAll(of(item, program)));
    report.cautions().forEach(caution -> lines.add("caution   " + caution.sentence()));
    return lines;
  }

  /** One thing: how urgent, what and whose; why; the command that settles it. */
  public static List<String> of(DueItem item, Invocation program) {
    return List.of(
        String.format(Locale.ROOT, "%-8s  %s  %s", word(item.state()), item.when(), named(item)),
        "          " + item.why(),
        "          " + new ActionText(program).command(item.settle()));
  }

  private static String word(State state) {
    return state == State.DUE ? "due now" : state.key();
  }

  /** What and whose. */
  public static String named(DueItem item) {
    return item.whose().isEmpty() ? item.what() : item.what() + ", " + item.whose();
  }

  /** One line for a shell prompt; empty where nothing is due. */
  public static Optional<String> quiet(DueReport report) {
    List<DueItem> pressing = report.items().stream().filter(DueItem::pressing).toList();
    if (pressing.isEmpty()) {
      return Optional.empty();
    }
    String more = pressing.size() == 1 ? "" : " and " + (pressing.size() - 1) + " more";
    return Optional.of(pressing.size() + " due: " + named(pressing.get(0)) + more);
  }
}
