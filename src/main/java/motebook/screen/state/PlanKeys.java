package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import motebook.screen.state.Notice.Tone;

/** The keys of the page of plans. */
final class PlanKeys {
  private static final int SOME = 5;

  static final List<Binding> ALL =
      List.of(
          on(
              Key.Name.ENTER,
              "Enter",
              "another way",
              "say another way, or other work; a line that is typed here becomes one as well",
              PlanKeys::ask),
          on(
              Key.control('l'),
              "Ctrl-L",
              "into the line",
              "put it into the line of the day, to log it there",
              PlanKeys::intoLine),
          on(Key.Name.DELETE, "Del", "drop", "drop the one that is pointed at", PlanKeys::drop),
          on(Key.Name.UP, "↑", "", "the one before", s -> point(s, -1)),
          on(Key.Name.DOWN, "↓", "", "the one after", s -> point(s, 1)),
          on(
              Key.Name.PAGE_DOWN,
              "PgDn",
              "",
              "further down in what it brings",
              s -> scroll(s, SOME)),
          on(Key.Name.PAGE_UP, "PgUp", "", "further up", s -> scroll(s, -SOME)));

  /** Enter while something is typed here: nothing on this page is written. */
  static final Binding COMPARE =
      on(
          Key.Name.ENTER,
          "Enter",
          "compare",
          "hold what is typed against the other ways; nothing is written",
          PlanKeys::compare);

  private PlanKeys() {}

  private static Step compare(State state) {
    Line line = state.line();
    return line.blank() || line.sent() || Acts.of(line.text()).isPresent()
        ? LineKeys.enter(state)
        : reckoned(state.with(line.sending()), state.pages().plan().and(line.text().strip()));
  }

  /** The plans there are, reckoned anew; without any the question for one. */
  static Step open(State state) {
    return state.pages().plan().lines().isEmpty() || state.focus() == Focus.PLAN
        ? ask(state)
        : show(state);
  }

  /** The page itself, whether there are plans or not. */
  static Step show(State state) {
    State shown = state.with(Focus.PLAN);
    List<String> lines = state.pages().plan().typed();
    return lines.isEmpty() ? Step.to(shown) : reckoned(shown, lines);
  }

  private static Step ask(State state) {
    return BaseKeys.ask(state, Prompt.Kind.PLAN);
  }

  private static Step reckoned(State state, List<String> lines) {
    return Step.to(state, new Task.Plan(lines, state.sheet().person()));
  }

  private static Step intoLine(State state) {
    return state
        .pages()
        .plan()
        .pointedAt()
        .map(line -> DayKeys.open(state).then(s -> LineKeys.offered(s, line.again())))
        .orElseGet(() -> Step.to(state));
  }

  private static Step drop(State state) {
    if (state.pages().plan().lines().isEmpty()) {
      return Step.to(state);
    }
    List<String> others = state.pages().plan().others();
    return others.isEmpty()
        ? Step.to(
            state
                .with(PlanSheet.NOTHING)
                .saying("No plan is left; the word plan begins another.", Tone.DONE))
        : reckoned(state, others);
  }

  private static Step point(State state, int by) {
    PlanSheet plan = state.pages().plan();
    return Step.to(state.with(plan.pointing(plan.chosen() + by)));
  }

  private static Step scroll(State state, int by) {
    PlanSheet plan = state.pages().plan();
    return Step.to(state.with(plan.from(plan.top() + by)));
  }
}
