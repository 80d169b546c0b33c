package motebook.entry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A line, or the beginning of one, taken as a row of phrases.
 *
 * @param before the reading up to the last phrase; null where nothing was read yet
 * @param last the last phrase; null likewise
 * @param cost sum of what the phrases cost
 * @param filled the slots filled
 */
record Reading(Reading before, Phrase last, int cost, Set<Slot> filled) {
  static final Reading NOTHING = new Reading(null, null, 0, Set.of());

  Reading plus(Phrase phrase) {
    return new Reading(this, phrase, cost + phrase.cost(), with(phrase.said().slot()));
  }

  private Set<Slot> with(Slot slot) {
    if (slot == null || filled.contains(slot)) {
      return filled;
    }
    Set<Slot> more = EnumSet.of(slot);
    more.addAll(filled);
    return more;
  }

  boolean has(Slot slot) {
    return filled.contains(slot);
  }

  /** Whether the last phrase fills the slot, so that "and" and one more can follow. */
  boolean endsIn(Slot slot) {
    return last != null && last.said().slot() == slot;
  }

  private Slot joined() {
    boolean more = last != null && last.said().slot() != null && last.said().slot().repeats();
    return more ? last.said().slot() : null;
  }

  /** What it costs as a whole line, which must name an operation. */
  int wholeCost() {
    boolean named = has(Slot.OPERATION) || Broad.operation(this).isPresent();
    return named ? cost : cost + Phrase.NO_OPERATION;
  }

  /** What decides what can follow: what is filled, and what "and" can add to, null for nothing. */
  record State(Set<Slot> filled, Slot joined) {}

  State state() {
    return new State(filled, joined());
  }

  List<Phrase> phrases() {
    Deque<Phrase> phrases = new ArrayDeque<>();
    for (Reading at = this; at.last != null; at = at.before) {
      phrases.addFirst(at.last);
    }
    return List.copyOf(phrases);
  }

  Stream<Phrase> phrases(Slot slot) {
    return phrases().stream().filter(phrase -> phrase.said().slot() == slot);
  }

  /** Whether a phrase is of the kind. */
  boolean says(Class<? extends Said> kind) {
    return said(kind).isPresent();
  }

  /** What the first phrase of the kind says. */
  <T extends Said> Optional<T> said(Class<T> kind) {
    return phrases().stream()
        .map(Phrase::said)
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst();
  }

  /** The keys that a slot was filled with, in the order said. */
  List<String> keys(Slot slot) {
    return phrases(slot)
        .map(Phrase::said)
        .filter(Said.Name.class::isInstance)
        .map(said -> ((Said.Name) said).key())
        .toList();
  }

  boolean meansTheSameAs(Reading other) {
    return meaning().equals(other.meaning());
  }

  private Set<Said> meaning() {
    Set<Said> meaning = new HashSet<>();
    phrases().forEach(phrase -> meaning.add(phrase.said()));
    meaning.removeIf(said -> said.slot() == null);
    return meaning;
  }
}
