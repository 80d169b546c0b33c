package motebook.entry;

import java.util.List;

/** {@code sanding by hand}: of what a word may mean, that which is called so with "hand". */
final class ByHand {
  private ByHand() {}

  static boolean at(Line line, int index) {
    return line.is(index, "by") && line.is(index + 1, "hand");
  }

  private static boolean said(Line line) {
    for (int index = 0; index < line.size(); index++) {
      if (at(line, index)) {
        return true;
      }
    }
    return false;
  }

  /** The match with only what is done by hand left in it, where that is said and is but one. */
  static Vocabulary.Match in(Line line, int from, Vocabulary.Match match) {
    if (match.unique() || !said(line)) {
      return match;
    }
    List<Vocabulary.Entry> left =
        match.choices().stream().filter(entry -> byHand(entry, line, from, match.to())).toList();
    return left.size() == 1 ? new Vocabulary.Match(match.to(), match.exact(), left) : match;
  }

  private static boolean byHand(Vocabulary.Entry entry, Line line, int from, int to) {
    return entry.names().stream()
        .filter(name -> name.size() == to - from + 1 && name.word(0).equals("hand"))
        .anyMatch(name -> rest(name, line, from, to));
  }

  private static boolean rest(Vocabulary.Name name, Line line, int from, int to) {
    for (int index = from; index < to; index++) {
      if (!Vocabulary.fits(line, index, name, index - from + 1)) {
        return false;
      }
    }
    return true;
  }
}
