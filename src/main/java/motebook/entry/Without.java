package motebook.entry;

import java.util.Set;

/** {@code no}, {@code without a}, {@code with no}: what comes next was not there. */
final class Without {
  private static final Set<String> NONE = Set.of("no", "without");
  private static final Set<String> BEFORE_NAMES = Set.of("a", "any", "the", "my");

  private Without() {}

  /** Index of what was not there; the same where nothing is said to be missing. */
  static int past(Line line, int index) {
    int none = line.is(index, "with") ? index + 1 : index;
    if (none >= line.size() || !NONE.contains(line.token(none).word())) {
      return index;
    }
    int at = none + 1;
    while (at < line.size() && BEFORE_NAMES.contains(line.token(at).word())) {
      at++;
    }
    return at < line.size() ? at : index;
  }
}
