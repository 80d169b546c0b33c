package motebook.entry;

import java.util.ArrayList;
import java.util.List;

/**
 * What is lacking of a name that is being typed at the end of a line.
 *
 * @param line the line
 * @param from index of the first word of the name; the size of the line where none is typed yet
 */
record NameEndings(Line line, int from) {

  /** The endings for every name of an entry that the words begin, the one it is shown by first. */
  List<String> of(Vocabulary.Entry entry) {
    List<String> endings = new ArrayList<>();
    if (from == line.size()) {
      endings.add((line.endsInGap() ? "" : " ") + entry.label());
      return endings;
    }
    for (Vocabulary.Name name : entry.shortestFirst()) {
      add(name, 0, endings);
    }
    for (Vocabulary.Name name : entry.names()) {
      for (int first = 1; first < name.size() && !line.isJoint(from); first++) {
        add(name, first, endings);
      }
    }
    return endings;
  }

  private void add(Vocabulary.Name name, int first, List<String> endings) {
    int typed = line.size() - from;
    for (int i = 0; i < typed; i++) {
      if (!begins(i, name, first + i)) {
        return;
      }
    }
    endings.add(rest(name, first + typed - 1));
  }

  /** Whether a typed word begins the name's; the last one may still be about to become a joint. */
  private boolean begins(int index, Vocabulary.Name name, int word) {
    boolean last = from + index == line.size() - 1 && !line.endsInGap();
    return last
        ? word < name.size() && name.word(word).startsWith(line.token(from + index).word())
        : Vocabulary.fits(line, from + index, name, word);
  }

  /** The name from where the last typed word breaks off; from the next word after a gap. */
  private String rest(Vocabulary.Name name, int word) {
    if (line.endsInGap()) {
      return word + 1 < name.size() ? name.text().substring(name.words().get(word + 1).from()) : "";
    }
    Token whole = name.words().get(word);
    String rest = name.text().substring(whole.to());
    return restOfWord(name.text().substring(whole.from(), whole.to()), whole.word()) + rest;
  }

  /** In the case of the name where its beginning was typed so too; else in lower case. */
  private String restOfWord(String shown, String folded) {
    int typed = line.token(line.size() - 1).word().length();
    boolean sameCase =
        shown.length() == folded.length()
            && shown.startsWith(line.typed(line.size() - 1, line.size()));
    return (sameCase ? shown : folded).substring(typed);
  }
}
