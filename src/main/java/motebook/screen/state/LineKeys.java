package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.screen.state.Notice.Tone;

/** The keys of the line that is being typed. */
final class LineKeys {
  /** The key of the page of words, wherever something is typed. */
  static final Key WORDS = Key.control('n');

  private static final Key RECALL = Key.control('p');

  static final Binding EARLIER =
      on(
          RECALL,
          "Ctrl-P",
          "earlier line",
          "a line you said before; again for another",
          recalled(1));

  private static final Typing TYPING =
      new Typing(State::line, LineKeys::changed, (state, line) -> Step.to(state.with(line)));

  /** Empties the line, which may stand there closed as well. */
  static final Binding CLEAR = TYPING.keys().get(0);

  private static final List<Binding> TYPED =
      Stream.concat(
              Stream.of(
                  on(
                      Key.Name.ENTER,
                      "Enter",
                      "log it",
                      "log what is read back, or do what the word says",
                      LineKeys::enter),
                  on(
                      Key.Name.TAB,
                      "Tab",
                      "complete",
                      "finish the word; again for another",
                      TYPING.completed(1)),
                  on(
                      Key.Name.UP,
                      "↑",
                      "",
                      "an older one, while an earlier line stands here",
                      recalled(1)),
                  on(Key.Name.DOWN, "↓", "", "a newer one", recalled(-1)),
                  EARLIER,
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
                  on(
                      Key.control('c'),
                      "Ctrl-C",
                      "quit",
                      "quit; the line is kept",
                      BaseKeys::leave)),
              TYPING.keys().stream())
          .toList();

  private static final Binding LETTERS =
      on(
          Key.Name.ESCAPE,
          "Esc",
          "letter keys",
          "close the line, so that letters go to the page; what stands in it stays",
          s -> Step.to(s.opening(false)));

  /** The keys of the line while something stands in it. */
  static final List<Binding> ALL =
      Stream.concat(Stream.of(TYPED.get(0), TYPED.get(1), LETTERS), TYPED.stream().skip(2))
          .toList();

  /** The keys of the line while it is open and nothing stands in it. */
  static final List<Binding> EMPTY = List.of(LETTERS);

  /** The keys of the line while it is closed. */
  static final List<Binding> CLOSED =
      List.of(
          on(
              Key.Name.ESCAPE,
              "Esc",
              "type",
              "open the line again",
              s -> changed(s.opening(true), s.line())),
          new Binding(
              IntStream.rangeClosed('0', '9').mapToObj(Key::of).toList(),
              "0-9",
              "",
              "open the line and go into it",
              (state, key) -> typed(state.opening(true), key.typed())));

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
    return typed(state.opening(true), text);
  }

  static Step changed(State state, Line line) {
    String person = state.sheet().person();
    return Step.to(
        state.with(line),
        state.focus() == Focus.PLAN
            ? new Task.ReadPlan(line.text(), person)
            : new Task.ReadLine(line.text(), person));
  }

  /** Puts a text into the line to be changed there, unless something is being typed already. */
  static Step offered(State state, String text) {
    return state.line().blank()
        ? changed(state.opening(true), Line.of(text))
        : Step.to(
            state.saying(
                "A line is being typed: log it or clear it first, then try again.", Tone.WRONG));
  }

  private static Function<State, Step> recalled(int by) {
    return state -> {
      List<String> lines = state.sheet().page().map(p -> p.ready().recent()).orElse(List.of());
      Line line = state.line().recalled(lines, by);
      return line.equals(state.line()) ? Step.to(state) : changed(state.opening(true), line);
    };
  }

  static Step enter(State state) {
    Line line = state.line();
    Optional<Act> act = Acts.of(line.text());
    if (line.sent()) {
      return Step.to(state);
    } else if (line.blank()) {
      return Step.to(state.with(Line.EMPTY));
    }
    return act.map(found -> found.act().apply(state.with(Line.EMPTY)))
        .orElseGet(
            () ->
                Step.to(
                    state.with(line.sending()),
                    new Task.LogLine(line.text(), state.sheet().person())));
  }
}
