package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import motebook.screen.state.Notice.Tone;

/**
 * The keys that answer a question: y or n and then Enter. Every other key goes where it always
 * goes.
 */
final class QuestionKeys {
  static final List<Binding> ALL =
      List.of(
          new Binding(
              List.of(Key.of('y'), Key.of('Y')),
              "y Enter",
              "do it",
              "y and then Enter: yes, do it; whatever else is typed goes into the line",
              QuestionKeys::typed),
          new Binding(
              List.of(Key.of('n'), Key.of('N'), Key.of('o'), Key.of('O')),
              "n Enter",
              "",
              "n or no and then Enter: leave it as it is",
              QuestionKeys::typed),
          on(Key.Name.ESCAPE, "Esc", "leave it", "no, leave it as it is", QuestionKeys::no),
          on(Key.Name.ENTER, "Enter", "", "after y: do it; else leave it", QuestionKeys::enter),
          on(Key.control('c'), "Ctrl-C", "quit", "quit; nothing is done", BaseKeys::leave));

  private QuestionKeys() {}

  private static Step typed(State state, Key key) {
    return state
        .asked()
        .flatMap(asked -> asked.answered(key.typed(), state.line()))
        .map(asked -> LineKeys.typed(state.asked(Optional.of(asked)), key.typed()))
        .orElseGet(() -> Update.acted(state.asked(Optional.empty()), key));
  }

  private static Step enter(State state) {
    Asked asked = state.asked().orElseThrow();
    return asked.yes()
        ? Step.to(closed(state).with(before(state)), asked.question().task())
        : no(state);
  }

  private static Step no(State state) {
    Asked asked = state.asked().orElseThrow();
    return Step.to(closed(state).with(before(state)).saying(asked.question().left(), Tone.DONE));
  }

  private static Line before(State state) {
    return state.asked().flatMap(Asked::before).orElse(state.line());
  }

  private static State closed(State state) {
    return state.asked(Optional.empty());
  }
}
