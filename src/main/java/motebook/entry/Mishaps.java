package motebook.entry;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.entry.Said.Fault;
import motebook.entry.Said.Fault.Kind;

/**
 * What may stand in a line that the grammar does not allow, so that it can be told what is wrong.
 */
final class Mishaps {
  private static final int LONGEST_UNKNOWN = 6;
  private static final List<Slot> NAMED =
      List.of(Slot.OPERATION, Slot.MATERIAL, Slot.CONTROL, Slot.PLACE, Slot.PERSON, Slot.MASK);

  private static final Set<Slot> BARE = EnumSet.of(Slot.OPERATION, Slot.MATERIAL);

  private final Line line;
  private final Scene scene;
  private final Vocabularies names;

  Mishaps(Line line, Scene scene, Vocabularies names) {
    this.line = line;
    this.scene = scene;
    this.names = names;
  }

  /** Every faulty phrase that begins with the word. */
  List<Phrase> at(int index) {
    List<Phrase> phrases = new ArrayList<>();
    String word = line.token(index).word();
    Optional<Slot> opened = Slot.openedBy(word);
    if (word.equals("using")) {
      phrases.add(fault(Kind.AMOUNT, null, index, index, line.size(), Phrase.WRONG));
    } else if (opened.isPresent()) {
      afterJoint(opened.get(), index, phrases);
    } else if (line.isJoint(index)) {
      phrases.add(fault(Kind.LOOSE, null, index, index, index + 1, Phrase.UNKNOWN));
    } else {
      elsewhere(BARE, index, index, phrases);
      unknown(null, index, index, phrases);
    }
    return phrases;
  }

  private void afterJoint(Slot slot, int index, List<Phrase> phrases) {
    int next = line.is(index + 1, "the") ? index + 2 : index + 1;
    Kind alone = line.is(index, "and") ? Kind.LOOSE : Kind.DANGLING;
    Slot filled = alone == Kind.LOOSE ? null : slot;
    phrases.add(fault(alone, filled, index, index, index + 1, Phrase.UNKNOWN));
    if (next < line.size()) {
      elsewhere(filled == null ? Set.of() : EnumSet.of(slot), index, next, phrases);
      unknown(slot, index, next, phrases);
    }
  }

  /** Words that would be right in another slot than those that can be said here. */
  private void elsewhere(Set<Slot> here, int from, int nameFrom, List<Phrase> phrases) {
    for (Slot slot : NAMED) {
      if (!here.contains(slot)) {
        for (Vocabulary.Match match : names.of(slot).at(line, nameFrom)) {
          int cost = Phrase.WRONG + (match.exact() ? Phrase.WHOLE_NAME : Phrase.SHORTENED);
          Fault fault = new Fault(Kind.ELSEWHERE, slot, match.choices());
          phrases.add(new Phrase(fault, from, nameFrom, match.to(), cost, false));
        }
      }
    }
    if (!here.contains(Slot.DAY)) {
      Days.at(line, nameFrom, scene.today())
          .ifPresent(it -> phrases.add(time(Slot.DAY, from, nameFrom, it.to())));
    }
    if (!here.contains(Slot.START)) {
      Clock.at(line, nameFrom)
          .ifPresent(it -> phrases.add(time(Slot.START, from, nameFrom, it.to())));
    }
  }

  private static Phrase time(Slot slot, int from, int nameFrom, int to) {
    return fault(Kind.ELSEWHERE, slot, from, nameFrom, to, Phrase.WRONG);
  }

  private void unknown(Slot expected, int from, int nameFrom, List<Phrase> phrases) {
    int to = nameFrom;
    while (to < line.size() && !line.isJoint(to) && to - nameFrom < LONGEST_UNKNOWN) {
      to++;
      int cost = Phrase.UNKNOWN + Phrase.UNKNOWN_WORD * (to - nameFrom);
      phrases.add(fault(Kind.UNKNOWN, expected, from, nameFrom, to, cost));
    }
  }

  private static Phrase fault(Kind kind, Slot slot, int from, int nameFrom, int to, int cost) {
    return new Phrase(new Fault(kind, slot, List.of()), from, nameFrom, to, cost, false);
  }
}
