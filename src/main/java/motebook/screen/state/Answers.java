package motebook.screen.state;

import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import motebook.screen.state.Notice.Tone;

/** What follows from the answers of tasks. */
final class Answers {
  private static final Map<Class<? extends Message>, BiFunction<State, Message, Step>> ALL =
      Map.ofEntries(
          on(Message.DayRead.class, Answers::dayRead),
          on(
              Message.HabitsRead.class,
              (s, m) -> Step.to(s.with(s.sheet().recalling(m.person(), m.recent())))),
          on(Message.WeekRead.class, (s, m) -> Step.to(s.with(s.week().with(m.page())))),
          on(Message.LineRead.class, (s, m) -> Step.to(s.with(s.line().read(m.reading())))),
          on(Message.Logged.class, Answers::logged),
          on(Message.NotLogged.class, Answers::notLogged),
          on(Message.NotLoggedAtOnce.class, Answers::notLoggedAtOnce),
          on(Message.UndoFound.class, Answers::undoFound),
          on(Message.Undone.class, Answers::undone),
          on(Message.LinesRead.class, Answers::linesRead),
          on(Message.LinesLogged.class, Answers::linesLogged),
          on(Message.Changed.class, (s, m) -> again(filled(s).saying(m.said(), Tone.DONE))),
          on(Message.Timed.class, (s, m) -> again(filled(s).saying(m.said(), Tone.DONE))),
          on(
              Message.EndAsked.class,
              (s, m) ->
                  Step.to(s.with(new Prompt(m.kind(), Line.EMPTY, m.about())).with(Focus.PROMPT))),
          on(Message.Amended.class, Answers::amended),
          on(Message.FormOpened.class, (s, m) -> formOpened(s, m.form())),
          on(Message.FormRead.class, Answers::formRead),
          on(Message.FormRefused.class, (s, m) -> form(s, f -> f.refused(m.fault()))),
          on(Message.FieldRefused.class, (s, m) -> form(s, f -> f.refused(m.key(), m.sentence()))),
          on(Message.PromptRead.class, Answers::promptRead),
          on(Message.Planned.class, Answers::planned),
          on(Message.PromptRefused.class, Answers::promptRefused),
          on(Message.CareRead.class, (s, m) -> Step.to(s.with(s.pages().care().with(m.page())))),
          on(
              Message.EvidenceRead.class,
              (s, m) -> Step.to(s.with(s.pages().evidence().with(m.evidence())))),
          on(
              Message.WordsRead.class,
              (s, m) -> Step.to(s.with(s.pages().with(s.pages().words().with(m.parts()))))),
          on(Message.Settled.class, Answers::settled),
          on(Message.GearSaved.class, (s, m) -> settled(s.under(), new Message.Settled(m.said()))),
          on(Message.WentTo.class, Answers::wentTo),
          on(Message.SessionsFound.class, Answers::sessionsFound),
          on(Message.Failed.class, (s, m) -> Step.to(s.saying(m.sentence(), Tone.WRONG))));

  private Answers() {}

  private static <M extends Message>
      Map.Entry<Class<? extends Message>, BiFunction<State, Message, Step>> on(
          Class<M> kind, BiFunction<State, M, Step> answer) {
    return Map.entry(kind, (state, message) -> answer.apply(state, kind.cast(message)));
  }

  static Step follow(State state, Message message) {
    return ALL.get(message.getClass()).apply(state, message);
  }

  private static Step dayRead(State state, Message.DayRead read) {
    State after = state.with(state.sheet().with(read.page()));
    Step step = Step.to(after, new Task.ReadHabits(read.page().person()));
    String before = state.sheet().person();
    return before.isEmpty() || before.equals(after.sheet().person())
        ? step
        : step.then(Answers::follow);
  }

  /** The person that was shown goes by another name: what was read of them is read again. */
  private static Step follow(State state) {
    Step week =
        state.where().base() == Focus.WEEK ? BaseKeys.week(state, state.week()) : Step.to(state);
    return state.typing() ? week.then(s -> LineKeys.changed(s, s.line())) : week;
  }

  /** Leaves what was filled in; a page stays. */
  private static State filled(State state) {
    return state.focus().isFilledIn() ? state.home() : state;
  }

  /** Reads the day again, and the week where that is what is shown. */
  private static Step again(State state) {
    Step day = DayKeys.read(state, state.sheet());
    Step base =
        state.where().base() == Focus.WEEK ? day.then(s -> BaseKeys.week(s, s.week())) : day;
    return base.then(Answers::withCare);
  }

  /** What was written may have moved what is due. */
  private static Step withCare(State state) {
    return Step.to(state, new Task.ReadCare());
  }

  /** The line has become a session: it is empty again, and the day of the session is shown. */
  private static Step logged(State state, Message.Logged logged) {
    Sheet there = state.sheet().on(logged.work().date()).of(logged.work().person());
    boolean typed = state.line().sent();
    State said =
        (typed ? state.with(Line.EMPTY).keeping("") : state)
            .with(Focus.DAY)
            .saying("Logged: " + logged.said(), Tone.DONE);
    Step read = DayKeys.read(said, there.seeking(logged.work().startMinute()));
    Step kept = typed ? read.then(s -> Step.to(s, new Task.KeepDraft(""))) : read;
    return kept.then(Answers::withCare);
  }

