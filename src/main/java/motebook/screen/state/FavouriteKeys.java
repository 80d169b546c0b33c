package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import motebook.model.Favourite;
import motebook.screen.state.Notice.Tone;

/** The keys of the list of favourites, and those that log one from the day. */
final class FavouriteKeys {
  static final List<Key> FUNCTION_KEYS =
      List.of(
          Key.of(Key.Name.F2),
          Key.of(Key.Name.F3),
          Key.of(Key.Name.F4),
          Key.of(Key.Name.F5),
          Key.of(Key.Name.F6),
          Key.of(Key.Name.F7),
          Key.of(Key.Name.F8),
          Key.of(Key.Name.F9));

  static final List<Binding> ALL =
      List.of(
          on(
              Key.Name.ENTER,
              "Enter",
              "into the line",
              "put it into the line, to log it",
              FavouriteKeys::intoLine),
          on(
              Key.Name.DELETE,
              "Del",
              "forget",
              "forget this favourite, after a question",
              FavouriteKeys::forget),
          on(Key.Name.ESCAPE, "Esc", "close", "back", s -> Step.to(s.home())),
          on(Key.Name.UP, "↑", "", "the one before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the one after", s -> point(s, 1)),
          new Binding(
              FUNCTION_KEYS,
              "F2-F9",
              "log",
              "log the first of them, the second, …",
              FavouriteKeys::byFunctionKey));

  private FavouriteKeys() {}

  private static List<Favourite> all(State state) {
    return state.sheet().page().map(DayPage::favourites).orElse(List.of());
  }

  static Step byFunctionKey(State state, Key key) {
    return log(state, FUNCTION_KEYS.indexOf(key));
  }

  private static Step log(State state, int index) {
    return favourite(state, index)
        .map(
            favourite ->
                Step.to(state.home(), new Task.LogAtOnce(favourite.line(), state.sheet().person())))
        .orElseGet(() -> none(state));
  }

  private static Step none(State state) {
    String said =
        all(state).isEmpty()
            ? "There is no favourite yet; Ctrl-K on the day keeps the work that is pointed at."
            : "There are only " + all(state).size() + " favourites.";
    return Step.to(state.saying(said, Tone.DONE));
  }

  private static Optional<Favourite> favourite(State state, int index) {
    List<Favourite> all = all(state);
    return index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
  }

  private static Step intoLine(State state) {
    return favourite(state, state.pages().favourite())
        .map(favourite -> LineKeys.offered(state.home(), favourite.line()))
        .orElseGet(() -> none(state));
  }

  private static Step forget(State state) {
    return favourite(state, state.pages().favourite())
        .map(favourite -> Step.to(state.asking(new Question.Forget(favourite.name()))))
        .orElseGet(() -> none(state));
  }

  private static Step point(State state, int by) {
    return Step.to(state.with(state.pages().pointingAtFavourite(state.pages().favourite() + by)));
  }
}
