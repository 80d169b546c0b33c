package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.PlanReport;
import motebook.desk.Plans;
import motebook.model.Figures;
import motebook.report.Ink;
import motebook.report.PlanText;
import motebook.science.Estimate;
import motebook.screen.state.PlanSheet;
import motebook.screen.state.State;

/** What some work would bring: each way of doing it in a row, and all of the one pointed at. */
final class PlanView {
  private static final String NONE =
      "No plan yet. Press Enter and say what you may do: its dose is estimated, and nothing is"
          + " written. A second way of doing it stands beside the first.";
  private static final int LIST = 2;
  private static final int LEAST_TOLD = 4;
  private static final int FIGURE = 8;
  private static final int BARS = 22;
  private static final int LABEL = 10;

  private final Canvas canvas;
  private final State state;
  private final PlanSheet sheet;
  private final int edge;
  private final int bars;

  PlanView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.sheet = state.pages().plan();
    this.edge = canvas.columns() - 1;
    this.bars = edge - Math.max(BARS, canvas.columns() / 3);
  }

  void draw() {
    View.title(canvas, state, List.of("Plan", ", none of it is written"));
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    Optional<Plans> plans = sheet.plans().filter(all -> all.all().size() == sheet.lines().size());
    if (plans.isPresent() && !plans.get().all().isEmpty()) {
      draw(plans.get(), foot);
    } else if (sheet.lines().isEmpty()) {
      int row = 2;
      for (String line : Fit.wrap(NONE, canvas.columns() - 2)) {
        canvas.text(row++, 1, line, Role.PLAIN);
      }
    }
    new Foot(canvas, state).draw(foot);
  }

  private void draw(Plans plans, int foot) {
    canvas.fitted(1, 3, bars - FIGURE, "instead of one another", Role.QUIET);
    canvas.ending(1, bars - 1, "mg/m³", Role.QUIET);
    canvas.fitted(1, bars, edge, "day then, estimated", Role.QUIET);
    int rows = Math.max(1, Math.min(sheet.lines().size(), foot - LIST - LEAST_TOLD));
    Listing.draw(
        LIST,
        LIST + rows,
        sheet.lines().size(),
        sheet.chosen(),
        (row, index) -> plan(row, index, plans.all().get(index)));
    Gauge.scale(canvas, LIST + rows, bars, edge);
    told(LIST + rows + 1, foot, plans);
  }

  private void plan(int row, int index, PlanReport plan) {
    boolean chosen = index == sheet.chosen();
    Role role = chosen ? Role.CHOSEN : Role.PLAIN;
    Estimate outside = plan.day().outside().estimate();
    canvas.role(row, 0, bars - 1, role);
    canvas.text(row, 1, chosen ? ">" : " ", role);
    String said = index + 1 + "  " + sheet.lines().get(index).again();
    canvas.fitted(row, 3, bars - FIGURE, said, role);
    canvas.ending(row, bars - 1, Figures.cell(outside.central()), role);
    new Gauge(canvas, plan.day()).bar(row, bars, edge, outside);
  }

  /** All there is to tell of the one pointed at, from the row to which it was scrolled. */
  private void told(int top, int foot, Plans plans) {
    String full = sheet.lines().get(sheet.chosen()).said();
    List<String> rows = new ArrayList<>(Fit.wrap(full, canvas.columns() - 2));
    PlanText.ranked(plans).ifPresent(line -> rows.addAll(labelled(line)));
    for (String line : PlanText.told(plans.all().get(sheet.chosen()), Ink.PLAIN, state.program())) {
      rows.addAll(labelled(line));
    }
    int first = Math.max(0, Math.min(sheet.top(), rows.size() - (foot - top)));
    for (int row = top; row < foot && first + row - top < rows.size(); row++) {
      canvas.text(row, 1, rows.get(first + row - top), Role.PLAIN);
    }
    if (first + foot - top < rows.size()) {
      canvas.ending(foot - 1, edge, canvas.glyph(" ↓ PgDn", " PgDn"), Role.KEY);
    }
  }

  /** A line in as many rows as it takes, all that is said of a label behind it. */
  private List<String> labelled(String line) {
    int room = canvas.columns() - 2;
    if (line.length() <= LABEL || line.charAt(LABEL - 1) != ' ') {
      return Fit.wrap(line, room);
    }
    List<String> rows = new ArrayList<>();
    for (String part : Fit.wrap(line.substring(LABEL).strip(), room - LABEL)) {
      rows.add((rows.isEmpty() ? line.substring(0, LABEL) : " ".repeat(LABEL)) + part);
    }
    return rows;
  }

  /** The same page in lines. */
  static List<String> lines(State state) {
    PlanSheet sheet = state.pages().plan();
    return sheet
        .plans()
        .map(plans -> PlanText.of(plans, said(sheet), Ink.PLAIN, state.program()))
        .orElse(List.of());
  }

  private static List<String> said(PlanSheet sheet) {
    return sheet.lines().stream().map(PlanSheet.PlanLine::said).toList();
  }
}
