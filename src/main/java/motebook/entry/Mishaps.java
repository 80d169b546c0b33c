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
      List.of(
          Slot.OPERATION,
          Slot.MATERIAL,
          Slot.CONTROL,
          Slot.PLACE,
          Slot.PERSON,
          Slot.MASK,
          Slot.FINISH);

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
      using(index, phrases);
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

  /** After "using" an amount is missing, or the finish after the amount is not known. */
  private void using(int index, List<Phrase> phrases) {
    int next = index + 1;
    int name = Amounts.at(line, next).map(Amounts.Found::to).orElse(next);
    if (name == line.size() || line.isJoint(name)) {
      phrases.add(fault(Kind.DANGLING, Slot.FINISH, index, index, name, Phrase.UNKNOWN));
    } else if (name == next) {
      int to = untilJoint(next);
      phrases.add(fault(Kind.AMOUNT, Slot.FINISH, index, next, to, Phrase.WRONG));
    } else {
      unknown(Slot.FINISH, index, name, phrases);
    }
  }

  private int untilJoint(int from) {
    int to = from;
    while (to < line.size() && !line.isJoint(to)) {
      to++;
    }
    return to;
  }

  private void afterJoint(Slot slot, int index, List<Phrase> phrases) {
    int next = Fillers.past(line, index + 1);
    Kind alone = line.is(index, "and") ? Kind.LOOSE : Kind.DANGLING;
    Slot filled = alone == Kind.LOOSE ? null : slot;
    phrases.add(fault(alone, filled, index, index, index + 1, Phrase.UNKNOWN));
    Amounts.at(line, next)
        .filter(amount -> amount.to() < line.size())
        .filter(amount -> told(Slot.FINISH, amount.to()).isEmpty())
        .ifPresent(amount -> unknown(Slot.FINISH, index, amount.to(), phrases));
    if (next < line.size()) {
      elsewhere(filled == null ? Set.of() : EnumSet.of(slot), index, next, phrases);
      unknown(slot, index, next, phrases);
    }
  }

  /** Words that would be right in another slot than those that can be said here. */
  private void elsewhere(Set<Slot> here, int from, int nameFrom, List<Phrase> phrases) {
    for (Slot slot : NAMED) {
      if (!here.contains(slot)) {
        for (Vocabulary.Match match : told(slot, nameFrom)) {
          int cost = Phrase.WRONG + (match.exact() ? Phrase.WHOLE_NAME : Phrase.SHORTENED);
          Fault fault = new Fault(Kind.ELSEWHERE, slot, match.choices());
          int to = slot == Slot.MASK ? Fillers.pastRunning(line, match.to()) : match.to();
          phrases.add(new Phrase(fault, from, nameFrom, to, cost, false));
        }
      }
    }
    if (!here.contains(Slot.DAY)) {
      Days.at(line, nameFrom, scene)
          .ifPresent(it -> phrases.add(time(Slot.DAY, from, nameFrom, it.to())));
    }
    if (!here.contains(Slot.START)) {
      Clock.at(line, nameFrom)
          .ifPresent(it -> phrases.add(time(Slot.START, from, nameFrom, it.to())));
    }
  }

  /** The beginning of a finish's name is told as nothing: oils and stains begin like much else. */
  private List<Vocabulary.Match> told(Slot slot, int nameFrom) {
    return names.of(slot).at(line, nameFrom).stream()
        .filter(match -> slot != Slot.FINISH || match.exact())
        .filter(match -> slot != Slot.CONTROL || match.exact() || !isOperation(nameFrom, match))
        .toList();
  }

  private boolean isOperation(int nameFrom, Vocabulary.Match as) {
    return names.of(Slot.OPERATION).at(line, nameFrom).stream()
        .anyMatch(match -> match.to() == as.to());
  }

  private static Phrase time(Slot slot, int from, int nameFrom, int to) {
    return fault(Kind.ELSEWHERE, slot, from, nameFrom, to, Phrase.WRONG);
  }

  private void unknown(Slot expected, int from, int nameFrom, List<Phrase> phrases) {
    // Behind "by" and "in" the beginning of a trade's word is rather a name that the book lacks.
    boolean named =
        (expected == Slot.PERSON || expected == Slot.PLACE) && Amounts.at(line, nameFrom).isEmpty();
    int first = named ? Phrase.WRONG : Phrase.UNKNOWN;
    int each = named ? Phrase.SHORTENED / 2 : Phrase.UNKNOWN_WORD;
    int to = nameFrom;
    while (to < line.size() && !line.isJoint(to) && to - nameFrom < LONGEST_UNKNOWN) {
      to++;
      int cost = first + each * (to - nameFrom);
      phrases.add(fault(Kind.UNKNOWN, expected, from, nameFrom, to, cost));
    }
  }

  private static Phrase fault(Kind kind, Slot slot, int from, int nameFrom, int to, int cost) {
    return new Phrase(new Fault(kind, slot, List.of()), from, nameFrom, to, cost, false);
  }
}
