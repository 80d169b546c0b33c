package motebook.screen.state;

import java.util.Optional;
import motebook.desk.Timing;
import motebook.screen.state.Notice.Tone;

/** What keys do with the stopwatch. */
final class WatchKeys {
  /** Stops it, wherever one is; it works while one is under way. */
  static final Binding STOP =
      Binding.on(
          Key.control('x'),
          "Ctrl-X",
          "stop",
          "stop the stopwatch and log what it timed; so does the word stop",
          WatchKeys::stop);

  private WatchKeys() {}

  /** Starts the stopwatch after asking what for; pauses one that runs; goes on with one paused. */
  static Step press(State state) {
    return underWay(state)
        ? Step.to(state, new Task.PauseOrGoOn(state.sheet().person()))
        : BaseKeys.ask(state, Prompt.Kind.START)
            .then(s -> PromptKeys.changed(s, s.pages().prompt().line()));
  }

  static Step stop(State state) {
    return Step.to(state, new Task.Stop(state.sheet().person()));
  }

  /** Pauses or goes on, but only from the one to the other. */
  static Step pause(State state, boolean goingOn) {
    boolean running = timing(state).map(timing -> timing.watch().running()).orElse(!goingOn);
    String said =
        !underWay(state)
            ? "No stopwatch is under way; start begins one."
            : running ? "The stopwatch runs already." : "The stopwatch is paused already.";
    return underWay(state) && running != goingOn
        ? Step.to(state, new Task.PauseOrGoOn(state.sheet().person()))
        : Step.to(state.saying(said, Tone.DONE));
  }

  /** Starts one; one that is under way stays as it is. */
  static Step start(State state) {
    return underWay(state)
        ? Step.to(state.saying("A stopwatch is under way already.", Tone.DONE))
        : press(state);
  }

  private static boolean underWay(State state) {
    return timing(state).isPresent();
  }

  private static Optional<Timing> timing(State state) {
    return state.sheet().page().flatMap(page -> page.ready().timing());
  }
}
