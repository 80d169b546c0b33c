package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import motebook.screen.state.Notice.Tone;

/** The keys that answer a question. */
final class QuestionKeys {
  static final List<Binding> ALL =
      List.of(
          on('y', "yes", "yes, do it", QuestionKeys::yes),
          on('n', "no", "no, leave it as it is", QuestionKeys::no),
          on(Key.Name.ESCAPE, "Esc", "", "no, leave it as it is", QuestionKeys::no),
          on(Key.control('c'), "Ctrl-C", "", "quit; nothing is done", BaseKeys::leave));

  private QuestionKeys() {}

  private static Step yes(State state) {
    Task[] tasks = state.question().stream().map(Question::task).toArray(Task[]::new);
    return Step.to(state.home().quiet(), tasks);
  }

  private static Step no(State state) {
    String left = state.question().map(Question::left).orElse("");
    return Step.to(state.home().saying(left, Tone.DONE));
  }
}
