package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.screen.state.Notice.Tone;

/** The keys of the line that is being typed. */
final class LineKeys {
  /** The key of the page of words, wherever something is typed. */
  static final Key WORDS = Key.control('n');

  private static final Typing TYPING =
      new Typing(State::line, LineKeys::changed, (state, line) -> Step.to(state.with(line)));

  static final List<Binding> ALL =
      Stream.concat(
              Stream.of(
                  on(Key.Name.ENTER, "Enter", "log it", "log what is read back", LineKeys::log),
                  on(
                      Key.Name.TAB,
                      "Tab",
                      "complete",
                      "finish the word; again for another",
                      TYPING.completed(1)),
                  on(
                      Key.Name.ESCAPE,
                      "Esc",
                      "back",
                      "back to the day; the line stays",
                      LineKeys::close),
                  on(Key.Name.UP, "↑", "earlier lines", "a line you said before", recalled(1)),
                  on(Key.Name.DOWN, "↓", "", "a line you said after that", recalled(-1)),
                  on(
                      Key.Name.F1,
                      "F1",
                      "help",
                      "these keys",
                      s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
                  on(
                      WORDS,
                      "Ctrl-N",
                      "words",
                      "the words that can be said here",
                      s -> BaseKeys.words(s, WordsSheet.wanted(s.line().text()))),
                  on(Key.Name.BACK_TAB, "Shift-Tab", "", "the choice before", TYPING.completed(-1)),
                  on(Key.control('c'), "Ctrl-C", "", "quit; the line is kept", BaseKeys::leave)),
              TYPING.keys().stream())
          .toList();

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

  /** Puts a text into the line to be changed there, unless something is being typed already. */
  static Step offered(State state, String text) {
    return state.line().blank()
        ? changed(state.with(Focus.LINE), Line.of(text))
        : Step.to(
            state.saying(
                "A line is being typed: log it or clear it first, then try again.", Tone.WRONG));
  }

  private static Function<State, Step> recalled(int by) {
    return state -> {
      List<String> lines = state.sheet().page().map(p -> p.ready().recent()).orElse(List.of());
      Line line = state.line().recalled(lines, by);
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
    return Step.to(state.home());
  }
}
