package motebook.entry;

/** Verbs of the shop: what was being done is said as done. */
final class Verbs {
  private static final String ING = "ing";
  private static final String VOWELS = "aeiou";

  private Verbs() {}

  /** The past of a word such as {@code sanding}: {@code sanded}; of another word the word. */
  static String past(String word) {
    if (!word.endsWith(ING) || word.length() <= ING.length()) {
      return word;
    }
    String stem = word.substring(0, word.length() - ING.length());
    return switch (stem) {
      case "sweep" -> "swept";
      case "blow" -> "blew";
      default -> changesItsEnd(stem) ? stem.substring(0, stem.length() - 1) + "ied" : stem + "ed";
    };
  }

  private static boolean changesItsEnd(String stem) {
    return stem.endsWith("y")
        && stem.length() > 1
        && VOWELS.indexOf(stem.charAt(stem.length() - 2)) < 0;
  }
}
