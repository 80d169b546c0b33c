package motebook.screen.state;

import static motebook.screen.state.Binding.on;

import java.util.List;
import motebook.screen.state.Notice.Tone;

/** The keys of the question whether a change is to be taken back. */
final class UndoKeys {
  static final List<Binding> ALL =
      List.of(
          on('y', "take it back", "take it back", UndoKeys::undo),
          on('n', "leave it", "leave it as it is", UndoKeys::keep),
          on(Key.Name.ESCAPE, "Esc", "", "leave it as it is", UndoKeys::keep),
          on(Key.control('c'), "Ctrl-C", "", "quit; nothing is taken back", DayKeys::leave));

  private UndoKeys() {}

  private static Step undo(State state) {
    Task[] tasks = state.undo().stream().map(Task.Undo::new).toArray(Task[]::new);
    return Step.to(state.with(Focus.DAY).quiet(), tasks);
  }

  private static Step keep(State state) {
    return Step.to(state.with(Focus.DAY).saying("Nothing was taken back.", Tone.DONE));
  }
}
