package motebook.entry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Words that may mean several operations and are narrowed down by others: {@code sanded … on the
 * lathe}, {@code sanding … with the random orbit sander}.
 */
final class Broad {
  private Broad() {}

  /** Of what the words of a line may name, that which has each of them as a word of its name. */
  static List<Vocabulary.Entry> meant(Line line, int from, Vocabulary.Match match) {
    return match.choices().stream().filter(it -> inFullWords(line, from, match.to(), it)).toList();
  }

  static boolean inFullWords(Line line, int from, Vocabulary.Match match) {
    return !meant(line, from, match).isEmpty();
  }

  private static boolean inFullWords(Line line, int from, int to, Vocabulary.Entry entry) {
    for (Vocabulary.Name name : entry.names()) {
      for (int first = 0; first + to - from <= name.size(); first++) {
        if (isRun(line, from, to, name, first)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isRun(Line line, int from, int to, Vocabulary.Name name, int first) {
    for (int index = from; index < to; index++) {
      String word = name.word(first + index - from);
      if (!line.is(index, word) && !line.is(index, Verbs.past(word))) {
        return false;
      }
    }
    return true;
  }

  /** The operation that a reading says; empty where it says none or leaves it open. */
  static Optional<String> operation(Reading reading) {
    Set<String> left = left(reading);
    return left.size() == 1 ? left.stream().findFirst() : Optional.empty();
  }

  /** Whether no operation is all that a reading says. */
  static boolean contrary(Reading reading) {
    return reading.says(Said.Broad.class) && left(reading).isEmpty();
  }

  private static Set<String> left(Reading reading) {
    Set<String> left = new LinkedHashSet<>();
    boolean open = true;
    for (Phrase phrase : reading.phrases()) {
      List<String> meant = meant(phrase.said());
      if (open) {
        left.addAll(meant);
        open = left.isEmpty();
      } else if (!meant.isEmpty()) {
        left.retainAll(meant);
      }
    }
    return left;
  }

  private static List<String> meant(Said said) {
    if (said instanceof Said.Broad broad) {
      return broad.operations().stream().map(Vocabulary.Entry::key).toList();
    }
    return said instanceof Said.Name name && name.slot() == Slot.OPERATION
        ? List.of(name.key())
        : List.of();
  }
}
