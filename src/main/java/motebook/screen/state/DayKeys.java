package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import motebook.model.Session;
import motebook.report.Wording;
import motebook.screen.state.Notice.Tone;

/** The keys of the day. */
final class DayKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "log work", "say what you did, in one line", BaseKeys::line),
          new Binding(
              IntStream.rangeClosed('0', '9').mapToObj(Key::of).toList(),
              "0-9",
              "",
              "the same, beginning with a time: 40m, 1h20, 9:00-9:30",
              (state, key) -> LineKeys.typed(BaseKeys.line(state).state(), key.typed())),
          on('a', "again", "log the same work again, ending now", DayKeys::again),
          on('s', "stopwatch", "start the stopwatch; pause it; go on with it", WatchKeys::press),
          on('x', "", "stop the stopwatch and log what it timed", WatchKeys::stop),
          on('w', "week", "the week of this day", BaseKeys::week),
          on('e', "edit", "change the session that is pointed at", DayKeys::edit),
          on('u', "undo", "take back the last change of the book", DayKeys::undo),
          on('?', "help", "these keys", s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
          on('q', "quit", "leave; an unfinished line is kept", BaseKeys::leave),
          on('d', "delete", "delete the session that is pointed at", DayKeys::delete),
          on('n', "notes", "cautions and remarks in full", DayKeys::notes),
          on('f', "form", "log work field by field", DayKeys::form),
          on('v', "favourites", "the lines you say often", BaseKeys::favourites),
          on('k', "keep", "keep this work as a favourite", DayKeys::keep),
          on('g', "go to", "another day, by its date", s -> BaseKeys.ask(s, Prompt.Kind.GO_TO)),
          on('/', "find", "find earlier work", s -> BaseKeys.ask(s, Prompt.Kind.FIND)),
          on('c', "cautions", "set the cautions aside for this day; back", DayKeys::cautions),
          on('m', "masks", "masks and filters, and what is due", CareKeys::open),
          on('b', "plan", "what work would bring, before it is done", PlanKeys::open),
          on('i', "evidence", "what measurements taught", EvidenceKeys::open),
          on('p', "person", "the next person's day", DayKeys::nextPerson),
          on('r', "room", "the air of the day's next place", DayKeys::nextPlace),
          on('o', "settings", "your own settings", BaseKeys::settings),
          on('t', "today", "back to today", s -> read(s, s.sheet().on(s.today()))),
          on(Key.Name.LEFT, "←", "", "the day before", s -> day(s, -1)),
          on(Key.Name.RIGHT, "→", "", "the day after", s -> day(s, 1)),
          on(Key.Name.UP, "↑", "", "the session before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the session after", s -> point(s, 1)),
          on(Key.Name.PAGE_UP, "PgUp", "", "some sessions back", s -> point(s, -SOME)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "some sessions on", s -> point(s, SOME)),
          new Binding(
              FavouriteKeys.FUNCTION_KEYS,
              "F2-F9",
              "",
              "log the first favourite, the second, …",
              FavouriteKeys::byFunctionKey),
          on('l', "", "log work, too", BaseKeys::line),
          on(Key.Name.F1, "F1", "", "these keys", s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
          on(Key.control('z'), "Ctrl-Z", "", "undo, too", DayKeys::undo),
          on(Key.control('c'), "Ctrl-C", "", "quit, too", BaseKeys::leave));

  private DayKeys() {}

  private static Step day(State state, int by) {
    return read(state, state.sheet().on(state.sheet().date().plusDays(by)));
  }

  static Step read(State state, Sheet sheet) {
    return Step.to(state.with(sheet), new Task.ReadDay(sheet.date(), sheet.person()));
  }

  static Step undo(State state) {
    return Step.to(state, new Task.FindUndo());
  }

  static Step notes(State state) {
    return Step.to(BaseKeys.opened(state, Focus.NOTES));
  }

  private static Step nextPerson(State state) {
    return BaseKeys.nextPerson(state)
        .map(sheet -> read(state, sheet))
        .orElseGet(() -> BaseKeys.nobodyElse(state));
  }

  private static Step nextPlace(State state) {
    boolean several = state.sheet().current().map(page -> page.air().size() > 1).orElse(false);
    return several
        ? Step.to(state.with(state.sheet().nextPlace()))
        : Step.to(state.saying("No other place was worked in on this day.", Tone.DONE));
  }

  private static Step point(State state, int by) {
    return Step.to(state.with(state.sheet().pointing(state.sheet().chosen() + by)));
  }

  static Optional<Session> pointedAt(State state) {
    return state.sheet().current().flatMap(page -> page.own(state.sheet().chosen()));
  }

  private static Step nothingThere(State state) {
    return Step.to(state.saying("There is no session of yours to do that with.", Tone.DONE));
  }

  private static Step again(State state) {
    long session = pointedAt(state).map(Session::id).orElse(0L);
    return Step.to(state, new Task.LogAgain(session, state.sheet().person()));
  }

  private static Step form(State state) {
    Sheet sheet = state.sheet();
    return Step.to(state, new Task.OpenForm(Optional.empty(), sheet.date(), sheet.person()));
  }

  private static Step edit(State state) {
    Sheet sheet = state.sheet();
    return pointedAt(state)
        .map(
            session ->
                Step.to(
                    state, new Task.OpenForm(Optional.of(session), sheet.date(), sheet.person())))
        .orElseGet(() -> nothingThere(state));
  }

  private static Step delete(State state) {
    return pointedAt(state)
        .map(session -> Step.to(state.asking(new Question.Delete(session, said(state)))))
        .orElseGet(() -> nothingThere(state));
  }

  private static String said(State state) {
    return state
        .sheet()
        .current()
        .map(page -> page.report().sessions().get(state.sheet().chosen()).source())
        .map(source -> Wording.span(source.session().work()) + " " + Wording.jobAndControls(source))
        .orElse("");
  }

  private static Step keep(State state) {
    return pointedAt(state).isPresent()
        ? BaseKeys.ask(state, Prompt.Kind.NAME)
        : nothingThere(state);
  }

  private static Step cautions(State state) {
    Sheet sheet = state.sheet();
    List<String> shown =
        sheet
            .current()
            .map(p -> p.cautions().stream().map(c -> c.key()).toList())
            .orElse(List.of());
    boolean aside = sheet.current().map(p -> !p.ready().setAside().isEmpty()).orElse(false);
    if (!shown.isEmpty()) {
      return Step.to(state, new Task.SetAside(sheet.date(), sheet.person(), shown));
    }
    return aside
        ? Step.to(state, new Task.BringBack(sheet.date(), sheet.person()))
        : Step.to(state.saying("This day calls for no cautions.", Tone.DONE));
  }
}
