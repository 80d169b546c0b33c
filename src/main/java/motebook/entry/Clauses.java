package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The grammar: what a phrase may be, wherever it stands after the duration.
 *
 * <pre>
 *   OPERATION
 *   [of] MATERIAL
 *   with CONTROL   { and [with] CONTROL | , CONTROL }
 *   in [the] PLACE | outdoors
 *   by PERSON
 *   on DATE | today | yesterday
 *   at TIME
 *   wearing [the] RESPIRATOR { checked | PERCENT% }
 *   using AMOUNT [of] FINISH   { and AMOUNT [of] FINISH | , AMOUNT [of] FINISH }
 * </pre>
 */
final class Clauses {
  private static final Pattern PERCENT =
      Pattern.compile("(\\d{1,3}(?:\\.\\d{1,20})?) *%" + Durations.END);

  private final Line line;
  private final Scene scene;
  private final Vocabularies names;

  Clauses(Line line, Scene scene, Vocabularies names) {
    this.line = line;
    this.scene = scene;
    this.names = names;
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
    return phrases;
  }

  private void jointed(int index, List<Phrase> phrases) {
    switch (line.token(index).word()) {
      case "of" -> named(Slot.MATERIAL, index, index + 1, false, phrases);
      case "with" -> named(Slot.CONTROL, index, index + 1, false, phrases);
      case "and" -> {
        named(Slot.CONTROL, index, past("with", index + 1), true, phrases);
        amount(index, index + 1, true, phrases);
      }
      case "using" -> amount(index, index + 1, false, phrases);
      case "in" -> named(Slot.PLACE, index, past("the", index + 1), false, phrases);
      case "by" -> named(Slot.PERSON, index, index + 1, false, phrases);
      case "wearing" -> worn(index, past("the", index + 1), phrases);
      case "outdoors" -> phrases.add(plain(new Said.Outdoors(), index, index, index + 1));
      case "at" -> start(index, phrases);
      case "on" -> day(index, index + 1, phrases);
      case Days.TODAY, Days.YESTERDAY -> day(index, index, phrases);
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
    Days.at(line, dateFrom, scene.today())
        .ifPresent(it -> phrases.add(plain(new Said.Day(it.date()), index, dateFrom, it.to())));
  }

  private void named(Slot slot, int from, int nameFrom, boolean continues, List<Phrase> phrases) {
    for (Vocabulary.Match match : names.of(slot).at(line, nameFrom)) {
      Said said =
          match.unique()
              ? new Said.Name(slot, match.choices().get(0).key())
              : new Said.Fault(Said.Fault.Kind.AMBIGUOUS, slot, match.choices());
      phrases.add(new Phrase(said, from, nameFrom, match.to(), cost(match), continues));
    }
  }

  private static int cost(Vocabulary.Match match) {
    int cost = match.exact() ? Phrase.WHOLE_NAME : Phrase.SHORTENED;
    return match.unique() ? cost : cost + Phrase.WRONG;
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
        phrases.add(new Phrase(said, from, amount.get().to(), match.to(), cost(match), continues));
      }
    }
  }

  private void worn(int from, int nameFrom, List<Phrase> phrases) {
    for (Vocabulary.Match match : names.of(Slot.MASK).at(line, nameFrom)) {
      if (match.unique()) {
        phrases.add(worn(from, nameFrom, match));
      } else {
        Said said = new Said.Fault(Said.Fault.Kind.AMBIGUOUS, Slot.MASK, match.choices());
        phrases.add(new Phrase(said, from, nameFrom, match.to(), cost(match), false));
      }
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
    int cost = cost(match) + (shared ? 0 : 1);
    Said said = new Said.Mask(match.choices().get(0).key(), checked || checkedAfter, percent);
    return new Phrase(said, from, nameFrom, to + (checkedAfter ? 1 : 0), cost, false);
  }
}
