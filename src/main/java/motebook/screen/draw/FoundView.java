package motebook.screen.draw;

import java.util.List;
import java.util.Optional;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.report.Wording;
import motebook.screen.state.Found;
import motebook.screen.state.State;

/** Sessions that were found: a window of rows around the one that is pointed at. */
final class FoundView {
  private static final int SPAN = 14;
  private static final int WORK = 27;

  private final Canvas canvas;
  private final State state;
  private final Found found;

  FoundView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.found = state.pages().found();
  }

  void draw() {
    String words = found.words().isEmpty() ? "All work" : "Found: " + found.words();
    View.title(canvas, state, List.of(words, ", newest first"));
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    if (found.hits().isEmpty()) {
      canvas.text(2, 1, "Nothing in the book holds all of these words.", Role.PLAIN);
    } else {
      canvas.ending(1, canvas.columns() - 1, count(), Role.QUIET);
    }
    Listing.draw(
        2,
        foot,
        found.hits().size(),
        found.chosen(),
        (row, index) -> line(row, found.hits().get(index), index == found.chosen()));
    new Foot(canvas, state).draw(foot);
  }

  private String count() {
    return (found.chosen() + 1) + " of " + found.hits().size() + (found.more() ? " or more" : "");
  }

  private void line(int row, Session session, boolean chosen) {
    Work work = session.work();
    Role role = chosen ? Role.CHOSEN : Role.PLAIN;
    canvas.role(row, 0, canvas.columns(), role);
    canvas.text(row, 1, (chosen ? ">" : " ") + work.date(), role);
    canvas.text(row, SPAN, Wording.span(work), role);
    canvas.fitted(row, WORK, canvas.columns() - 1, said(work), role);
  }

  private String said(Work work) {
    Reference reference = Reference.shipped();
    String material =
        work.material().map(key -> " of " + reference.material(Optional.of(key)).name()).orElse("");
    String note = work.note().isEmpty() ? "" : " (" + work.note() + ")";
    String whose = work.person().equals(state.sheet().person()) ? "" : work.person() + ": ";
    return whose + reference.operation(work.operation()).name() + material + note;
  }
}
