package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import motebook.screen.state.Notice.Tone;

/** The keys of a form. */
final class FormKeys {
  static final List<Binding> ALL =
      List.of(
          on(Key.Name.ENTER, "Enter", "save", "write it into the book", FormKeys::save),
          on(Key.Name.DOWN, "↓", "next field", "the next field", s -> go(s, 1)),
          on(Key.Name.RIGHT, "→", "choose", "the next choice for this field", choose(1)),
          on(Key.Name.ESCAPE, "Esc", "leave", "leave it; nothing is written", FormKeys::leave),
          on(Key.Name.UP, "↑", "", "the field before", s -> go(s, -1)),
          on(Key.Name.LEFT, "←", "", "the choice before", choose(-1)),
          on(Key.Name.TAB, "Tab", "", "the next field", s -> go(s, 1)),
          on(Key.Name.BACK_TAB, "Shift-Tab", "", "the field before", s -> go(s, -1)),
          on(
              Key.Name.BACKSPACE,
              "Backspace",
              "",
              "delete the last character",
              edit(Line::backspace)),
          on(Key.control('w'), "Ctrl-W", "", "delete the last word", edit(Line::withoutWord)),
          on(Key.control('u'), "Ctrl-U", "clear", "empty the field", edit(any -> Line.EMPTY)),
          on(Key.Name.F1, "F1", "help", "these keys", s -> Step.to(BaseKeys.opened(s, Focus.HELP))),
          on(
              LineKeys.WORDS,
              "Ctrl-N",
              "",
              "the words that a line understands",
              s -> BaseKeys.words(s, form(s).field().words())),
          on(Key.control('c'), "Ctrl-C", "", "quit; nothing is written", BaseKeys::leave));

  private FormKeys() {}

  private static Form form(State state) {
    return state.pages().form().orElseThrow();
  }

  static Step typed(State state, String text) {
    return form(state).waiting() ? Step.to(state) : changed(state, form(state).typed(text));
  }

  // An answer is checked when its field is left.
  private static Step go(State state, int by) {
    Form left = form(state);
    if (left.waiting()) {
      return Step.to(state.with(left.waiting(false)));
    }
    State gone = state.with(left.on(left.at() + by));
    return left.isSession() || left.isGear()
        ? Step.to(gone)
        : Step.to(gone, new Task.CheckField(left, left.field().key()));
  }

  private static Function<State, Step> choose(int by) {
    return state -> changed(state, field -> field.chosen(by));
  }

  private static Function<State, Step> edit(UnaryOperator<Line> change) {
    return state -> changed(state, field -> field.with(change.apply(field.line())));
  }

  private static Step changed(State state, UnaryOperator<Field> change) {
    return changed(state, form(state).changed(change));
  }

  private static Step changed(State state, Form form) {
    return form.isSession()
        ? Step.to(state.with(form), new Task.ReadForm(form, state.sheet().person()))
        : Step.to(state.with(form));
  }

  private static Step save(State state) {
    Form form = form(state);
    return form.waiting()
        ? Step.to(state.with(form.waiting(false)))
        : Step.to(state, new Task.SaveForm(form, state.sheet().person()));
  }

  private static Step leave(State state) {
    if (form(state).isGear()) {
      return Step.to(state.with(Focus.CARE).saying("Nothing was changed.", Tone.DONE));
    }
    return form(state).kind() == Form.Kind.FIRST
        ? Step.to(
            state
                .home()
                .saying("Left as it is. The word settings in the line opens them.", Tone.DONE))
        : Step.to(state.home().saying("Nothing was changed.", Tone.DONE));
  }
}
