package motebook.entry;

import java.util.Set;
import java.util.regex.Pattern;

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

  /** What somebody did to do the work, or who; the operation says the rest. */
  private static final Set<String> BEFORE_WORK =
      Set.of(
          "i", "i've", "we", "did", "doing", "done", "spent", "ran", "running", "used", "worked",
          "working", "was", "been", "had", "have", "today's", "then", "while", "up", "wore");

  /** What work is done to, which no figure depends on. */
  private static final Set<String> THINGS =
      Set.of(
          "bench",
          "blank",
          "blanks",
          "board",
          "boards",
          "bowl",
          "bowls",
          "cabinet",
          "cabinets",
          "chair",
          "chairs",
          "drawer",
          "drawers",
          "edge",
          "edges",
          "floor",
          "frame",
          "frames",
          "hole",
          "holes",
          "joint",
          "joints",
          "leg",
          "legs",
          "lumber",
          "panel",
          "panels",
          "part",
          "parts",
          "piece",
          "pieces",
          "plank",
          "planks",
          "shelf",
          "shelves",
          "spindle",
          "spindles",
          "stock",
          "tabletop",
          "timber",
          "top",
          "tops");

  /** How a control was: there, or it would not be said. */
  private static final Set<String> RUNNING =
      Set.of("on", "running", "attached", "connected", "going", "hooked");

  private static final Pattern GRIT = Pattern.compile("p?\\d{2,4}");

  private Fillers() {}

  /** Index after words that say nothing about the work, wherever they stand; the same for none. */
  static int pastTalk(Line line, int index) {
    String word = line.token(index).word();
    if (BEFORE_WORK.contains(word) || THINGS.contains(word)) {
      return index + 1;
    }
    if (word.equals("table") && line.is(index + 1, "top")) {
      return index + 2;
    }
    boolean grit = GRIT.matcher(word).matches() && line.is(index + 1, "grit");
    return grit ? index + 2 : index;
  }

  /** Index after what says that a control was running; the same for nothing. */
  static int pastRunning(Line line, int index) {
    boolean said = index < line.size() && RUNNING.contains(line.token(index).word());
    return said ? index + 1 : index;
  }

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