  private static Step notLogged(State state, Message.NotLogged not) {
    return not.text().equals(state.line().text())
        ? Step.to(state.with(state.line().refused(not.fault())))
        : Step.to(state);
  }

  /**
   * It goes into the line, where it can be mended, unless something is being typed there; read
   * again, it offers the time at which there was room for it.
   */
  private static Step notLoggedAtOnce(State state, Message.NotLoggedAtOnce not) {
    return state.line().blank() && !state.focus().isFilledIn()
        ? Step.to(
            state.opening(true).with(Line.of(not.text()).refused(not.fault())),
            new Task.ReadLine(not.text(), state.sheet().person()))
        : Step.to(state.saying(not.fault().sentence(), Tone.WRONG));
  }

  private static Step amended(State state, Message.Amended amended) {
    Sheet there = state.sheet().on(amended.work().date()).of(amended.work().person());
    State said = state.with(Focus.DAY).saying("Changed to: " + amended.said(), Tone.DONE);
    return DayKeys.read(said, there.seeking(amended.work().startMinute()));
  }

  // Whoever has typed on since is not asked.
  private static Step undoFound(State state, Message.UndoFound found) {
    if (state.focus().isFilledIn() || state.typing()) {
      return Step.to(state);
    }
    return found
        .change()
        .map(change -> Step.to(state.asking(new Question.TakeBack(change))))
        .orElseGet(() -> Step.to(state.saying("There is nothing to take back.", Tone.DONE)));
  }

  private static Step undone(State state, Message.Undone undone) {
    String said =
        undone
            .what()
            .map(what -> "Taken back: " + what + ".")
            .orElse("Something else was changed in the meantime; nothing was taken back.");
    return again(state.saying(said, Tone.DONE));
  }

  private static Step linesRead(State state, Message.LinesRead read) {
    return Step.to(state.asking(new Question.LogLines(read.lines(), read.person(), read.said())));
  }

  /** Shows the day of the last of them. */
  private static Step linesLogged(State state, Message.LinesLogged logged) {
    Sheet there = state.sheet().on(logged.last().date()).of(logged.last().person());
    State said = state.with(Focus.DAY).saying(logged.said(), Tone.DONE);
    return DayKeys.read(said, there.seeking(logged.last().startMinute())).then(Answers::withCare);
  }

  // The form of the first run must not push away what was begun meanwhile. Where the line is
  // closed, the letters that follow may be the rest of a line that somebody meant to say.
  private static Step formOpened(State state, Form form) {
    boolean busy = state.focus() != state.where().base() || !state.line().blank();
    return form.kind() == Form.Kind.FIRST && busy
        ? Step.to(state)
        : Step.to(state.with(form.waiting(!state.where().open())).with(Focus.FORM));
  }

  private static Step form(State state, UnaryOperator<Form> change) {
    return Step.to(state.pages().form().map(change).map(state::with).orElse(state));
  }

  private static Step formRead(State state, Message.FormRead read) {
    return form(
        state,
        form ->
            form.read(read.reading())
                .offering("controls", read.controls())
                .offering("start", read.starts()));
  }

  private static Step planned(State state, Message.Planned planned) {
    PlanSheet sheet = state.pages().plan().with(planned.lines(), planned.plans());
    boolean asked = state.focus() == Focus.PROMPT || state.focus() == Focus.PLAN;
    State shown = asked ? state.with(sheet).with(Focus.PLAN) : state.with(sheet);
    return state.line().sent()
        ? Step.to(shown.with(Line.EMPTY).keeping(""), new Task.KeepDraft(""))
        : Step.to(shown);
  }

  private static Step promptRead(State state, Message.PromptRead read) {
    if (state.focus() == Focus.PLAN) {
      return Step.to(state.with(state.line().read(read.reading())));
    }
    Prompt prompt = state.pages().prompt();
    return Step.to(state.with(prompt.with(prompt.line().read(read.reading()))));
  }

  private static Step promptRefused(State state, Message.PromptRefused not) {
    if (state.focus() == Focus.PLAN) {
      return state.line().text().strip().equals(not.text())
          ? Step.to(state.with(state.line().refused(not.fault())))
          : Step.to(state);
    }
    Prompt prompt = state.pages().prompt();
    return prompt.line().text().strip().equals(not.text())
        ? Step.to(state.with(prompt.with(prompt.line().refused(not.fault()))))
        : Step.to(state);
  }

  private static Step settled(State state, Message.Settled settled) {
    return DayKeys.read(state.saying(settled.said(), Tone.DONE), state.sheet())
        .then(Answers::withCare);
  }

  private static Step wentTo(State state, Message.WentTo went) {
    State home = state.home();
    return home.where().base() == Focus.WEEK
        ? BaseKeys.week(home, home.week().on(went.date()))
        : DayKeys.read(home, home.sheet().on(went.date()));
  }

  private static Step sessionsFound(State state, Message.SessionsFound answer) {
    if (answer.task().before().isEmpty()) {
      return state.focus() == Focus.PROMPT
          ? Step.to(state.with(Found.of(answer.task().words(), answer.hits())).with(Focus.FOUND))
          : Step.to(state);
    }
    Found found = state.pages().found();
    boolean follows = found.last().equals(answer.task().before());
    return Step.to(follows ? state.with(found.and(answer.hits())) : state);
  }
}
