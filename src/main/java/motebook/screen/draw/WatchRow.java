package motebook.screen.draw;

import java.util.List;
import java.util.Optional;
import motebook.desk.Timing;
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.model.Stopwatch.Doubt;
import motebook.report.LeftOut;
import motebook.report.LimitText;
import motebook.screen.state.DayPage;
import motebook.screen.state.Focus;
import motebook.screen.state.State;

/** What the stopwatch says, above everything that is said at the foot of the day. */
final class WatchRow {
  private static final int TALL = 20;

  private WatchRow() {}

  /** The lines; none where no stopwatch is under way or another page is shown. */
  static List<String> lines(State state, int columns, int rows) {
    Optional<Timing> timing = state.sheet().current().flatMap(DayPage::timing);
    return state.where().base() != Focus.DAY || timing.isEmpty()
        ? List.of()
        : lines(state, timing.get(), columns, rows >= TALL);
  }

  private static List<String> lines(State state, Timing timing, int columns, boolean tall) {
    if (timing.doubt().isPresent()) {
      return doubt(timing, timing.doubt().get(), columns, tall);
    }
    return tall
        ? Fit.wrap(
            time(timing)
                + ": "
                + timing.watch().line()
                + ". "
                + dose(state, timing)
                + left(timing)
                + leftOut(state)
                + clear(timing),
            columns,
            leftOut(state).isEmpty() ? 3 : 5)
        : List.of(Fit.into(time(timing) + ". " + left(timing) + leftOut(state), columns));
  }

  // What the clock says of the time worked cannot be trusted, and so no dose of it either.
  private static List<String> doubt(Timing timing, Doubt doubt, int columns, boolean tall) {
    boolean set = doubt == Doubt.CLOCK_SET;
    if (!tall) {
      String told =
          set
              ? "Stopwatch: the clock was set back; stop asks."
              : time(timing) + ": stop asks when it ended.";
      return List.of(Fit.into(told, columns));
    }
    return Fit.wrap(
        (set ? "Stopwatch" : time(timing))
            + ": "
            + timing.watch().line()
            + (set
                ? ". The clock was set back since its start: stopping asks when the work was."
                : ". Still at it? Stopping asks when the work ended."),
        columns,
        3);
  }

  private static String time(Timing timing) {
    String state = timing.watch().running() ? "Stopwatch " : "Stopwatch paused at ";
    return state + Figures.duration(timing.minutes());
  }

  private static String dose(State state, Timing timing) {
    return timing.watch().running()
        ? state
            .sheet()
            .current()
            .map(page -> page.report().outside().estimate().central())
            .map(dose -> "Day " + (dose == 0 ? "none" : Figures.about(dose) + " mg/m³") + ". ")
            .orElse("")
        : "";
  }

  private static String left(Timing timing) {
    if (!timing.watch().running()) {
      return "Ctrl-T goes on, Ctrl-X or the word stop ends it.";
    }
    return timing.reach().map(LimitText::left).orElse("");
  }

  private static String leftOut(State state) {
    return state
        .sheet()
        .current()
        .flatMap(page -> LeftOut.briefly(page.report().leftOut()))
        .map(said -> " " + said)
        .orElse("");
  }

  private static String clear(Timing timing) {
    return timing.clearAt().isPresent()
        ? " If stopped now, fine dust falls to a tenth by "
            + MinuteOfDay.told(timing.clearAt().getAsInt())
            + "."
        : "";
  }
}
