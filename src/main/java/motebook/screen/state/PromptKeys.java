package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Session;
import motebook.screen.state.Notice.Tone;

/** The keys of a short question that is answered by typing. */
final class PromptKeys {
  private static final Typing TYPING =
      new Typing(
          state -> state.pages().prompt().line(),
          PromptKeys::changed,
          (state, line) -> Step.to(state.with(state.pages().prompt().with(line))));

  static final List<Binding> ALL =
      Stream.concat(
              Stream.of(
                  on(Key.Name.ENTER, "Enter", "do it", "do what was typed", PromptKeys::answer),
                  on(
                      Key.Name.TAB,
                      "Tab",
                      "complete",
                      "finish the word; again for another",
                      TYPING.completed(1)),
                  on(Key.Name.ESCAPE, "Esc", "back", "leave it", s -> Step.to(s.under())),
                  on(Key.Name.BACK_TAB, "Shift-Tab", "", "the choice before", TYPING.completed(-1)),
                  on(
                      LineKeys.WORDS,
                      "Ctrl-N",
                      "",
                      "the words that can be said here",
                      s -> BaseKeys.words(s, wanted(s))),
                  on(
                      Key.Name.F1,
                      "F1",
                      "help",
                      "these keys",
                      s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
                  on(Key.control('c'), "Ctrl-C", "quit", "quit", BaseKeys::leave)),
              TYPING.keys().stream())
          .toList();

  private PromptKeys() {}

  // What is started is said without how long it takes.
  private static String wanted(State state) {
    String text = state.pages().prompt().line().text();
    return text.isBlank() ? WordsSheet.OPENING.key() : WordsSheet.wanted(text);
  }

  static Step typed(State state, String text) {
    return changed(state, state.pages().prompt().line().typed(text));
  }

  static Step changed(State state, Line line) {
    State typed = state.with(state.pages().prompt().with(line));
    String person = state.sheet().person();
    return switch (state.pages().prompt().kind()) {
      case START -> Step.to(typed, new Task.ReadStart(line.text(), person));
      case PLAN -> Step.to(typed, new Task.ReadPlan(line.text(), person));
      default -> Step.to(typed);
    };
  }

  private static Step answer(State state) {
    Prompt prompt = state.pages().prompt();
    String text = prompt.line().text().strip();
    boolean mayBeEmpty = prompt.kind() == Prompt.Kind.FIND;
    return text.isEmpty() && !mayBeEmpty
        ? Step.to(state.home().saying(prompt.kind().unsaid(), Tone.DONE))
        : answer(state, prompt, text);
  }

  private static Step answer(State state, Prompt prompt, String text) {
    String person = state.sheet().person();
    return switch (prompt.kind()) {
      case START -> Step.to(state, new Task.Start(text, person));
      case PLAN -> Step.to(state, new Task.Plan(state.pages().plan().and(text), person));
      case GO_TO -> Step.to(state, new Task.GoTo(text));
      case FIND -> Step.to(state, new Task.Find(text, Optional.empty()));
      case STOPPED, PAUSED ->
          Step.to(state, new Task.EndStretch(text, person, prompt.kind() == Prompt.Kind.STOPPED));
      case NAME -> name(state, text);
    };
  }

  private static Step name(State state, String name) {
    Optional<Session> session = DayKeys.pointedAt(state);
    return session
        .map(found -> Step.to(state, new Task.AddFavourite(name, found)))
        .orElseGet(() -> Step.to(state.home()));
  }
}
