package motebook.entry;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A part of a line and what it may mean.
 *
 * @param meaning what it says
 * @param from index of its first word, its joint included
 * @param at index of the first word after the joint
 * @param to index of the word after it
 */
record Clause(Meaning meaning, int from, int at, int to) {

  /** What a part of a line says, or what is wrong with it. */
  sealed interface Meaning {
    /** How far this is from a plain reading; the reading of least cost wins. */
    int cost();

    /** The slot that it fills, if it fills one. */
    default Optional<Slot> slot() {
      return Optional.empty();
    }
  }

  /** One row or name of a slot, or several that the words may stand for. */
  record Name(Slot named, List<Vocabulary.Entry> choices, boolean exact) implements Meaning {
    @Override
    public int cost() {
      return choices.size() > 1 ? AMBIGUOUS : exact ? 0 : SHORTENED;
    }

    @Override
    public Optional<Slot> slot() {
      return Optional.of(named);
    }

    String key() {
      return choices.get(0).key();
    }
  }

  /** A date. */
  record On(LocalDate date) implements Meaning {
    @Override
    public Optional<Slot> slot() {
      return Optional.of(Slot.DAY);
    }

    @Override
    public int cost() {
      return 0;
    }
  }

  /** A start. */
  record At(LocalTime time) implements Meaning {
    @Override
    public Optional<Slot> slot() {
      return Optional.of(Slot.START);
    }

    @Override
    public int cost() {
      return 0;
    }
  }

  /** The seal check, said of a respirator. */
  record Checked() implements Meaning {
    @Override
    public int cost() {
      return 0;
    }
  }

  /** The share of the session that a respirator was worn. */
  record Worn(double percent) implements Meaning {
    @Override
    public int cost() {
      return 0;
    }
  }

  /** A slot that was filled before. */
  record Again(Slot filled, Meaning meaning) implements Meaning {
    @Override
    public int cost() {
      return TWICE + meaning.cost();
    }
  }

  /** A word that says nothing here; after the joint of a slot it should have named one of its. */
  record Unknown(Optional<Slot> opened) implements Meaning {
    @Override
    public Optional<Slot> slot() {
      return opened;
    }

    @Override
    public int cost() {
      return opened.isPresent() ? UNKNOWN_NAME : UNKNOWN;
    }
  }

  static final int SHORTENED = 1;
  static final int AMBIGUOUS = 1_000;
  static final int NO_OPERATION = 10_000;
  static final int TWICE = 50_000;
  static final int UNKNOWN_NAME = 900_000;
  static final int UNKNOWN = 1_000_000;
}
