package motebook.entry;

import java.util.Set;

/** Words for masks at large: {@code no mask}, {@code without a respirator}, {@code a mask}. */
final class MaskTalk {
  private static final Set<String> NONE = Set.of("no", "without");
  private static final Set<String> WORN = Set.of("mask", "respirator", "masks", "dustmask");

  private MaskTalk() {}

  /** Index after the words; the same where they are not said. */
  static int past(Line line, int index) {
    if (!NONE.contains(line.token(index).word())) {
      return index;
    }
    int at = index + 1;
    while (line.is(at, "a") || line.is(at, "any") || line.is(at, "my") || line.is(at, "dust")) {
      at++;
    }
    return at < line.size() && WORN.contains(line.token(at).word()) ? at + 1 : index;
  }

  /** "A mask" alone may be any that the book holds, whichever of them is called so. */
  static Vocabulary.Match anyOf(Vocabulary held, Line line, int from, Vocabulary.Match match) {
    boolean general = match.to() == from + 1 && WORN.contains(line.token(from).word());
    return general && !match.exact()
        ? new Vocabulary.Match(match.to(), false, held.entries())
        : match;
  }
}
