package motebook.screen.draw;

import java.util.List;
import motebook.model.MinuteOfDay;
import motebook.model.Work;
import motebook.screen.state.DayPage;

/** The sessions of a day as bars beneath the air strip. */
final class SessionBars {
  private static final int LABEL = 5;
  private static final int NOW = 5;

  private final Canvas canvas;
  private final Hours hours;
  private final DayPage page;

  SessionBars(Canvas canvas, Hours hours, DayPage page) {
    this.canvas = canvas;
    this.hours = hours;
    this.page = page;
  }

  /** Labels the hours. */
  void hours(int row, int now) {
    int mark = now >= hours.from() && now < hours.to() ? hours.column(now) : Integer.MIN_VALUE / 2;
    for (int hour = hours.from() / 60; hour * 60 < hours.to(); hour += hours.step()) {
      int column = hours.column(hour * 60);
      boolean free = column + LABEL < mark || mark + NOW < column;
      String label = free ? MinuteOfDay.told(hour * 60) : "";
      canvas.text(row, AirStrip.MARGIN + column, label, Role.QUIET);
    }
    if (mark >= 0) {
      canvas.text(row, AirStrip.MARGIN + mark, canvas.glyph("▲now", "^now"), Role.NOW);
    }
  }

  /** The person's own sessions, numbered as in the list. */
  void own(int row, String place, int chosen) {
    label(row, page.person());
    List<Work> own =
        page.report().sessions().stream().map(line -> line.source().session().work()).toList();
    for (int index = 0; index < own.size(); index++) {
      boolean here = own.get(index).place().equals(place);
      Role role = index == chosen ? Role.CHOSEN : here ? Role.OWN : Role.QUIET;
      bar(row, own.get(index), Integer.toString(index + 1), role);
    }
  }

  /** The sessions of others in the place. */
  void others(int row, String place) {
    label(row, "others");
    others(place).forEach(work -> bar(row, work, work.person(), Role.OTHER));
  }

  /** What others did in the place. */
  List<Work> others(String place) {
    return page.sessions().stream()
        .map(session -> session.work())
        .filter(work -> !work.person().equals(page.person()) && work.place().equals(place))
        .toList();
  }

  /** When a mask was worn; a thin line where it was worn for a part of the session. */
  void masks(int row) {
    label(row, "mask on");
    for (var line : page.report().sessions()) {
      Work work = line.source().session().work();
      work.mask()
          .ifPresent(
              mask -> {
                boolean throughout = mask.wornPercent() >= 100;
                String glyph = throughout ? canvas.glyph("━", "=") : canvas.glyph("┅", "-");
                for (int column = first(work); column < behind(work); column++) {
                  canvas.put(row, column, glyph, Role.MASK);
                }
              });
    }
  }

  private void label(int row, String name) {
    canvas.fitted(row, 1, AirStrip.MARGIN - 1, name, Role.QUIET);
  }

  private int first(Work work) {
    return AirStrip.MARGIN + hours.column(work.startMinute());
  }

  private int behind(Work work) {
    return Math.max(first(work) + 1, AirStrip.MARGIN + hours.column(work.endMinute()));
  }

  private void bar(int row, Work work, String name, Role role) {
    int from = first(work);
    int to = behind(work);
    for (int column = from; column < to; column++) {
      canvas.put(row, column, canvas.glyph("─", "-"), role);
    }
    if (to - from >= 3) {
      canvas.put(row, from, canvas.glyph("├", "["), role);
      canvas.put(row, to - 1, canvas.glyph("┤", "]"), role);
      canvas.fitted(row, from + Math.max(1, (to - from - Width.of(name)) / 2), to - 1, name, role);
    } else {
      canvas.text(row, from, to, name, role);
    }
  }
}
