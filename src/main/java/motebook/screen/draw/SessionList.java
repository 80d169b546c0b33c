package motebook.screen.draw;

import java.util.ArrayList;
import java.util.List;
import motebook.desk.DayReport.OtherSource;
import motebook.desk.DayReport.SessionLine;
import motebook.model.Figures;
import motebook.model.Work;
import motebook.report.Wording;
import motebook.screen.state.DayPage;

/** The sessions of a day: a window of rows around the chosen one. */
final class SessionList {
  private static final int FIGURES = 20;
  private static final int WORK = 17;

  private final Canvas canvas;
  private final DayPage page;
  private final List<String> shares;
  private final int edge;

  SessionList(Canvas canvas, DayPage page) {
    this.canvas = canvas;
    this.page = page;
    this.shares = Wording.shares(page.report());
    this.edge = canvas.columns() - 1;
  }

  /** The rows that it would like, with its heading. */
  static int wanted(DayPage page) {
    return 1 + page.report().sessions().size() + page.report().others().size();
  }

  /** Draws the heading, if there is room for one, and as many sessions as fit. */
  void draw(int top, int rows, int chosen) {
    boolean headed = rows > 2;
    int room = rows - (headed ? 1 : 0);
    int all = wanted(page) - 1;
    int first = Math.max(0, Math.min(chosen - room / 2, all - room));
    if (headed) {
      heading(top, first, Math.min(room, all), all);
    }
    for (int row = 0; row < room && first + row < all; row++) {
      line(top + rows - room + row, first + row, first + row == chosen);
    }
  }

  private void heading(int row, int first, int shown, int all) {
    String more = shown < all ? (first + 1) + " to " + (first + shown) + " of " + all : "work";
    canvas.text(row, WORK, more, Role.QUIET);
    canvas.ending(row, edge - 12, "mg/m³", Role.QUIET);
    canvas.ending(row, edge, "of dose", Role.QUIET);
  }

  private void line(int row, int index, boolean chosen) {
    List<SessionLine> own = page.report().sessions();
    if (index < own.size()) {
      own(row, index, own.get(index), chosen ? Role.CHOSEN : Role.PLAIN);
    } else {
      other(row, index, page.report().others().get(index - own.size()));
    }
  }

  private void own(int row, int index, SessionLine line, Role role) {
    canvas.role(row, 0, canvas.columns(), role);
    canvas.ending(row, 4, (role == Role.CHOSEN ? ">" : "") + (index + 1), role);
    Work work = line.source().session().work();
    canvas.text(row, 5, Wording.span(work), role);
    canvas.fitted(row, WORK, edge - FIGURES, work(line), role);
    canvas.ending(row, edge - 12, Figures.cell(line.meanOutsideMgPerM3()), role);
    canvas.text(row, edge - 11, line.source().rough() ? "rough" : "", role);
    canvas.ending(row, edge, shares.get(index), role);
  }

  private String work(SessionLine line) {
    Work work = line.source().session().work();
    List<String> parts = new ArrayList<>();
    boolean timed = line.source().session().id() < 0;
    parts.add((timed ? "timed: " : "") + Wording.jobAndControls(line.source()));
    if (!work.place().equals(page.settings().place())) {
      parts.add("in " + work.place());
    }
    work.mask().ifPresent(mask -> parts.add("wearing " + mask.respirator()));
    if (!work.note().isEmpty()) {
      parts.add("(" + work.note() + ")");
    }
    return String.join(" ", parts);
  }

  private void other(int row, int index, OtherSource other) {
    Work work = other.source().session().work();
    canvas.ending(row, 4, "+", Role.OTHER);
    canvas.text(row, 5, Wording.span(work), Role.OTHER);
    String whose = work.person() + ": " + Wording.jobAndControls(other.source());
    canvas.fitted(row, WORK, edge - FIGURES, whose, Role.OTHER);
    canvas.ending(row, edge, shares.get(index), Role.OTHER);
  }
}
