package motebook.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the names that a misspelt word, with the words around it, may have meant. */
public final class NearMiss {
  private static final int WIDEST = 6;
  private static final int MOST_SHOWN = 4;

  /** The nearest of some words to a typed one, nearest first; none where none is near. */
  public static List<String> words(String typed, List<String> words) {
    int most = Window.tolerance(typed.length());
    return words.stream()
        .distinct()
        .filter(word -> Spelling.distance(typed, word, most) <= most)
        .sorted(Comparator.comparingInt(word -> Spelling.distance(typed, word, most)))
        .limit(MOST_SHOWN)
        .toList();
  }

  private final Line line;
  private final int start;
  private final Vocabularies names;

  /**
   * @param start index of the first word that may belong to a name
   */
  NearMiss(Line line, int start, Vocabularies names) {
    this.line = line;
    this.start = start;
    this.names = names;
  }

  /** A name, and how far how many words of the line are from it. */
  private record Near(Slot slot, Vocabulary.Entry entry, int distance, int words) {
    static final Comparator<Near> CLOSEST =
        Comparator.comparingInt(Near::distance)
            .thenComparing(Near::words, Comparator.reverseOrder());
  }

  /** Neighbouring words, how many they are, and how many letters of them may be wrong. */
  private record Window(String text, int words, int tolerance) {
    static Window of(String text, int words, String misspelt) {
      int most = Math.max(1, tolerance(misspelt.length()));
      return new Window(text, words, Math.min(tolerance(text.length()), most));
    }

    private static int tolerance(int length) {
      return length < 3 ? 0 : length < 6 ? 1 : length < 10 ? 2 : 3;
    }
  }

  /**
   * The names nearest to the word and its neighbours, as they would be said; none where nothing is
   * near.
   *
   * @param expected the slot whose joint was said, null for a bare word
   */
  List<String> around(int index, Slot expected) {
    List<Near> nearest = nearest(index, wanted(expected));
    boolean asExpected = nearest.stream().anyMatch(near -> near.slot() == expected);
    return nearest.stream()
        .filter(near -> !asExpected || near.slot() == expected)
        .map(near -> said(expected, near))
        .distinct()
        .limit(MOST_SHOWN)
        .toList();
  }

  /** The same, but only names of several words of which one letter is wrong. */
  List<String> oneLetterOff(int index) {
    return nearest(index, wanted(null)).stream()
        .filter(near -> near.distance() == 1 && near.words() > 1)
        .map(near -> said(null, near))
        .limit(MOST_SHOWN)
        .toList();
  }

  private static String said(Slot expected, Near near) {
    boolean plain = near.slot() == expected || (expected == null && near.slot() == Slot.MATERIAL);
    return plain ? near.entry().label() : near.slot().said(near.entry().label());
  }

  /** Whoever says "by" or "in" means a name of the book's own, not a tool that sounds alike. */
  private static Set<Slot> wanted(Slot expected) {
    if (expected == Slot.PERSON) {
      return EnumSet.of(expected);
    }
    if (expected == Slot.FINISH) {
      return EnumSet.of(expected);
    }
    // "in the shop" is an operation, too.
    return expected == Slot.PLACE
        ? EnumSet.of(expected, Slot.OPERATION)
        : EnumSet.complementOf(EnumSet.of(Slot.FINISH));
  }

  private List<Near> nearest(int index, Set<Slot> wanted) {
    List<Window> windows = windows(index);
    List<Near> all = new ArrayList<>();
    for (Slot slot : wanted) {
      for (Vocabulary.Entry entry : names.of(slot).entries()) {
        nearest(slot, entry, windows).ifPresent(all::add);
      }
    }
    all.sort(Near.CLOSEST);
    return all.stream().filter(near -> Near.CLOSEST.compare(near, all.get(0)) == 0).toList();
  }

  private static Optional<Near> nearest(Slot slot, Vocabulary.Entry entry, List<Window> windows) {
    return windows.stream()
        .flatMap(
            window ->
                distance(entry, window).stream()
                    .mapToObj(distance -> new Near(slot, entry, distance, window.words())))
        .min(Near.CLOSEST);
  }

  /** The least distance, if it is small; a text that names the entry as it stands is not near. */
  private static OptionalInt distance(Vocabulary.Entry entry, Window window) {
    int most = window.tolerance();
    OptionalInt least =
        runs(entry, window.words()).stream()
            .mapToInt(run -> Spelling.distance(window.text(), run, most))
            .min();
    boolean near = least.isPresent() && least.getAsInt() > 0 && least.getAsInt() <= most;
    return near ? least : OptionalInt.empty();
  }

  private List<Window> windows(int index) {
    List<Window> windows = new ArrayList<>();
    for (int from = Math.max(start, index - WIDEST + 1); from <= index; from++) {
      for (int to = index + 1; to <= Math.min(line.size(), from + WIDEST); to++) {
        windows.add(Window.of(line.words(from, to), to - from, line.token(index).word()));
      }
    }
    return windows;
  }

  /** The whole names of an entry and, of longer ones, the runs of as many words. */
  private static List<String> runs(Vocabulary.Entry entry, int words) {
    List<String> runs = new ArrayList<>();
    for (Vocabulary.Name name : entry.names()) {
      runs.add(joined(name, 0, name.size()));
      for (int from = 0; words < name.size() && from + words <= name.size(); from++) {
        runs.add(joined(name, from, from + words));
      }
    }
    return runs;
  }

  private static String joined(Vocabulary.Name name, int from, int to) {
    return name.words().subList(from, to).stream()
        .map(Token::word)
        .collect(Collectors.joining(" "));
  }
}
