package motebook.screen.state;

import java.util.List;
import java.util.Optional;
import motebook.screen.state.Notice.Tone;

/** What keys do on the day and on the week alike. */
final class BaseKeys {
  private BaseKeys() {}

  static Step line(State state) {
    return LineKeys.changed(state.with(Focus.LINE), state.line());
  }

  static State opened(State state, Focus page) {
    return state.with(state.sheet().from(0)).with(page);
  }

  /** The page of words, at some part of them. */
  static Step words(State state, String part) {
    State at = state.with(state.pages().with(state.pages().words().on(part)));
    return Step.to(opened(at, Focus.WORDS), new Task.ReadWords(state.sheet().person()));
  }

  static Step leave(State state) {
    return Step.to(state.leaving());
  }

  static Step week(State state) {
    return week(state.with(Focus.WEEK), state.week().on(state.sheet().date()));
  }

  static Step week(State state, WeekSheet week) {
    return Step.to(state.with(week), new Task.ReadWeek(week.monday(), state.sheet().person()));
  }

  static Step favourites(State state) {
    return Step.to(state.with(state.pages().pointingAtFavourite(0)).with(Focus.FAVOURITES));
  }

  static Step settings(State state) {
    return Step.to(state, new Task.OpenSettings(Form.Kind.SETTINGS));
  }

  static Step ask(State state, Prompt.Kind kind) {
    return Step.to(state.with(new Prompt(kind, Line.EMPTY, "")).with(Focus.PROMPT));
  }

  /** The next person's day; empty where there is nobody else. */
  static Optional<Sheet> nextPerson(State state) {
    List<String> people = state.sheet().people();
    if (people.size() < 2) {
      return Optional.empty();
    }
    int next = (people.indexOf(state.sheet().person()) + 1) % people.size();
    return Optional.of(state.sheet().of(people.get(next)));
  }

  static Step nobodyElse(State state) {
    return Step.to(state.saying("There is nobody else in the book.", Tone.DONE));
  }
}
