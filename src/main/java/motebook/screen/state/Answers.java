package motebook.screen.state;

import motebook.screen.state.Notice.Tone;

/** What follows from the answers of tasks. */
final class Answers {
  private Answers() {}

  /** The line has become a session: it is empty again, and the day of the session is shown. */
  static Step logged(State state, Message.Logged logged) {
    Sheet there = state.sheet().on(logged.work().date()).of(logged.work().person());
    State said =
        state
            .with(Line.EMPTY)
            .keeping("")
            .with(Focus.DAY)
            .saying("Logged: " + logged.said(), Tone.DONE);
    Step read = DayKeys.read(said, there);
    return Step.to(read.state(), read.tasks().get(0), new Task.KeepDraft(""));
  }

  static Step notLogged(State state, Message.NotLogged not) {
    return not.text().equals(state.line().text())
        ? Step.to(state.with(state.line().refused(not.fault())))
        : Step.to(state);
  }

  static Step undoFound(State state, Message.UndoFound found) {
    if (state.focus() != Focus.DAY) {
      return Step.to(state);
    }
    return found
        .change()
        .map(change -> Step.to(state.asking(new Question.TakeBack(change))))
        .orElseGet(() -> Step.to(state.saying("There is nothing to take back.", Tone.DONE)));
  }

  static Step undone(State state, Message.Undone undone) {
    String said =
        undone
            .what()
            .map(what -> "Taken back: " + what + ".")
            .orElse("Something else was changed in the meantime; nothing was taken back.");
    return DayKeys.read(state.saying(said, Tone.DONE), state.sheet());
  }

  static Step linesRead(State state, Message.LinesRead read) {
    return Step.to(state.asking(new Question.LogLines(read.lines(), read.person(), read.said())));
  }

  /** Shows the day of the last of them. */
  static Step linesLogged(State state, Message.LinesLogged logged) {
    String said = "Logged " + logged.count() + " sessions as one change.";
    Sheet there = state.sheet().on(logged.last().date()).of(logged.last().person());
    return DayKeys.read(state.saying(said, Tone.DONE), there);
  }

  static Step failed(State state, Message.Failed failed) {
    return Step.to(state.saying(failed.sentence(), Tone.WRONG));
  }
}
