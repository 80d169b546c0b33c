package motebook.screen.state;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What follows from a message.
 *
 * @param state the state after it
 * @param tasks what is to be done, in order
 */
public record Step(State state, List<Task> tasks) {
  public Step {
    tasks = List.copyOf(tasks);
  }

  /** A step that asks for nothing. */
  static Step to(State state) {
    return new Step(state, List.of());
  }

  /** A step that asks for something. */
  static Step to(State state, Task... tasks) {
    return new Step(state, List.of(tasks));
  }

  /** The step that follows from another one after this; the tasks of both are done in order. */
  Step then(Function<State, Step> next) {
    Step after = next.apply(state);
    return new Step(after.state, Stream.concat(tasks.stream(), after.tasks.stream()).toList());
  }
}
