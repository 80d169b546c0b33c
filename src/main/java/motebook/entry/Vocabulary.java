package motebook.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The names of one slot. A name may be shortened to any run of the beginnings of its words; an
 * exact name beats whatever else it may be short for.
 */
final class Vocabulary {
  private final List<Entry> entries;
  private final Map<Character, List<Opening>> openings = new HashMap<>();

  Vocabulary(List<Entry> entries) {
    this.entries = List.copyOf(entries);
    for (Entry entry : this.entries) {
      for (Name name : entry.names()) {
        for (int word = 0; word < name.size(); word++) {
          Opening opening = new Opening(entry, name, word);
          for (char initial : name.initials(word)) {
            openings.computeIfAbsent(initial, any -> new ArrayList<>()).add(opening);
          }
        }
      }
    }
  }

  /** A word of a name, at which words of a line may begin to name its entry. */
  private record Opening(Entry entry, Name name, int word) {}

  List<Entry> entries() {
    return entries;
  }

  /**
   * What can be named.
   *
   * @param key what stands for it in a session
   * @param label the name it is shown by
   * @param names every name it answers to
   */
  record Entry(String key, String label, List<Name> names) {
    /** The name it is shown by, then the others. */
    List<Name> shortestFirst() {
      return names.stream()
          .sorted(
              Comparator.comparing((Name name) -> !name.text().equals(label))
                  .thenComparing(Name::size)
                  .thenComparing(name -> name.text().length()))
          .toList();
    }

    static Entry of(String key, String label, List<String> names) {
      return new Entry(key, label, names.stream().map(Name::of).toList());
    }

    private boolean bears(String text) {
      return names.stream().anyMatch(name -> name.text().equals(text));
    }

    /** By the key alone: to go through all names takes longer than most readings. */
    @Override
    public int hashCode() {
      return key.hashCode();
    }
  }

  /**
   * A name and its words.
   *
   * @param done each of its words as it is said of what was done
   */
  record Name(String text, List<Token> words, List<String> done) {
    static Name of(String name) {
      String text = Settled.of(name).text();
      List<Token> words = Token.all(text);
      return new Name(text, words, words.stream().map(it -> Verbs.past(it.word())).toList());
    }

    int size() {
      return words.size();
    }

    String word(int index) {
      return words.get(index).word();
    }

    /** The letters with which a word that fits one of its own may begin. */
    private Set<Character> initials(int index) {
      Set<Character> initials = new LinkedHashSet<>();
      initials.add(initial(word(index)));
      initials.add(initial(done.get(index)));
      return initials;
    }
  }

  /**
   * Words of a line that name something.
   *
   * @param to index of the word after them
   * @param exact whether they are a whole name
   * @param choices what they may name; more than one where they are ambiguous
   */
  record Match(int to, boolean exact, List<Entry> choices) {
    boolean unique() {
      return choices.size() == 1;
    }

    /** Whether all that they may name bear one name, so that they are the same thing elsewhere. */
    boolean shared() {
      return !unique()
          && choices.get(0).names().stream()
              .map(Name::text)
              .anyMatch(text -> choices.stream().allMatch(entry -> entry.bears(text)));
    }

    /** Whether they can stand in a line: they name one thing, or a control by what is done. */
    boolean sayable(Slot slot) {
      return unique() || (slot == Slot.CONTROL && shared());
    }

    /** What they say in a slot; a fault where they name several things. */
    Said said(Slot slot) {
      if (unique()) {
        return new Said.Name(slot, choices.get(0).key());
      }
      return sayable(slot)
          ? new Said.Shared(choices)
          : new Said.Fault(Said.Fault.Kind.AMBIGUOUS, slot, choices);
    }

    /** What a phrase that says this costs in a slot. */
    int cost(Slot slot) {
      int cost = exact ? Phrase.WHOLE_NAME : Phrase.SHORTENED;
      return sayable(slot) ? cost : cost + Phrase.WRONG;
    }
  }

  /** Every way in which words of the line from an index on name something. */
  List<Match> at(Line line, int from) {
    Map<Integer, Set<Entry>> exact = new TreeMap<>();
    Map<Integer, Set<Entry>> begun = new TreeMap<>();
    for (Opening opening : openings(line, from)) {
      if (opening.word() == 0) {
        wholeEnd(line, from, opening, exact);
      }
      begunEnds(line, from, opening, begun);
    }
    return matches(line, from, exact, begun);
  }

  // To try every word of every name takes the most of the time of a reading.
  private List<Opening> openings(Line line, int from) {
    return from < line.size()
        ? openings.getOrDefault(initial(line.token(from).word()), List.of())
        : List.of();
  }

  private static char initial(String word) {
    return word.isEmpty() ? ' ' : word.charAt(0);
  }

  private static void wholeEnd(
      Line line, int from, Opening opening, Map<Integer, Set<Entry>> exact) {
    Name name = opening.name();
    for (int i = 0; i < name.size(); i++) {
      if (!line.is(from + i, name.word(i))) {
        return;
      }
    }
    note(exact, from + name.size(), opening.entry());
  }

  private static void begunEnds(
      Line line, int from, Opening opening, Map<Integer, Set<Entry>> begun) {
    if (line.isJoint(from)) {
      return;
    }
    int length = 0;
    while (fits(line, from + length, opening.name(), opening.word() + length)) {
      length++;
      if (!line.isJoint(from + length - 1)) {
        note(begun, from + length, opening.entry());
      }
    }
  }

  private static void note(Map<Integer, Set<Entry>> ends, int end, Entry entry) {
    ends.computeIfAbsent(end, key -> new LinkedHashSet<>()).add(entry);
  }

  /** Whether a word of the line is a word of the name or begins it; joints must be whole. */
  static boolean fits(Line line, int index, Name name, int word) {
    if (index >= line.size() || word >= name.size()) {
      return false;
    }
    String typed = line.token(index).word();
    return (line.isJoint(index) || name.words().get(word).joint())
        ? name.word(word).equals(typed)
        : name.word(word).startsWith(typed) || name.done().get(word).equals(typed);
  }

  private static List<Match> matches(
      Line line, int from, Map<Integer, Set<Entry>> exact, Map<Integer, Set<Entry>> begun) {
    Map<Integer, Match> matches = new LinkedHashMap<>();
    exact.forEach(
        (to, choices) ->
            matches.put(to, new Match(to, true, sameSpelling(line, from, to, choices))));
    begun.forEach(
        (to, choices) -> matches.putIfAbsent(to, new Match(to, false, List.copyOf(choices))));
    return List.copyOf(matches.values());
  }

  /** Of names that differ only in case or marks, the one that was typed, if one was. */
  private static List<Entry> sameSpelling(Line line, int from, int to, Set<Entry> choices) {
    String typed = line.typedWithMarks(from, to);
    List<Entry> same = new ArrayList<>(choices);
    same.removeIf(entry -> !entry.label().equals(typed));
    return choices.size() > 1 && same.size() == 1 ? same : List.copyOf(choices);
  }
}
