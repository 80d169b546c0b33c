package motebook.entry;

import java.util.ArrayList;
import java.util.List;

/** What is said without its joint and can mean but one thing, and what says nothing. */
final class LooseClauses {
  private final Line line;
  private final Vocabularies names;

  LooseClauses(Line line, Vocabularies names) {
    this.line = line;
    this.names = names;
  }

  /** Every such phrase that begins with the word. */
  List<Phrase> at(int index) {
    List<Phrase> phrases = new ArrayList<>();
    if (Fillers.at(line, index)) {
      phrases.add(Phrase.passed(index, index + 1, Phrase.FILLER));
    }
    Clock.withHalf(line, index)
        .ifPresent(it -> phrases.add(loose(new Said.Start(it.time()), index, it.to())));
    if (line.is(index, "outside")) {
      phrases.add(loose(new Said.Outdoors(), index, index + 1));
    }
    without(index, phrases);
    if (index > 0 && Fillers.at(line, index - 1)) {
      inFull(Slot.PLACE, index, 1, phrases); // "swept the shop"
    }
    inFull(Slot.PERSON, index, 1, phrases); // "Ana: 40m table saw"
    inFull(Slot.CONTROL, index, 2, phrases); // "windows open"
    running(index, phrases);
    if (line.token(index).afterComma()) {
      controlAlone(index, index, phrases);
    }
    if (line.is(index, "and")) {
      controlAlone(index, Fillers.past(line, index + 1), phrases); // "the planer and collector"
    }
    phrases.addAll(broad(index, index));
    int talk = Math.max(Fillers.pastTalk(line, index), Everyday.past(line, index));
    if (talk > index) {
      phrases.add(Phrase.passed(index, talk, Phrase.TALK));
    }
    return phrases;
  }

  private static Phrase loose(Said said, int from, int to) {
    return new Phrase(said, from, from, to, Phrase.FILLER, false);
  }

  /** "No mask", "without dust collection". */
  private void without(int index, List<Phrase> phrases) {
    int named = Without.past(line, index);
    if (named == index) {
      return;
    }
    int mask = MaskTalk.past(line, named);
    if (mask > named) {
      phrases.add(loose(new Said.Unmasked(), index, mask));
    }
    for (Vocabulary.Match match : names.of(Slot.CONTROL).at(line, named)) {
      phrases.add(Phrase.passed(index, match.to(), Phrase.TALK));
    }
  }

  private void inFull(Slot slot, int index, int words, List<Phrase> phrases) {
    for (Vocabulary.Match match : names.of(slot).at(line, index)) {
      if (match.exact() && match.sayable(slot) && match.to() >= index + words) {
        phrases.add(loose(match.said(slot), index, match.to()));
      }
    }
  }

  /** "Air cleaner on", "shop vac running". */
  private void running(int index, List<Phrase> phrases) {
    for (Vocabulary.Match match : names.of(Slot.CONTROL).at(line, index)) {
      int to = Fillers.pastRunning(line, match.to());
      boolean called = match.sayable(Slot.CONTROL) && Broad.inFullWords(line, index, match);
      if (to > match.to() && called && !means(Slot.OPERATION, index, match)) {
        phrases.add(loose(match.said(Slot.CONTROL), index, to));
      }
    }
  }

  /**
   * A control behind a comma or "and" without "with", unless its words may also mean something
   * else.
   */
  private void controlAlone(int from, int nameFrom, List<Phrase> phrases) {
    for (Vocabulary.Match match : names.of(Slot.CONTROL).at(line, nameFrom)) {
      if (match.sayable(Slot.CONTROL)
          && !means(Slot.OPERATION, nameFrom, match)
          && !means(Slot.MATERIAL, nameFrom, match)) {
        Said said = match.said(Slot.CONTROL);
        int cost = match.cost(Slot.CONTROL) + Phrase.FILLER;
        phrases.add(new Phrase(said, from, nameFrom, match.to(), cost, false));
      }
    }
  }

  private boolean means(Slot slot, int index, Vocabulary.Match as) {
    return names.of(slot).at(line, index).stream().anyMatch(match -> match.to() == as.to());
  }

  /** Words from an index on that leave the operation open, for others to narrow it down. */
  List<Phrase> broad(int from, int nameFrom) {
    List<Phrase> phrases = new ArrayList<>();
    for (Vocabulary.Match match : names.of(Slot.OPERATION).at(line, nameFrom)) {
      List<Vocabulary.Entry> meant = Broad.meant(line, nameFrom, match);
      if (!match.exact() && meant.size() > 1) {
        Said said = new Said.Broad(meant);
        phrases.add(new Phrase(said, from, nameFrom, match.to(), Phrase.TALK, false));
      }
    }
    return phrases;
  }
}
