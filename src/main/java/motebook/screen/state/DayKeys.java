package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.stream.IntStream;
import motebook.screen.state.Notice.Tone;

/** The keys of the day. */
final class DayKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "log work", "say what you did, in one line", DayKeys::line),
          new Binding(
              IntStream.rangeClosed('0', '9').mapToObj(Key::of).toList(),
              "0-9",
              "",
              "the same, beginning with a time: 40m, 1h20, 9:00-9:30",
              (state, key) -> LineKeys.typed(line(state).state(), key.typed())),
          on(Key.Name.LEFT, "←", "earlier", "the day before", s -> day(s, -1)),
          on(Key.Name.RIGHT, "→", "later", "the day after", s -> day(s, 1)),
          on('t', "today", "back to today", s -> read(s, s.sheet().on(s.today()))),
          on('u', "undo", "take back the last change of the book", DayKeys::undo),
          on('?', "help", "these keys", s -> Step.to(opened(s, Focus.HELP))),
          on('q', "quit", "leave; an unfinished line is kept", DayKeys::leave),
          on('n', "notes", "cautions and remarks in full", s -> Step.to(opened(s, Focus.NOTES))),
          on('p', "person", "the next person's day", DayKeys::nextPerson),
          on('r', "room", "the air of the day's next place", DayKeys::nextPlace),
          on(Key.Name.UP, "↑", "", "the session before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the session after", s -> point(s, 1)),
          on(Key.Name.PAGE_UP, "PgUp", "", "some sessions back", s -> point(s, -SOME)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "some sessions on", s -> point(s, SOME)),
          on(Key.Name.F1, "F1", "", "these keys", s -> Step.to(opened(s, Focus.HELP))),
          on(Key.control('z'), "Ctrl-Z", "", "undo, too", DayKeys::undo),
          on(Key.control('c'), "Ctrl-C", "", "quit, too", DayKeys::leave));

  private DayKeys() {}

  private static Step line(State state) {
    State open = state.with(Focus.LINE);
    return state.line().blank() ? Step.to(open) : LineKeys.changed(open, state.line());
  }

  static State opened(State state, Focus page) {
    return state.with(state.sheet().from(0)).with(page);
  }

  private static Step day(State state, int by) {
    return read(state, state.sheet().on(state.sheet().date().plusDays(by)));
  }

  static Step read(State state, Sheet sheet) {
    return Step.to(state.with(sheet), new Task.ReadDay(sheet.date(), sheet.person()));
  }

  private static Step undo(State state) {
    return Step.to(state, new Task.FindUndo());
  }

  static Step leave(State state) {
    return Step.to(state.leaving());
  }

  private static Step nextPerson(State state) {
    List<String> people = state.sheet().people();
    if (people.size() < 2) {
      return Step.to(state.saying("There is nobody else in the book.", Tone.DONE));
    }
    int next = (people.indexOf(state.sheet().person()) + 1) % people.size();
    return read(state, state.sheet().of(people.get(next)));
  }

  private static Step nextPlace(State state) {
    boolean several = state.sheet().current().map(page -> page.air().size() > 1).orElse(false);
    return several
        ? Step.to(state.with(state.sheet().nextPlace()))
        : Step.to(state.saying("No other place was worked in on this day.", Tone.DONE));
  }

  private static Step point(State state, int by) {
    return Step.to(state.with(state.sheet().pointing(state.sheet().chosen() + by)));
  }
}
