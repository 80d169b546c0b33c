package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import motebook.screen.state.CareRow;
import motebook.screen.state.CareSheet;
import motebook.screen.state.State;

/** Masks and filters: what is due, the masks with their elements, the shop's own filters. */
final class CareView {
  private static final int NAME = 3;
  private static final int BAR = 12;
  private static final int PERCENT = 6;

  private final Canvas canvas;
  private final State state;
  private final CareSheet care;

  CareView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.care = state.pages().care();
  }

  void draw() {
    View.title(canvas, state, List.of(care.tab().title(), tabs()));
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    List<Told> more = more();
    int end = Math.max(3, foot - more.size());
    if (care.page().isEmpty()) {
      canvas.text(2, 1, "Reading the book …", Role.QUIET);
    } else if (care.rows().isEmpty()) {
      int row = 2;
      for (String line : Fit.wrap(nothing(), canvas.columns() - 2)) {
        canvas.text(row++, 1, line, Role.PLAIN);
      }
    }
    Listing.draw(
        2,
        end,
        care.rows().size(),
        care.chosen(),
        (row, index) -> line(row, care.rows().get(index), index == care.chosen()));
    for (int row = 0; row < more.size() && end + row < foot; row++) {
      Told told = more.get(row);
      bar(end + row, 1, told.used(), Role.PLAIN);
      canvas.fitted(end + row, told.from(), canvas.columns() - 1, told.words(), Role.QUIET);
    }
    new Foot(canvas, state).draw(foot);
  }

  private String tabs() {
    List<String> others = new ArrayList<>();
    for (CareSheet.Tab tab : CareSheet.Tab.values()) {
      if (tab != care.tab()) {
        others.add(tab.title().toLowerCase(java.util.Locale.ROOT));
      }
    }
    return canvas.glyph("  → ", "  > ") + String.join(", ", others);
  }

  private String nothing() {
    return switch (care.tab()) {
      case DUE -> "Nothing is due.";
      case MASKS ->
          "No masks yet. The words add mask in the line add one; or, in a shell, after quit: "
              + state.program().command("gear add respirator \"half mask\"")
              + " --facepiece \"half mask\"";
      case SHOP ->
          "No filters of the shop yet. Add them in a shell, after quit: "
              + state.program().command("gear add filter bag --on collector --clean-every 10");
    };
  }

  /** A row of what is told: its words from a column on, a clock's share before the first. */
  private record Told(String words, int from, OptionalDouble used) {}

  /** What is told of the row that is pointed at; at most a third of the page. */
  private List<Told> more() {
    List<Told> lines = new ArrayList<>();
    care.row().ifPresent(row -> row.more().forEach(note -> lines.addAll(told(note))));
    return lines.subList(0, Math.min(lines.size(), canvas.rows() / 3));
  }

  private List<Told> told(CareRow.Note note) {
    int from = note.used().isPresent() ? 1 + BAR + PERCENT : 1;
    List<Told> lines = new ArrayList<>();
    for (String words : Fit.wrap(note.told(), canvas.columns() - 1 - from)) {
      lines.add(new Told(words, from, lines.isEmpty() ? note.used() : OptionalDouble.empty()));
    }
    return lines;
  }

  private void line(int row, CareRow care, boolean chosen) {
    Role role = chosen ? Role.CHOSEN : care.pressing() ? Role.WARNING : Role.PLAIN;
    canvas.role(row, 0, canvas.columns(), role);
    canvas.text(row, 1, chosen ? ">" : care.pressing() ? "!" : " ", role);
    boolean bars = this.care.tab() != CareSheet.Tab.DUE;
    int name = bars ? Math.max(16, canvas.columns() / 4) : 12;
    canvas.fitted(row, NAME, NAME + name - 1, care.name(), role);
    int told = NAME + name;
    if (bars) {
      bar(row, told, care.used(), role);
      told += BAR + PERCENT;
    }
    canvas.fitted(row, told, canvas.columns() - 1, care.told(), role);
  }

  private void bar(int row, int from, OptionalDouble share, Role role) {
    if (share.isEmpty()) {
      return;
    }
    double used = share.getAsDouble();
    int filled = (int) Math.round(Math.min(1, used) * BAR);
    for (int cell = 0; cell < BAR; cell++) {
      String glyph = cell < filled ? canvas.glyph("█", "#") : canvas.glyph("·", ".");
      canvas.put(row, from + cell, glyph, role == Role.PLAIN ? Role.FINE : role);
    }
    canvas.ending(row, from + BAR + 5, Math.round(Math.min(9.99, used) * 100) + "%", role);
  }
}
