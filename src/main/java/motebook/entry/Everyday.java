package motebook.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.reference.EverydayWord;
import motebook.reference.EverydayWords;

/**
 * Words such as "cut" or "cleaned up", which say nothing beside an operation and too little alone.
 */
final class Everyday {
  private static final int LONGEST = 3;

  private Everyday() {}

  private static final class Known {
    static final Map<String, EverydayWord> WORDS = words();

    private static Map<String, EverydayWord> words() {
      Map<String, EverydayWord> words = new HashMap<>();
      EverydayWords.shipped().all().forEach(row -> row.words().forEach(w -> words.put(w, row)));
      return words;
    }
  }

  /** Index after such words; the same for none. */
  static int past(Line line, int index) {
    for (int to = Math.min(line.size(), index + LONGEST); to > index; to--) {
      if (Known.WORDS.containsKey(line.words(index, to))) {
        return to;
      }
    }
    return index;
  }

  /** Which operations the first such words of a line may mean. */
  static Optional<Refusing> first(Line line) {
    return all(line).findFirst();
  }

  /** The first words of a line, before its note, that name work to which no operation is near. */
  static Optional<Refusing> unlikeAny(Line line) {
    return all(line).filter(open -> open.word().operations().isEmpty()).findFirst();
  }

  private static Stream<Refusing> all(Line line) {
    return IntStream.range(0, line.size())
        .takeWhile(index -> !line.is(index, "note"))
        .filter(index -> past(line, index) > index)
        .mapToObj(
            index -> {
              int to = past(line, index);
              return new Refusing(index, to, Known.WORDS.get(line.words(index, to)));
            });
  }

  /**
   * Words that leave the operation open.
   *
   * @param from index of the first
   * @param to index after the last
   * @param word what they may mean
   */
  record Refusing(int from, int to, EverydayWord word) {}

  /** Whether the first such words of a line name work that has no figures of its own. */
  static boolean isNearest(Line line) {
    return first(line).filter(open -> open.word().nearest()).isPresent();
  }
}
