package motebook.entry;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Words for masks at large: {@code a mask}, {@code my respirator}. */
final class MaskTalk {
  private static final Set<String> WORN = Set.of("mask", "respirator", "masks", "dustmask");

  private MaskTalk() {}

  /** Index after "mask", "dust mask" and the like; the same for something else. */
  static int past(Line line, int index) {
    int at = line.is(index, "dust") ? index + 1 : index;
    return general(line, at) ? at + 1 : index;
  }

  /**
   * What is worn by the words from an index on. "A mask" or "a respirator" alone may be any that
   * the book holds, whichever of them is called so.
   */
  static List<Vocabulary.Match> worn(Vocabulary held, Line line, int from) {
    List<Vocabulary.Match> matches = held.at(line, from);
    boolean called = matches.stream().anyMatch(match -> match.exact() && match.to() == from + 1);
    if (called || !general(line, from) || held.entries().isEmpty()) {
      return matches;
    }
    return Stream.concat(
            Stream.of(new Vocabulary.Match(from + 1, false, held.entries())),
            matches.stream().filter(match -> match.to() > from + 1))
        .toList();
  }

  private static boolean general(Line line, int index) {
    return index < line.size() && WORN.contains(line.token(index).word());
  }
}
