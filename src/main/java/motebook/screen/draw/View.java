package motebook.screen.draw;

import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import motebook.report.Figures;
import motebook.report.Wording;
import motebook.screen.state.DayPage;
import motebook.screen.state.Focus;
import motebook.screen.state.Size;
import motebook.screen.state.State;

/** Draws a state; nothing outside is asked. */
public final class View {
  private View() {}

  /** The screen that shows a state in a terminal of some size. */
  public static Cells view(State state, Size size) {
    Canvas canvas = new Canvas(size, state.look());
    if (size.holds(Size.SMALLEST)) {
      whole(canvas, state);
    } else {
      small(canvas);
    }
    return canvas.done();
  }

  private static void small(Canvas canvas) {
    String text =
        "Motebook needs a window of at least "
            + Size.SMALLEST.columns()
            + " columns and "
            + Size.SMALLEST.rows()
            + " rows. Make it larger, or press Ctrl-C to leave; a line being typed is kept.";
    int row = 0;
    for (String line : Fit.wrap(text, Math.max(1, canvas.columns()))) {
      canvas.text(row++, 0, line, Role.PLAIN);
    }
  }

  private static void whole(Canvas canvas, State state) {
    title(canvas, state);
    boolean page = state.focus() == Focus.HELP || state.focus() == Focus.NOTES;
    if (page) {
      Pages.draw(canvas, state, 1, canvas.rows() - 2);
      new Foot(canvas, state).draw(canvas.rows() - 2);
    } else {
      new DayView(canvas, state).draw();
    }
  }

  private static void title(Canvas canvas, State state) {
    String day = Wording.date(state.sheet().date());
    int at = canvas.text(0, 1, day, Role.TITLE);
    at = canvas.text(0, at, relative(state), Role.PLAIN);
    String clock = Figures.clock(state.now().getHour() * 60 + state.now().getMinute());
    Optional<DayPage> known = state.sheet().page();
    String who = known.map(DayPage::person).orElse("");
    canvas.ending(0, canvas.columns() - 1, "Motebook  " + clock, Role.QUIET);
    canvas.fitted(0, at, canvas.columns() - 17, "  " + who, Role.OWN);
  }

  private static String relative(State state) {
    long days = ChronoUnit.DAYS.between(state.today(), state.sheet().date());
    if (days == 0) {
      return ", today";
    } else if (days == -1) {
      return ", yesterday";
    }
    return String.format(Locale.ROOT, days < 0 ? ", %d days ago" : ", in %d days", Math.abs(days));
  }
}
