package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.stream.IntStream;

/** The keys of the week. */
final class WeekKeys {
  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "that day", "the day that is pointed at", WeekKeys::day),
          on(Key.Name.LEFT, "←", "earlier", "the week before", s -> week(s, -1)),
          on(Key.Name.RIGHT, "→", "later", "the week after", s -> week(s, 1)),
          on(Key.Name.UP, "↑", "", "the day before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the day after", s -> point(s, 1)),
          on('w', "day", "back to the day", WeekKeys::back),
          on(Key.Name.ESCAPE, "Esc", "", "back to the day", WeekKeys::back),
          on('l', "log work", "say what you did, in one line", BaseKeys::line),
          new Binding(
              IntStream.rangeClosed('0', '9').mapToObj(Key::of).toList(),
              "0-9",
              "",
              "the same, beginning with a time",
              (state, key) -> LineKeys.typed(BaseKeys.line(state).state(), key.typed())),
          on('?', "help", "these keys", s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
          on('q', "quit", "leave; an unfinished line is kept", BaseKeys::leave),
          on('m', "masks", "masks and filters, and what is due", CareKeys::open),
          on('b', "plan", "what work would bring, before it is done", PlanKeys::open),
          on('p', "person", "the next person's week", WeekKeys::nextPerson),
          on('t', "this week", "back to this week", s -> to(s, s.week().on(s.today()))),
          on(
              'g',
              "go to",
              "another week, by a date in it",
              s -> BaseKeys.ask(s, Prompt.Kind.GO_TO)),
          on('/', "find", "find earlier work", s -> BaseKeys.ask(s, Prompt.Kind.FIND)),
          on(Key.Name.F1, "F1", "", "these keys", s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
          on(Key.control('c'), "Ctrl-C", "", "quit, too", BaseKeys::leave));

  private WeekKeys() {}

  private static Step to(State state, WeekSheet week) {
    return BaseKeys.week(state, week);
  }

  private static Step week(State state, int by) {
    return to(state, state.week().on(state.week().day().plusWeeks(by)));
  }

  private static Step point(State state, int by) {
    return Step.to(state.with(state.week().pointing(state.week().chosen() + by)));
  }

  private static Step day(State state) {
    return DayKeys.read(state.with(Focus.DAY), state.sheet().on(state.week().day()));
  }

  private static Step back(State state) {
    return DayKeys.read(state.with(Focus.DAY), state.sheet());
  }

  private static Step nextPerson(State state) {
    return BaseKeys.nextPerson(state)
        .map(sheet -> to(state.with(sheet), state.week()))
        .orElseGet(() -> BaseKeys.nobodyElse(state));
  }
}
