package motebook.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The names that come closest to what was typed. */
public final class NearMiss {
  private static final int MOST = 3;

  private NearMiss() {}

  /**
   * A name and how far it is.
   *
   * @param saying the name with the joint it needs at that place
   * @param distance letters to change
   * @param words how many words were compared
   */
  private record Candidate(String saying, int distance, int words) {}

  /** The nearest names of some slots to the words from an index on, nearest first. */
  static List<String> names(
      Grammar grammar, int from, List<Slot> slots, Function<Slot, String> lead) {
    List<Candidate> near = new ArrayList<>();
    for (Slot slot : slots) {
      for (Vocabulary.Entry entry : grammar.vocabulary(slot).entries()) {
        String saying = lead.apply(slot) + entry.label();
        entry.names().forEach(name -> compare(grammar.line(), from, name, saying, near));
      }
    }
    return best(near);
  }

  /** The nearest of some words to a typed one, nearest first; none where none is near. */
  public static List<String> words(String typed, List<String> words) {
    List<Candidate> near = new ArrayList<>();
    words.forEach(word -> consider(typed, word, 1, word, near));
    return best(near);
  }

  private static List<String> best(List<Candidate> near) {
    near.sort(
        Comparator.comparingInt(Candidate::distance)
            .thenComparing(Comparator.comparingInt(Candidate::words).reversed()));
    Set<String> sayings = new LinkedHashSet<>();
    int least = near.isEmpty() ? 0 : near.get(0).distance();
    near.stream().filter(c -> c.distance() <= least + 1).forEach(c -> sayings.add(c.saying()));
    return sayings.stream().limit(MOST).toList();
  }

  private static void compare(
      Line line, int from, Vocabulary.Spelling name, String saying, List<Candidate> near) {
    for (int first = 0; first < name.size(); first++) {
      StringBuilder typed = new StringBuilder();
      StringBuilder run = new StringBuilder();
      for (int i = 0; first + i < name.size() && from + i < line.size(); i++) {
        typed.append(line.token(from + i).word());
        run.append(name.word(first + i));
        consider(typed.toString(), run.toString(), i + 1, saying, near);
      }
    }
  }

  private static void consider(
      String typed, String run, int words, String saying, List<Candidate> near) {
    int most = Math.min(3, Math.max(1, run.length() / 4));
    if (Math.abs(typed.length() - run.length()) <= most && run.length() > 2) {
      int distance = distance(typed, run);
      if (distance <= most) {
        near.add(new Candidate(saying, distance, words));
      }
    }
  }

  /** Letters to add, drop, change or swap with a neighbour (optimal string alignment). */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
