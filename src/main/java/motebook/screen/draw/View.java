package motebook.screen.draw;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import motebook.model.MinuteOfDay;
import motebook.report.Wording;
import motebook.screen.state.CarePage;
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
    switch (state.focus()) {
      case FORM -> new FormView(canvas, state).draw();
      case FAVOURITES -> new FavouriteView(canvas, state).draw();
      case FOUND -> new FoundView(canvas, state).draw();
      case EVIDENCE -> new EvidenceView(canvas, state).draw();
      case CARE -> new CareView(canvas, state).draw();
      case PLAN -> new PlanView(canvas, state).draw();
      case HELP, NOTES, WORDS -> {
        title(canvas, state, day(state));
        int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
        Pages.draw(canvas, state, 1, foot);
        new Foot(canvas, state).draw(foot);
      }
      default -> base(canvas, state);
    }
  }

  private static void base(Canvas canvas, State state) {
    if (state.where().base() == Focus.WEEK) {
      title(canvas, state, week(state));
      new WeekView(canvas, state).draw();
    } else {
      title(canvas, state, day(state));
      new DayView(canvas, state).draw();
    }
  }

  static void title(Canvas canvas, State state, List<String> title) {
    String clock = MinuteOfDay.told(state.now().getHour() * 60 + state.now().getMinute());
    canvas.ending(0, canvas.columns() - 1, "Motebook  " + clock, Role.QUIET);
    int end = canvas.columns() - 17;
    String due = due(state);
    if (!due.isEmpty()) {
      canvas.ending(0, end, due, Role.WARNING);
      end -= due.length() + 1;
    }
    int at = canvas.fitted(0, 1, end, title.get(0), Role.TITLE);
    at = canvas.fitted(0, at, end, title.get(1), Role.PLAIN);
    canvas.fitted(0, at, end, "  " + state.sheet().person(), Role.OWN);
  }

  /** The flag of what is due, on every page. */
  private static String due(State state) {
    long due = state.pages().care().page().map(CarePage::pressing).orElse(0L);
    return due == 0 ? "" : "! " + due + " due (masks)";
  }

  private static List<String> day(State state) {
    return List.of(Wording.date(state.sheet().date()), relative(state));
  }

  private static List<String> week(State state) {
    LocalDate monday = state.week().monday();
    boolean isThis = !state.today().isBefore(monday) && state.today().isBefore(monday.plusWeeks(1));
    long weeks = ChronoUnit.WEEKS.between(monday, state.today());
    String ago = weeks == 1 ? ", last week" : weeks > 1 ? ", " + weeks + " weeks ago" : "";
    return List.of("Week from " + Wording.date(monday), isThis ? ", this week" : ago);
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
