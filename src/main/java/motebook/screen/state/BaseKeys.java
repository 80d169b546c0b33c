package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.screen.state.Notice.Tone;

/** What keys do on every page alike. */
final class BaseKeys {
  private static final List<Focus> ROUND =
      List.of(Focus.DAY, Focus.WEEK, Focus.CARE, Focus.PLAN, Focus.EVIDENCE);

  static final Binding UNDO =
      on(
          Key.control('z'),
          "Ctrl-Z",
          "undo",
          "take back the last change of the book, after a question",
          DayKeys::undo);
  static final Binding STOPWATCH =
      on(
          Key.control('t'),
          "Ctrl-T",
          "stopwatch",
          "start the stopwatch; pause it; go on with it",
          WatchKeys::press);

  /** The letter that goes to the page on which one is. */
  private static final Map<Focus, String> HERE =
      Map.of(Focus.DAY, "d", Focus.WEEK, "w", Focus.CARE, "m", Focus.EVIDENCE, "i");

  /** The keys that go from page to page, where none lies over another. */
  static final List<Binding> PAGES =
      List.of(
          on(Key.Name.TAB, "Tab", "pages", "day, week, masks, plans, evidence", s -> page(s, 1)),
          on(Key.Name.BACK_TAB, "Shift-Tab", "", "the page before", s -> page(s, -1)),
          on(Key.Name.HOME, "Home", "", "the day", DayKeys::open));

  /** The letters that go to a page, where the line is closed. */
  static final List<Binding> LETTERS =
      List.of(
          on('d', "day", "the day", DayKeys::open),
          on('w', "week", "the week of this day", BaseKeys::week),
          on('m', "masks", "masks and filters, and what is due", CareKeys::open),
          on('b', "plan", "what work would bring, before it is done", PlanKeys::open),
          on('i', "evidence", "what measurements taught", EvidenceKeys::open),
          on('/', "find", "find earlier work", s -> ask(s, Prompt.Kind.FIND)),
          on('g', "go to", "another day or week, by its date", s -> ask(s, Prompt.Kind.GO_TO)),
          on('v', "favourites", "the lines you say often", BaseKeys::favourites),
          on('o', "settings", "your own settings", BaseKeys::settings));

  /** The keys that do the same on every page. */
  static final List<Binding> EVERYWHERE =
      List.of(
          UNDO,
          STOPWATCH,
          on(Key.Name.F1, "F1", "help", "these keys", s -> Step.to(opened(s, Focus.HELP))),
          on('?', "", "these keys", s -> Step.to(opened(s, Focus.HELP))),
          on(
              LineKeys.WORDS,
              "Ctrl-N",
              "words",
              "the words that a line understands",
              s -> words(s, WordsSheet.wanted(s.line().text()))),
          LineKeys.EARLIER,
          on(
              Key.control('c'),
              "Ctrl-C",
              "quit",
              "leave; an unfinished line is kept",
              BaseKeys::leave));

  private BaseKeys() {}

  /** The letters that go to another page. */
  static List<Binding> letters(Focus here) {
    return LETTERS.stream().filter(binding -> !binding.label().equals(HERE.get(here))).toList();
  }

  private static Step page(State state, int by) {
    int next = Math.floorMod(ROUND.indexOf(state.focus()) + by, ROUND.size());
    return switch (ROUND.get(next)) {
      case WEEK -> week(state);
      case CARE -> CareKeys.open(state);
      case PLAN -> PlanKeys.show(state);
      case EVIDENCE -> EvidenceKeys.open(state);
      default -> DayKeys.open(state);
    };
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
