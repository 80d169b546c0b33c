package motebook.screen.state;

import motebook.screen.state.Notice.Tone;

/** What keys do with the stopwatch. */
final class WatchKeys {
  private WatchKeys() {}

  /** Starts the stopwatch after asking what for; pauses one that runs; goes on with one paused. */
  static Step press(State state) {
    return underWay(state)
        ? Step.to(state, new Task.PauseOrGoOn(state.sheet().person()))
        : BaseKeys.ask(state, Prompt.Kind.START)
            .then(s -> PromptKeys.changed(s, s.pages().prompt().line()));
  }

  static Step stop(State state) {
    return underWay(state)
        ? Step.to(state, new Task.Stop(state.sheet().person()))
        : Step.to(state.saying("No stopwatch is under way; s starts one.", Tone.DONE));
  }

  private static boolean underWay(State state) {
    return state.sheet().page().flatMap(page -> page.ready().timing()).isPresent();
  }
}
