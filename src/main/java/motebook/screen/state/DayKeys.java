package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.Optional;
import motebook.model.Session;
import motebook.report.Wording;
import motebook.screen.state.Notice.Tone;

/** The keys of the day. */
final class DayKeys {
  private static final int SOME = 8;

  static final List<Binding> ALL =
      List.of(
          on(
              Key.Name.ENTER,
              "Enter",
              "edit",
              "change the session that is pointed at, in a form",
              DayKeys::edit),
          on(
              Key.Name.DELETE,
              "Del",
              "delete",
              "delete the session that is pointed at, after a question",
              DayKeys::delete),
          on(
              Key.control('r'),
              "Ctrl-R",
              "again",
              "log the same work again, ending now",
              DayKeys::again),
          BaseKeys.STOPWATCH,
          BaseKeys.UNDO,
          new Binding(
              FavouriteKeys.FUNCTION_KEYS,
              "F2-F9",
              "log",
              "log the first favourite, the second, …",
              FavouriteKeys::byFunctionKey),
          on(
              Key.control('k'),
              "Ctrl-K",
              "keep",
              "keep this work as a favourite, under a name",
              DayKeys::keep),
          on(
              Key.control('o'),
              "Ctrl-O",
              "cautions",
              "set the cautions aside for this day; bring them back",
              DayKeys::cautions),
          on('n', "notes", "cautions and remarks in full", DayKeys::notes),
          on('f', "form", "log work field by field", DayKeys::form),
          on('p', "person", "the next person's day", DayKeys::nextPerson),
          on('r', "room", "the air of the day's next place", DayKeys::nextPlace),
          on('t', "today", "back to today", DayKeys::today),
          on(Key.Name.LEFT, "←", "", "the day before", s -> day(s, -1)),
          on(Key.Name.RIGHT, "→", "", "the day after", s -> day(s, 1)),
          on(Key.Name.UP, "↑", "", "the session before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the session after", s -> point(s, 1)),
          on(Key.Name.PAGE_UP, "PgUp", "", "some sessions back", s -> point(s, -SOME)),
          on(Key.Name.PAGE_DOWN, "PgDn", "", "some sessions on", s -> point(s, SOME)),
          on(Key.Name.HOME, "Home", "", "back to today", DayKeys::today));

  private DayKeys() {}

  private static Step day(State state, int by) {
    return read(state, state.sheet().on(state.sheet().date().plusDays(by)));
  }

  /** The day, from wherever one is. */
  static Step open(State state) {
    return read(state.with(Focus.DAY), state.sheet());
  }

  static Step today(State state) {
    return read(state.with(Focus.DAY), state.sheet().on(state.today()));
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

  static Step nextPerson(State state) {
    return BaseKeys.nextPerson(state)
        .map(sheet -> read(state, sheet))
        .orElseGet(() -> BaseKeys.nobodyElse(state));
  }

  static Step nextPlace(State state) {
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
    return Step.to(
        state.saying(
            "No session of yours is pointed at. Type what you did, such as: 40m drilling of oak",
            Tone.DONE));
  }

  /** The work that is pointed at where the day is shown, else what was done last. */
  static Step again(State state) {
    Optional<Session> shown = state.focus() == Focus.DAY ? pointedAt(state) : Optional.empty();
    long session = shown.map(Session::id).orElse(0L);
    return Step.to(state, new Task.LogAgain(session, state.sheet().person()));
  }

  static Step form(State state) {
    Sheet sheet = state.sheet();
    return Step.to(state, new Task.OpenForm(Optional.empty(), sheet.date(), sheet.person()));
  }

  static Step edit(State state) {
    Sheet sheet = state.sheet();
    return pointedAt(state)
        .map(
            session ->
                Step.to(
                    state, new Task.OpenForm(Optional.of(session), sheet.date(), sheet.person())))
        .orElseGet(() -> nothingThere(state));
  }

  static Step delete(State state) {
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

  static Step keep(State state) {
    return pointedAt(state).isPresent()
        ? BaseKeys.ask(state, Prompt.Kind.NAME)
        : nothingThere(state);
  }

  static Step cautions(State state) {
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
