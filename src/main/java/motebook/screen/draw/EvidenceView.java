package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.desk.Evidence;
import motebook.desk.Evidence.Agreement;
import motebook.desk.Evidence.Lesson;
import motebook.desk.ExposureGroup;
import motebook.model.Figures;
import motebook.report.EvidenceReport;
import motebook.report.GroupReport;
import motebook.report.Invocation;
import motebook.science.Estimate;
import motebook.screen.state.State;

/** What measurements taught: each operation before and after, each sample against its estimate. */
final class EvidenceView {
  private static final Scale SCALE = new Scale(0.01, 100);
  private static final int BARS = 26;

  private final Canvas canvas;
  private final State state;
  private final int edge;

  EvidenceView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.edge = canvas.columns() - 1;
  }

  /** Draws one row of the page. */
  @FunctionalInterface
  private interface Row {
    void draw(int row);
  }

  void draw() {
    View.title(canvas, state, List.of("Evidence", ", what measurements taught"));
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    List<Row> rows = state.pages().evidence().evidence().map(this::rows).orElse(List.of());
    int top = state.pages().evidence().top();
    for (int row = 1; row < foot && top + row - 1 < rows.size(); row++) {
      rows.get(top + row - 1).draw(row);
    }
    new Foot(canvas, state).draw(foot);
  }

  private List<Row> rows(Evidence evidence) {
    List<Row> rows = new ArrayList<>();
    if (evidence.samples().isEmpty()) {
      Fit.wrap(none(state.program()), canvas.columns() - 2)
          .forEach(line -> rows.add(text(line, Role.PLAIN)));
      return rows;
    }
    rows.add(this::heading);
    evidence.operations().forEach(lesson -> rows.add(row -> lesson(row, lesson)));
    rows.add(text("", Role.PLAIN));
    groups(evidence, rows);
    rows.add(text("each sample, measured against estimated without it, mg/m³", Role.QUIET));
    evidence.samples().forEach(line -> rows.addAll(sample(line)));
    return rows;
  }

  private void groups(Evidence evidence, List<Row> rows) {
    if (!evidence.groups().isEmpty()) {
      wrapped(GroupReport.HEADING, Role.QUIET, rows);
      for (ExposureGroup group : evidence.groups()) {
        List<String> lines = GroupReport.lines(group);
        wrapped(lines.get(0), Role.PLAIN, rows);
        lines.stream().skip(1).forEach(line -> wrapped(line, Role.FIGURE, rows));
      }
      rows.add(text("", Role.PLAIN));
    }
  }

  private void wrapped(String text, Role role, List<Row> rows) {
    String indent = text.startsWith("  ") ? "  " : "";
    Fit.wrap(text.strip(), canvas.columns() - 2 - indent.length())
        .forEach(line -> rows.add(text(indent + line, role)));
  }

  private Row text(String text, Role role) {
    return row -> canvas.fitted(row, 1, edge, text, role);
  }

  private int bars() {
    return edge - Math.max(BARS, canvas.columns() / 3);
  }

  private void heading(int row) {
    canvas.text(row, 1, "one session, no control, mg/m³", Role.QUIET);
    canvas.ending(row, bars() - 10, "before", Role.QUIET);
    canvas.ending(row, bars() - 2, "after", Role.QUIET);
    canvas.fitted(row, bars(), edge, "90 % range, after over before", Role.QUIET);
  }

  private void lesson(int row, Lesson lesson) {
    canvas.fitted(row, 1, bars() - 18, lesson.operation().name(), Role.PLAIN);
    canvas.ending(row, bars() - 10, Figures.cell(lesson.before().central()), Role.QUIET);
    canvas.ending(row, bars() - 2, Figures.cell(lesson.after().central()), Role.FIGURE);
    range(row, lesson.before(), canvas.glyph("·", "."), Role.QUIET);
    range(row, lesson.after(), canvas.glyph("═", "="), Role.FIGURE);
    int width = edge - bars();
    canvas.put(
        row, bars() + at(lesson.after().central(), width), canvas.glyph("◆", "*"), Role.FIGURE);
  }

  private void range(int row, Estimate estimate, String glyph, Role role) {
    int width = edge - bars();
    for (int at = at(estimate.low90(), width); at <= at(estimate.high90(), width); at++) {
      canvas.put(row, bars() + at, glyph, role);
    }
  }

  private static int at(double value, int width) {
    return (int) Math.min(width - 1, Math.floor(SCALE.place(value) * width));
  }

  private List<Row> sample(Evidence.Line line) {
    List<Row> rows = new ArrayList<>();
    rows.add(row -> told(row, line));
    if (line.agreement().map(Agreement::disagrees).orElse(false)) {
      rows.add(
          text(
              "  ! more than three deviations apart: look at the sample and at what was logged",
              Role.WARNING));
    }
    return rows;
  }

  private void told(int row, Evidence.Line line) {
    String figures =
        line.agreement()
            .map(EvidenceView::figures)
            .orElse(
                line.sample().use().relative()
                    ? "for comparison only"
                    : "nothing logged to compare");
    canvas.fitted(
        row, 1, edge - 36, EvidenceReport.brief(line.sample(), line.measured()), Role.PLAIN);
    canvas.ending(row, edge, figures, Role.PLAIN);
  }

  private static String figures(Agreement agreement) {
    return Figures.about(agreement.estimatedMgPerM3())
        + ", "
        + Figures.rounded(agreement.ratio())
        + " times, z "
        + String.format(Locale.ROOT, "%+.1f", agreement.z());
  }

  private static String none(Invocation program) {
    return "No samples yet. A measured result sharpens every estimate. In a shell, after quit: "
        + program.command("sample add --from 9:00 --to 13:00 --mg-m3 1.2 --fraction inhalable")
        + ", or "
        + program.command("sample import FILE");
  }

  /** The same page in lines. */
  static List<String> lines(Optional<Evidence> evidence, Invocation program) {
    return evidence
        .map(e -> e.samples().isEmpty() ? List.of(none(program)) : EvidenceReport.text(e, program))
        .orElse(List.of());
  }
}
