package motebook.screen.draw;

import java.util.List;
import java.util.Optional;
import motebook.desk.Air;
import motebook.report.LeftOut;
import motebook.screen.state.DayPage;
import motebook.screen.state.State;

/** The day: the air strip, the gauge, the sessions, what they call for, and the line. */
final class DayView {
  private static final int WIDE = 70;
  private static final String EXAMPLE = "    ";
  private static final List<String> FIRST_WORDS =
      List.of(
          "Nothing is in this book yet.",
          "",
          "Say what you did, the way you would tell it: how long, what, to which wood, and what"
              + " caught the dust. Just type, and begin with the time, such as 40m:",
          "",
          EXAMPLE + "40m orbital sanding of oak with tool vacuum",
          EXAMPLE + "9:00-9:30 table saw pine with collector",
          EXAMPLE + "1h20 assembly",
          "",
          "It is read back to you, with the day's dose, and nothing is written before Enter.");
  private static final List<String> NO_WORK =
      List.of(
          "Nothing is logged on this day.",
          "",
          "Type what you did, beginning with how long it took, such as 40m.");

  private final Canvas canvas;
  private final State state;

  DayView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
  }

  void draw() {
    Optional<DayPage> page = state.sheet().current();
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    if (page.isEmpty()) {
      canvas.text(2, 1, "Reading the book …", Role.QUIET);
    } else if (page.get().sessions().isEmpty()) {
      empty(page.get());
    } else {
      day(page.get(), Rows.of(canvas.rows(), canvas.columns(), page.get(), state));
    }
    new Foot(canvas, state).draw(foot);
  }

  private void empty(DayPage page) {
    int row = 2;
    for (String said : LeftOut.sentences(page.report().leftOut())) {
      for (String line : Fit.wrap("! " + said, canvas.columns() - 2)) {
        canvas.text(row++, 1, line, Role.WARNING);
      }
    }
    for (String paragraph : page.bookEmpty() ? FIRST_WORDS : NO_WORK) {
      boolean example = paragraph.startsWith(EXAMPLE);
      for (String line : Fit.wrap(paragraph.strip(), canvas.columns() - 8)) {
        canvas.text(row++, example ? 5 : 1, line, example ? Role.TYPED : Role.PLAIN);
      }
      row += paragraph.isEmpty() ? 1 : 0;
    }
  }

  private void day(DayPage page, Rows rows) {
    Air air = page.air().get(Math.floorMod(state.sheet().place(), page.air().size()));
    int columns = canvas.columns() - AirStrip.MARGIN - 1;
    Hours hours = Hours.of(page, state.now(), columns);
    if (rows.strip() > 0) {
      legend(page, air);
      strip(page, air, hours, rows);
      bars(page, air, hours, rows);
    }
    if (rows.wide()) {
      new Gauge(canvas, page.report()).columns(rows.gauge(), rows.verdict());
    } else if (rows.gauged()) {
      new Gauge(canvas, page.report()).lines(rows.gauge());
    }
    for (int row = 0; row < rows.vapour().size(); row++) {
      int at = rows.list() - rows.vapour().size() + row;
      canvas.text(at, 1, rows.vapour().get(row), Role.FIGURE);
    }
    new SessionList(canvas, page).draw(rows.list(), rows.listRows(), state.sheet().chosen());
    cautions(page, rows);
  }

  private void legend(DayPage page, Air air) {
    int at = canvas.text(1, 1, air.place() + " air, mg/m³ ", Role.PLAIN);
    if (air.outdoors()) {
      at = canvas.text(1, at, "(outdoors: no room holds the dust) ", Role.QUIET);
    } else {
      at = canvas.text(1, at, "  " + canvas.glyph("█", "#"), Role.FINE);
      at = canvas.text(1, at, " fine", Role.PLAIN);
      at = canvas.text(1, at, "  " + canvas.glyph("▒", ":"), Role.COARSE);
      at = canvas.text(1, at, " coarse", Role.PLAIN);
    }
    at = canvas.text(1, at, "  " + canvas.glyph("•", "o"), Role.BREATHED);
    at = canvas.text(1, at, " breathed ", Role.PLAIN);
    partly(page, at);
    if (page.air().size() > 1) {
      canvas.ending(
          1,
          canvas.columns() - 1,
          page.air().size() + (canvas.columns() < WIDE ? " places" : " places: room"),
          Role.QUIET);
    }
  }

  // A mask that was on for a part of a session is a dashed line below the strip.
  private void partly(DayPage page, int at) {
    boolean partly =
        page.report().sessions().stream()
            .flatMap(line -> line.source().session().work().mask().stream())
            .anyMatch(mask -> mask.wornPercent() < 100);
    int end = canvas.columns() - (page.air().size() > 1 ? 12 : 1);
    if (partly && at + 18 <= end) {
      int behind = canvas.text(1, at, " " + canvas.glyph("┅", "-"), Role.MASK);
      canvas.text(1, behind, " mask part-time", Role.PLAIN);
    }
  }

  private int now() {
    boolean today = state.sheet().date().equals(state.today());
    return today ? state.now().getHour() * 60 + state.now().getMinute() : -1;
  }

  private void strip(DayPage page, Air air, Hours hours, Rows rows) {
    double highest =
        page.air().stream()
            .mapToDouble(a -> Math.max(a.breathed(0, 1440), room(a)))
            .max()
            .orElse(0);
    new AirStrip(canvas, air, hours, Scale.holding(highest), 2, rows.strip())
        .draw(page.report(), page.settings().totalConversion(), now());
  }

  private static double room(Air air) {
    return air.fine(0, 1440) + air.coarse(0, 1440);
  }

  private void bars(DayPage page, Air air, Hours hours, Rows rows) {
    SessionBars bars = new SessionBars(canvas, hours, page);
    int row = 2 + rows.strip();
    bars.hours(row++, now());
    bars.own(row++, air.place(), state.sheet().chosen());
    if (rows.others()) {
      bars.others(row++, air.place());
    }
    if (rows.masks()) {
      bars.masks(row);
    }
  }

  private void cautions(DayPage page, Rows rows) {
    List<String> lines = Cautions.lines(page, canvas.columns() - 2, rows.cautions());
    for (int row = 0; row < lines.size(); row++) {
      canvas.text(rows.caution() + row, 1, lines.get(row), Role.WARNING);
    }
  }
}
