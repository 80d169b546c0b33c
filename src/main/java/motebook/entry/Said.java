package motebook.entry;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/** What one phrase of a line says. */
sealed interface Said {
  /** The slot that it fills; null for words that fill none. */
  Slot slot();

  /** A row of a table, a place or a person, by its key or name. */
  record Name(Slot slot, String key) implements Said {}

  /** A name that several controls bear, each for other work: the operation tells which is meant. */
  record Shared(List<Vocabulary.Entry> controls) implements Said {
    @Override
    public Slot slot() {
      return Slot.CONTROL;
    }
  }

  /** The outdoor place, whatever it is called. */
  record Outdoors() implements Said {
    @Override
    public Slot slot() {
      return Slot.PLACE;
    }
  }

  /** The date. */
  record Day(LocalDate date) implements Said {
    @Override
    public Slot slot() {
      return Slot.DAY;
    }
  }

  /** The time at which the work began. */
  record Start(LocalTime time) implements Said {
    @Override
    public Slot slot() {
      return Slot.START;
    }
  }

  /** A respirator and how it was worn; the share of the time is not yet checked. */
  record Mask(String respirator, boolean checked, double percent) implements Said {
    @Override
    public Slot slot() {
      return Slot.MASK;
    }
  }

  /** That no respirator was worn. */
  record Unmasked() implements Said {
    @Override
    public Slot slot() {
      return Slot.MASK;
    }
  }

  /** An amount of a finish; not yet checked. */
  record Using(String finish, double millilitres) implements Said {
    @Override
    public Slot slot() {
      return Slot.FINISH;
    }
  }

  /** Words that say nothing of their own, such as "the"; or the duration, which is read before. */
  record Passed() implements Said {
    @Override
    public Slot slot() {
      return null;
    }
  }

  /** Words that leave open which of several operations is meant, such as "sanding". */
  record Broad(List<Vocabulary.Entry> operations) implements Said {
    @Override
    public Slot slot() {
      return null;
    }
  }

  /** Words that cannot stand as they do; {@code choices} are what they may have meant. */
  record Fault(Kind kind, Slot slot, List<Vocabulary.Entry> choices) implements Said {

    /** What is wrong, the one to be told first coming first. */
    enum Kind {
      /** Words after "using" that do not begin with an amount. */
      AMOUNT,
      /** Words that name nothing; the slot is the one that was expected, null for a bare word. */
      UNKNOWN,
      /** A joint with nothing after it. */
      DANGLING,
      /** A joint that belongs somewhere else. */
      LOOSE,
      /** A name that is right in another slot, which is the one given. */
      ELSEWHERE,
      /** A slot filled before. */
      REPEATED,
      /** A name of several. */
      AMBIGUOUS
    }
  }
}
