package motebook.reference;

import java.util.List;

/**
 * Words of every day that leave open which operation is meant.
 *
 * @param words the words, each as it may be said
 * @param operations keys of the operations that they may mean; none where nothing comes near
 * @param nearest whether the words name other work, of which those operations come nearest
 * @param advice what else to say to whoever uses them; may be empty
 * @param source where that is printed; says so where it is only common practice
 */
public record EverydayWord(
    List<String> words, List<String> operations, boolean nearest, String advice, String source) {
  public EverydayWord {
    words = List.copyOf(words);
    operations = List.copyOf(operations);
  }
}
