package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import motebook.model.Session;
import motebook.model.Work;

/** The keys of the list of sessions that were found. */
final class FoundKeys {
  private static final int SOME = 10;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "that day", "the day of this session", FoundKeys::day),
          on(Key.Name.DOWN, "↓", "older", "the one before it in time", s -> point(s, 1)),
          on(Key.Name.UP, "↑", "newer", "the one after it in time", s -> point(s, -1)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "some older ones", s -> point(s, SOME)),
          on(Key.Name.PAGE_UP, "PgUp", "", "some newer ones", s -> point(s, -SOME)),
          on(Key.Name.HOME, "Home", "", "the newest", s -> point(s, -s.pages().found().chosen())),
          on(Key.Name.ESCAPE, "Esc", "close", "back", s -> Step.to(s.home())));

  private FoundKeys() {}

  private static Step point(State state, int by) {
    Found found = state.pages().found();
    Found moved = found.pointing(found.chosen() + by);
    return moved.wantsMore() && by > 0
        ? Step.to(state.with(moved), new Task.Find(moved.words(), moved.last()))
        : Step.to(state.with(moved));
  }

  private static Step day(State state) {
    return state
        .pages()
        .found()
        .pointedAt()
        .map(Session::work)
        .map(work -> day(state.with(Focus.DAY), work))
        .orElseGet(() -> Step.to(state.home()));
  }

  private static Step day(State state, Work work) {
    Sheet there = state.sheet().on(work.date()).of(work.person());
    return DayKeys.read(state, there.seeking(work.startMinute()));
  }
}
