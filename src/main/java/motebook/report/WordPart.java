package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Words of one kind that a line understands.
 *
 * @param key what asks for them, such as {@code controls}; the key of their list in JSON
 * @param title their title
 * @param how how they are said
 * @param words the words
 */
public record WordPart(String key, String title, String how, List<Word> words) {
  public WordPart {
    words = List.copyOf(words);
  }

  /**
   * One thing that can be said.
   *
   * @param said how it is said
   * @param also other names of it
   * @param told what is to be told of it, a line each
   * @param object the same as JSON
   */
  public record Word(
      String said, List<String> also, List<String> told, Map<String, Object> object) {
    public Word {
      also = List.copyOf(also);
      told = List.copyOf(told);
    }

    /** In lines; those after the first are about it. */
    public List<String> lines() {
      List<String> lines = new ArrayList<>();
      lines.add(said + (told.isEmpty() ? "" : ": " + told.get(0)));
      told.stream().skip(1).map(more -> "  " + more).forEach(lines::add);
      if (!also.isEmpty()) {
        lines.add("  also " + String.join("; ", also));
      }
      return lines;
    }
  }

  /** In lines, the title first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(title + ": " + how));
    words.stream().flatMap(word -> word.lines().stream()).map(l -> "  " + l).forEach(lines::add);
    return lines;
  }

  /** The list of its objects. */
  List<Map<String, Object>> objects() {
    return words.stream().map(Word::object).toList();
  }
}
