package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The keys that change what is typed, wherever something is typed.
 *
 * @param line finds what is typed
 * @param changed what follows when it has become something else
 * @param moved what follows when only the caret stands elsewhere
 */
record Typing(
    Function<State, Line> line,
    BiFunction<State, Line, Step> changed,
    BiFunction<State, Line, Step> moved) {

  List<Binding> keys() {
    return List.of(
        on(Key.control('u'), "Ctrl-U", "clear", "empty the line", edit(any -> Line.EMPTY)),
        on(Key.control('w'), "Ctrl-W", "", "delete the word before", edit(Line::withoutWord)),
        on(
            Key.Name.BACKSPACE,
            "Backspace",
            "",
            "delete the character before",
            edit(Line::backspace)),
        on(Key.Name.DELETE, "Delete", "", "delete the character under it", edit(Line::delete)),
        on(Key.Name.LEFT, "←", "", "one character back", move(Line::left)),
        on(Key.Name.RIGHT, "→", "", "one character on", move(Line::right)),
        on(Key.Name.HOME, "Home", "", "to the beginning", move(Line::home)),
        on(Key.Name.END, "End", "", "to the end", move(Line::end)));
  }

  private Function<State, Step> edit(UnaryOperator<Line> change) {
    return state -> changed.apply(state, change.apply(line.apply(state)));
  }

  private Function<State, Step> move(UnaryOperator<Line> change) {
    return state -> moved.apply(state, change.apply(line.apply(state)));
  }

  /** The next completion (or the one before). */
  Function<State, Step> completed(int by) {
    return state -> {
      Line before = line.apply(state);
      Line after = before.completed(by);
      return after.equals(before) ? Step.to(state) : changed.apply(state, after);
    };
  }
}
