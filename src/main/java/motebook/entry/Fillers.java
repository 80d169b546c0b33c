package motebook.entry;

import java.util.Set;
import java.util.regex.Pattern;

/** Words that a person says without meaning anything by them. */
final class Fillers {
  private static final Set<String> BEFORE_NAMES = words("the a an some my our");
  private static final Set<String> BEFORE_DURATIONS =
      words("about around roughly nearly almost approximately some just over under for took ~");

  /** What somebody did to do the work, or who; the operation says the rest. */
  private static final Set<String> BEFORE_WORK =
      words(
          "i i've we did doing done spent ran running used worked working was been had have today's"
              + " then while up wore through between few several couple more batch set");

  /** What work is done to, which no figure depends on. */
  private static final Set<String> THINGS =
      words(
          "bench blank blanks board boards bookcase bowl bowls box boxes cabinet cabinets chair"
              + " chairs coat coats dado dados desk dovetail dovetails drawer drawers edge edges"
              + " floor frame frames groove grooves hole holes joint joints leg legs lid lids lumber"
              + " molding moulding mortise mortises panel panels part parts piece pieces plank planks"
              + " rabbet rabbets rail rails rebate rebates shelf shelves slab slabs spindle spindles"
              + " spoon spoons stile stiles stock stool stools tabletop tenon tenons timber top tops"
              + " tray trays trim");

  /** How a control was: there, or it would not be said. */
  private static final Set<String> RUNNING = words("on running attached connected going hooked");

  private static final Pattern GRIT = Pattern.compile("p?\\d{2,4}");
  private static final Pattern COUNT = Pattern.compile("\\d{1,3}");
  private static final Pattern SECTION = Pattern.compile("\\d{1,2}x\\d{1,2}s?");

  private Fillers() {}

  private static Set<String> words(String words) {
    return Set.of(words.split(" ", -1));
  }

  /** Index after words that say nothing about the work, wherever they stand; the same for none. */
  static int pastTalk(Line line, int index) {
    String word = line.token(index).word();
    if (BEFORE_WORK.contains(word) || isThing(line, index)) {
      return index + 1;
    }
    if (COUNT.matcher(word).matches() && isThing(line, index + 1)) {
      return index + 2;
    }
    if (word.equals("lot") && index > 0 && line.is(index - 1, "a")) {
      return index + 1;
    }
    if (word.equals("table") && line.is(index + 1, "top")) {
      return index + 2;
    }
    boolean grit = GRIT.matcher(word).matches() && line.is(index + 1, "grit");
    return grit ? index + 2 : index;
  }

  private static boolean isThing(Line line, int index) {
    String word = index < line.size() ? line.token(index).word() : "";
    return THINGS.contains(word) || SECTION.matcher(word).matches();
  }

  /** Index after what says that a control was running; the same for nothing. */
  static int pastRunning(Line line, int index) {
    boolean said = index < line.size() && RUNNING.contains(line.token(index).word());
    boolean hookedUp = said && line.is(index, "hooked") && line.is(index + 1, "up");
    return hookedUp ? index + 2 : said ? index + 1 : index;
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
