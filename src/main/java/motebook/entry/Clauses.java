package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The grammar: what a phrase may be, wherever it stands after the duration.
 *
 * <pre>
 *   [of | at | on | with | using] OPERATION
 *   [of] MATERIAL
 *   with CONTROL   { and [with] CONTROL | , CONTROL }
 *   , CONTROL      where no operation and no material is meant
 *   in PLACE | outdoors
 *   by PERSON
 *   on DATE | today | yesterday | tomorrow, where it is planned
 *   at TIME
 *   wearing RESPIRATOR { checked | PERCENT% }
 *   using AMOUNT [of] FINISH   { and AMOUNT [of] FINISH | , AMOUNT [of] FINISH }
 * </pre>
 *
 * Before a name "the", "a", "some" and the like say nothing; what may stand without its joint is in
 * {@link LooseClauses}.
 */
final class Clauses {
  private static final Pattern PERCENT =
      Pattern.compile("(\\d{1,3}(?:\\.\\d{1,20})?) *%" + Durations.END);

  private final Line line;
  private final Scene scene;
  private final Vocabularies names;
  private final LooseClauses loose;

  Clauses(Line line, Scene scene, Vocabularies names) {
    this.line = line;
    this.scene = scene;
    this.names = names;
    loose = new LooseClauses(line, names);
  }

  /** Every phrase that begins with the word; a name of several is a faulty phrase. */
  List<Phrase> at(int index) {
    List<Phrase> phrases = new ArrayList<>();
    jointed(index, phrases);
    named(Slot.OPERATION, index, index, false, phrases);
    named(Slot.MATERIAL, index, index, false, phrases);
    if (line.token(index).afterComma()) {
      named(Slot.CONTROL, index, index, true, phrases);
      amount(index, index, true, phrases);
    }
    amount(index, index, false, phrases);
    phrases.addAll(loose.at(index));
    return phrases;
  }

  private void jointed(int index, List<Phrase> phrases) {
    switch (line.token(index).word()) {
      case "of" -> {
        named(Slot.MATERIAL, index, index + 1, false, phrases);
        wholeOperation(index, phrases);
      }
      case "with" -> {
        named(Slot.CONTROL, index, index + 1, false, phrases);
        amount(index, index + 1, false, phrases);
        tool(index, phrases);
      }
      case "and" -> {
        named(Slot.CONTROL, index, past("with", index + 1), true, phrases);
        amount(index, index + 1, true, phrases);
      }
      case "using" -> {
        amount(index, index + 1, false, phrases);
        tool(index, phrases);
      }
      case "in" -> {
        named(Slot.PLACE, index, index + 1, false, phrases);
        wholeMaterial(index, phrases);
      }
      case "by" -> {
        named(Slot.PERSON, index, index + 1, false, phrases);
        if (ByHand.at(line, index)) {
          phrases.add(Phrase.passed(index, index + 2, Phrase.FILLER));
        }
      }
      case "wearing", "wore" -> worn(index, index + 1, phrases);
      case "outdoors" -> phrases.add(plain(new Said.Outdoors(), index, index, index + 1));
      case "at" -> {
        start(index, phrases);
        wholeOperation(index, phrases);
      }
      case "on" -> {
        day(index, index + 1, phrases);
        wholeOperation(index, phrases);
        wholeMaterial(index, phrases);
      }
      case Days.TODAY, Days.YESTERDAY, Days.TOMORROW -> day(index, index, phrases);
      default -> {}
    }
  }

  private int past(String word, int index) {
    return line.is(index, word) ? index + 1 : index;
  }

  private static Phrase plain(Said said, int from, int nameFrom, int to) {
    return new Phrase(said, from, nameFrom, to, Phrase.WHOLE_NAME, false);
  }

  private void start(int index, List<Phrase> phrases) {
    Clock.at(line, index + 1)
        .ifPresent(it -> phrases.add(plain(new Said.Start(it.time()), index, index + 1, it.to())));
  }

  private void day(int index, int dateFrom, List<Phrase> phrases) {
    Days.at(line, dateFrom, scene)
        .ifPresent(it -> phrases.add(plain(new Said.Day(it.date()), index, dateFrom, it.to())));
  }

  private void named(Slot slot, int from, int nameFrom, boolean continues, List<Phrase> phrases) {
    for (Vocabulary.Match found : names.of(slot).at(line, nameFrom)) {
      Vocabulary.Match match = slot == Slot.OPERATION ? ByHand.in(line, nameFrom, found) : found;
      Phrase phrase = named(slot, from, nameFrom, match, continues);
      if (slot == Slot.OPERATION && saysTooLittle(nameFrom, match)) {
        continue;
      }
      phrases.add(phrase);
      int running = Fillers.pastRunning(line, match.to());
      if (slot == Slot.CONTROL && running > match.to()) {
        phrases.add(phrase.upTo(running));
      }
    }
    // A name may begin like a word that says nothing, so both ways are tried.
    if (nameFrom > from && Fillers.at(line, nameFrom)) {
      dearer(behind -> named(slot, from, nameFrom + 1, continues, behind), phrases);
    }
  }

