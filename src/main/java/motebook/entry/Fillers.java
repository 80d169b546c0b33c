package motebook.entry;

import java.util.Set;

/** Words that a person says without meaning anything by them. */
final class Fillers {
  private static final Set<String> BEFORE_NAMES = Set.of("the", "a", "an", "some", "my", "our");
  private static final Set<String> BEFORE_DURATIONS =
      Set.of(
          "about",
          "around",
          "roughly",
          "nearly",
          "almost",
          "approximately",
          "some",
          "just",
          "over",
          "under",
          "for",
          "took",
          "~");

  private Fillers() {}

  /** Whether a word before a name says nothing, something that can be a name coming after it. */
  static boolean at(Line line, int index) {
    return index + 1 < line.size()
        && BEFORE_NAMES.contains(line.token(index).word())
        && (!line.isJoint(index + 1) || at(line, index + 1));
  }

  /** Index of the first word from an index on that says something. */
  static int past(Line line, int index) {
    return at(line, index) ? past(line, index + 1) : index;
  }

  /** Index of the first word from an index on that is not said before a duration. */
  static int pastAbout(Line line, int index) {
    int at = index;
    while (at < line.size() && BEFORE_DURATIONS.contains(line.token(at).word())) {
      at++;
    }
    return at;
  }
}
