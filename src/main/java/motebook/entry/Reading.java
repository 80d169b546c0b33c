package motebook.entry;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The plainest way to read the words after the duration: of all ways to cut them into clauses, the
 * one of least cost. A word that says nothing costs most, so it is found even where much else is
 * right.
 *
 * @param clauses in the order of the line
 * @param cost 0 for a line that names everything in full
 */
record Reading(List<Clause> clauses, int cost) {

  /** Reads the words from an index to another; a missing operation costs only in a whole line. */
  static Reading of(Grammar grammar, int from, int to, boolean whole) {
    return new Search(grammar, to, whole).best(from, Set.of(), Optional.empty());
  }

  /** Whether every word is understood, and in one way only. */
  boolean clean() {
    return cost < Clause.AMBIGUOUS;
  }

  /** Whether a slot is filled. */
  boolean fills(Slot slot) {
    return find(slot).isPresent();
  }

  /** The first clause that names something in a slot. */
  Optional<Clause> find(Slot slot) {
    return clauses.stream()
        .filter(c -> c.meaning() instanceof Clause.Name name && name.named() == slot)
        .findFirst();
  }

  /** The key that a slot is filled with. */
  Optional<String> key(Slot slot) {
    return find(slot).map(clause -> ((Clause.Name) clause.meaning()).key());
  }

  /** The keys of the controls, in the order said. */
  List<String> controls() {
    return clauses.stream()
        .map(Clause::meaning)
        .filter(m -> m instanceof Clause.Name name && name.named() == Slot.CONTROL)
        .map(m -> ((Clause.Name) m).key())
        .toList();
  }

  /** The first meaning of a kind. */
  <M extends Clause.Meaning> Optional<M> first(Class<M> kind) {
    return clauses.stream()
        .map(Clause::meaning)
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst();
  }

  private static final class Search {
    private final Grammar grammar;
    private final int end;
    private final boolean whole;
    private final Map<State, Reading> known = new HashMap<>();

    Search(Grammar grammar, int end, boolean whole) {
      this.grammar = grammar;
      this.end = end;
      this.whole = whole;
    }

    Reading best(int index, Set<Slot> filled, Optional<Slot> before) {
      if (index >= end) {
        boolean lacks = whole && !filled.contains(Slot.OPERATION);
        return new Reading(List.of(), lacks ? Clause.NO_OPERATION : 0);
      }
      State state = new State(index, filled, before);
      Reading best = known.get(state);
      if (best == null) {
        best = cheapest(index, filled, before);
        known.put(state, best);
      }
      return best;
    }

    private Reading cheapest(int index, Set<Slot> filled, Optional<Slot> before) {
      Reading best = null;
      for (Clause clause : grammar.at(index, before)) {
        if (clause.to() <= end) {
          Reading reading = after(clause, filled, before);
          // Of equals, the one whose first part takes more words.
          if (best == null || reading.cost < best.cost || longer(reading, best)) {
            best = reading;
          }
        }
      }
      return best;
    }

    private static boolean longer(Reading a, Reading b) {
      return a.cost == b.cost && a.clauses.get(0).to() > b.clauses.get(0).to();
    }

    private Reading after(Clause clause, Set<Slot> filled, Optional<Slot> before) {
      Optional<Slot> slot = clause.meaning().slot();
      boolean again = slot.filter(s -> !s.repeats() && filled.contains(s)).isPresent();
      Clause kept =
          again
              ? new Clause(
                  new Clause.Again(slot.orElseThrow(), clause.meaning()),
                  clause.from(),
                  clause.at(),
                  clause.to())
              : clause;
      Optional<Slot> next = slot.isPresent() ? slot : before.filter(Slot.MASK::equals);
      Reading rest = best(clause.to(), with(slot, filled), next);
      List<Clause> clauses = new ArrayList<>();
      clauses.add(kept);
      clauses.addAll(rest.clauses);
      return new Reading(
          clauses, (int) Math.min(Integer.MAX_VALUE, (long) kept.meaning().cost() + rest.cost));
    }

    private static Set<Slot> with(Optional<Slot> slot, Set<Slot> filled) {
      Set<Slot> more = EnumSet.noneOf(Slot.class);
      more.addAll(filled);
      slot.ifPresent(more::add);
      return more;
    }

    private record State(int index, Set<Slot> filled, Optional<Slot> before) {}
  }
}