  /** Words of every day and articles name no operation, though a name may begin like them. */
  private boolean saysTooLittle(int nameFrom, Vocabulary.Match match) {
    boolean article = match.to() == nameFrom + 1 && Fillers.at(line, nameFrom);
    return !match.exact() && (article || Everyday.past(line, nameFrom) >= match.to());
  }

  // A name said in full goes before one behind a word that was passed by.
  private static void dearer(Consumer<List<Phrase>> found, List<Phrase> phrases) {
    List<Phrase> behind = new ArrayList<>();
    found.accept(behind);
    behind.forEach(phrase -> phrases.add(phrase.dearer()));
  }

  private static Phrase named(
      Slot slot, int from, int nameFrom, Vocabulary.Match match, boolean continues) {
    return new Phrase(match.said(slot), from, nameFrom, match.to(), match.cost(slot), continues);
  }

  /** "At the table saw", "of table saw": shortened only behind an article, for "at 9" is no saw. */
  private void wholeOperation(int index, List<Phrase> phrases) {
    int nameFrom = Fillers.past(line, index + 1);
    for (Vocabulary.Match match : names.of(Slot.OPERATION).at(line, nameFrom)) {
      if (match.exact() || nameFrom > index + 1) {
        phrases.add(named(Slot.OPERATION, index, nameFrom, match, false));
        phrases.addAll(loose.broad(index, nameFrom));
      } else if (line.is(index, "of")) {
        Vocabulary.Match meant = ByHand.in(line, nameFrom, match);
        phrases.add(named(Slot.OPERATION, index, nameFrom, meant, false).upTo(match.to()));
      }
    }
  }

  /** "With a jigsaw", "using the planer": what it is done with, where no control is called so. */
  private void tool(int index, List<Phrase> phrases) {
    int nameFrom = Fillers.past(line, index + 1);
    if (names.of(Slot.CONTROL).at(line, nameFrom).isEmpty()) {
      for (Vocabulary.Match match : names.of(Slot.OPERATION).at(line, nameFrom)) {
        if (match.unique() && Broad.inFullWords(line, nameFrom, match)) {
          phrases.add(named(Slot.OPERATION, index, nameFrom, match, false).upTo(match.to()));
        }
      }
      loose.broad(index, nameFrom).forEach(phrases::add);
    }
  }

  /** "Holes in oak", "the sander on oak": no place and no date is called so. */
  private void wholeMaterial(int index, List<Phrase> phrases) {
    int nameFrom = Fillers.past(line, index + 1);
    for (Vocabulary.Match match : names.of(Slot.MATERIAL).at(line, nameFrom)) {
      if (match.exact() && match.unique()) {
        phrases.add(named(Slot.MATERIAL, index, nameFrom, match, false).upTo(match.to()));
      }
    }
  }

  private void amount(int from, int amountFrom, boolean continues, List<Phrase> phrases) {
    Optional<Amounts.Found> amount = Amounts.at(line, amountFrom);
    if (amount.isPresent()) {
      double millilitres = amount.get().millilitres();
      for (Vocabulary.Match match : names.of(Slot.FINISH).at(line, amount.get().to())) {
        Said said =
            match.unique()
                ? new Said.Using(match.choices().get(0).key(), millilitres)
                : new Said.Fault(Said.Fault.Kind.AMBIGUOUS, Slot.FINISH, match.choices());
        phrases.add(
            new Phrase(
                said, from, amount.get().to(), match.to(), match.cost(Slot.FINISH), continues));
      }
    }
  }

  private void worn(int from, int nameFrom, List<Phrase> phrases) {
    if (Fillers.at(line, nameFrom)) {
      dearer(behind -> worn(from, nameFrom + 1, behind), phrases);
    }
    for (Vocabulary.Match match : MaskTalk.worn(names.of(Slot.MASK), line, nameFrom)) {
      phrases.add(worn(from, nameFrom, match));
    }
  }

  private Phrase worn(int from, int nameFrom, Vocabulary.Match match) {
    boolean checked = line.is(match.to(), "checked");
    Matcher share = line.matcherAt(PERCENT, checked ? match.to() + 1 : match.to());
    boolean shared = share.lookingAt();
    int to = shared ? line.wordAfter(share.end()) : match.to() + (checked ? 1 : 0);
    boolean checkedAfter = !checked && line.is(to, "checked");
    double percent = shared ? Double.parseDouble(share.group(1)) : 100;
    // a percentage is rather the share of the time than the last word of a respirator's name
    int cost = match.cost(Slot.MASK) + (shared ? 0 : 1);
    Said said =
        match.unique()
            ? new Said.Mask(match.choices().get(0).key(), checked || checkedAfter, percent)
            : new Said.Fault(Said.Fault.Kind.AMBIGUOUS, Slot.MASK, match.choices());
    return new Phrase(said, from, nameFrom, to + (checkedAfter ? 1 : 0), cost, false);
  }
}
