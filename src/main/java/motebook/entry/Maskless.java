package motebook.entry;

import java.util.Set;

/** That no mask was worn, as somebody says it: {@code no mask}, {@code without a respirator}. */
final class Maskless {
  private static final Set<String> NONE = Set.of("no", "without");
  private static final Set<String> WORN = Set.of("mask", "respirator", "masks", "dustmask");

  private Maskless() {}

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
}
