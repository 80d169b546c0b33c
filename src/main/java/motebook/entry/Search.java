package motebook.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * Finds the cheapest readings of a line: at each word, for each set of slots filled so far, only
 * the cheapest ways of having come there are followed further.
 */
final class Search {
  private final int end;
  private final boolean tolerant;
  private final List<Map<Reading.State, List<Reading>>> reached = new ArrayList<>();

  /**
   * @param from index of the first word to read
   * @param end index after the last word
   * @param phrases the phrases that may begin at a word
   * @param tolerant whether faulty phrases are followed too
   */
  Search(int from, int end, IntFunction<List<Phrase>> phrases, boolean tolerant) {
    this.end = end;
    this.tolerant = tolerant;
    for (int index = 0; index <= end; index++) {
      reached.add(new LinkedHashMap<>());
    }
    keep(from, Reading.NOTHING);
    for (int index = from; index < end; index++) {
      if (!reached.get(index).isEmpty()) {
        follow(index, phrases.apply(index));
      }
    }
  }

  private void follow(int index, List<Phrase> phrases) {
    List<Reading> readings = at(index);
    for (Phrase phrase : phrases) {
      readings.forEach(reading -> follow(reading, phrase));
    }
  }

  private void follow(Reading reading, Phrase phrase) {
    if (phrase.continues() && !reading.endsIn(phrase.said().slot())) {
      return;
    }
    Slot slot = phrase.said().slot();
    boolean again = slot != null && !slot.repeats() && reading.has(slot);
    if (tolerant) {
      keep(phrase.to(), reading.plus(again ? phrase.repeated() : phrase));
    } else if (!again && !phrase.faulty() && !Broad.contrary(reading.plus(phrase))) {
      keep(phrase.to(), reading.plus(phrase));
    }
  }

  /** Keeps a reading if none is cheaper, and beside it one as cheap that means something else. */
  private void keep(int index, Reading reading) {
    List<Reading> kept =
        reached.get(index).computeIfAbsent(reading.state(), state -> new ArrayList<>(2));
    if (!kept.isEmpty() && reading.cost() < kept.get(0).cost()) {
      kept.clear();
    }
    boolean first = kept.isEmpty();
    boolean tie = !first && !tolerant && kept.size() == 1 && reading.cost() == kept.get(0).cost();
    if (first || (tie && !kept.get(0).meansTheSameAs(reading))) {
      kept.add(reading);
    }
  }

  /** The readings of the words before an index, cheapest first. */
  List<Reading> at(int index) {
    return reached.get(index).values().stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparingInt(Reading::wholeCost))
        .toList();
  }

  /** The cheapest readings of the whole line; several where they cost the same. */
  List<Reading> best() {
    List<Reading> all = at(end);
    return all.stream().filter(reading -> reading.wholeCost() == all.get(0).wholeCost()).toList();
  }
}
