package motebook.screen.state;

import java.util.List;
import java.util.function.Function;

/**
 * What a key does.
 *
 * @param keys the keys that do it
 * @param label how they are written
 * @param word the one or two words beside them in the row of keys; empty where it has no room there
 * @param help what they do, in the help
 * @param act the step that follows
 */
public record Binding(List<Key> keys, String label, String word, String help, Act act) {
  public Binding {
    keys = List.copyOf(keys);
  }

  /** The step that a key leads to. */
  @FunctionalInterface
  public interface Act {
    /** The step from a state by a key. */
    Step by(State state, Key key);
  }

  static Binding on(Key key, String label, String word, String help, Function<State, Step> act) {
    return new Binding(List.of(key), label, word, help, (state, pressed) -> act.apply(state));
  }

  static Binding on(
      Key.Name key, String label, String word, String help, Function<State, Step> act) {
    return on(Key.of(key), label, word, help, act);
  }

  static Binding on(char key, String word, String help, Function<State, Step> act) {
    return on(Key.of(key), Character.toString(key), word, help, act);
  }

  /** Whether it is a letter that only a closed line leaves to the page. */
  boolean isLetter() {
    return keys.stream().anyMatch(key -> key.types() && key.character() != '?');
  }

  /** Whether it can stand in the row of keys. */
  public boolean shown() {
    return !word.isEmpty();
  }
}
