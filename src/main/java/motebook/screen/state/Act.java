package motebook.screen.state;

import java.util.List;
import java.util.function.Function;

/**
 * What a word in the line does, where the word is all that stands in it.
 *
 * @param words the words that do it, the usual one first
 * @param help what they do, in the help
 * @param act the step that follows, from an empty line
 */
public record Act(List<String> words, String help, Function<State, Step> act) {
  public Act {
    words = List.copyOf(words);
  }
}
