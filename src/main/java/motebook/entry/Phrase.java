package motebook.entry;

import java.util.List;

/**
 * Some words of a line and what they say.
 *
 * @param said what they say
 * @param from index of the first word, joints included
 * @param nameFrom index of the first word that is no joint
 * @param to index after the last word
 * @param cost what the reading pays for it: the cheapest reading is the one meant
 * @param continues whether it can only follow a phrase of its own slot
 */
record Phrase(Said said, int from, int nameFrom, int to, int cost, boolean continues) {
  static final int WHOLE_NAME = 1;
  static final int FILLER = 20;
  static final int TALK = 60;
  static final int SHORTENED = 101;
  static final int WRONG = 10_000;
  static final int NO_OPERATION = 30_000;
  static final int UNKNOWN = 100_000;
  static final int UNKNOWN_WORD = 50_000;

  /** Words that say nothing of their own. */
  static Phrase passed(int from, int to, int cost) {
    return new Phrase(new Said.Passed(), from, from, to, cost, false);
  }

  boolean faulty() {
    return said instanceof Said.Fault;
  }

  /** The same, taking in words that say nothing of their own. */
  Phrase upTo(int end) {
    return new Phrase(said, from, nameFrom, end, cost + FILLER, continues);
  }

  /** The same at a little more: a name said in full goes before one behind a word passed by. */
  Phrase dearer() {
    return new Phrase(said, from, nameFrom, to, cost + 1, continues);
  }

  /** The same words as a slot said once too often. */
  Phrase repeated() {
    Said.Fault again = new Said.Fault(Said.Fault.Kind.REPEATED, said.slot(), List.of());
    return new Phrase(again, from, nameFrom, to, cost + WRONG, continues);
  }
}
