package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The keys of the line that is being typed. */
final class LineKeys {
  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "log it", "log what is read back", LineKeys::log),
          on(Key.Name.TAB, "Tab", "complete", "finish the word; again for another", completed(1)),
          on(
              Key.Name.ESCAPE,
              "Esc",
              "back to the day",
              "back to the day; the line stays",
              LineKeys::close),
          on(Key.Name.F1, "F1", "help", "these keys", s -> Step.to(DayKeys.opened(s, Focus.HELP))),
          on(Key.control('u'), "Ctrl-U", "clear", "empty the line", edit(line -> Line.EMPTY)),
          on(Key.Name.BACK_TAB, "Shift-Tab", "", "the choice before", completed(-1)),
          on(Key.control('w'), "Ctrl-W", "", "delete the word before", edit(Line::withoutWord)),
          on(
              Key.Name.BACKSPACE,
              "Backspace",
              "",
              "delete the character before",
              edit(Line::backspace)),
          on(Key.Name.DELETE, "Delete", "", "delete the character under it", edit(Line::delete)),
          on(Key.Name.LEFT, "←", "", "one character back", moved(Line::left)),
          on(Key.Name.RIGHT, "→", "", "one character on", moved(Line::right)),
          on(Key.Name.HOME, "Home", "", "to the beginning", moved(Line::home)),
          on(Key.Name.END, "End", "", "to the end", moved(Line::end)),
          on(Key.control('c'), "Ctrl-C", "", "quit; the line is kept", DayKeys::leave));

  private LineKeys() {}

  static Step typed(State state, String text) {
    return changed(state, state.line().typed(text));
  }

  /** One pasted line is typed; several are read, so that one answer can log them all. */
  static Step pasted(State state, String text) {
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    if (lines.size() > 1) {
      return Step.to(state, new Task.ReadLines(lines, state.sheet().person()));
    }
    return typed(state.focus() == Focus.LINE ? state : state.with(Focus.LINE), text);
  }

  static Step changed(State state, Line line) {
    return Step.to(state.with(line), new Task.ReadLine(line.text(), state.sheet().person()));
  }

  private static Function<State, Step> edit(UnaryOperator<Line> change) {
    return state -> changed(state, change.apply(state.line()));
  }

  private static Function<State, Step> moved(UnaryOperator<Line> change) {
    return state -> Step.to(state.with(change.apply(state.line())));
  }

  private static Function<State, Step> completed(int by) {
    return state -> {
      Line line = state.line().completed(by);
      return line.equals(state.line()) ? Step.to(state) : changed(state, line);
    };
  }

  private static Step log(State state) {
    Line line = state.line();
    if (line.sent()) {
      return Step.to(state);
    }
    return line.blank()
        ? close(state)
        : Step.to(
            state.with(line.sending()), new Task.LogLine(line.text(), state.sheet().person()));
  }

  private static Step close(State state) {
    return Step.to(state.with(Focus.DAY));
  }
}
