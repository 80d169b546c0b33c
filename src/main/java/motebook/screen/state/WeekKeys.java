package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;

/** The keys of the week. */
final class WeekKeys {
  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "that day", "the day that is pointed at", WeekKeys::day),
          on(Key.Name.LEFT, "←", "earlier", "the week before", s -> week(s, -1)),
          on(Key.Name.RIGHT, "→", "later", "the week after", s -> week(s, 1)),
          on(Key.Name.UP, "↑", "", "the day before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the day after", s -> point(s, 1)),
          on('p', "person", "the next person's week", WeekKeys::nextPerson),
          on('t', "this week", "back to this week", s -> to(s, s.week().on(s.today()))));

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

  static Step nextPerson(State state) {
    return BaseKeys.nextPerson(state)
        .map(sheet -> to(state.with(sheet), state.week()))
        .orElseGet(() -> BaseKeys.nobodyElse(state));
  }
}
