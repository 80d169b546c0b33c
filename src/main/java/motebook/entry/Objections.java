package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.entry.Clause.Again;
import motebook.entry.Clause.Name;
import motebook.entry.Clause.Unknown;
import motebook.model.Refusal;
import motebook.model.Text;

/** Tells what is wrong with a reading: the word, where it stands, and what would be right. */
final class Objections {
  private final Grammar grammar;

  Objections(Grammar grammar) {
    this.grammar = grammar;
  }

  /** Refuses the first thing in a reading that is not plain; passes a clean one. */
  void raise(Reading reading) {
    // A word nobody knows comes before one that may mean several things.
    for (Clause clause : reading.clauses()) {
      if (clause.meaning() instanceof Unknown unknown) {
        throw unknown(clause, unknown.opened());
      }
    }
    for (Clause clause : reading.clauses()) {
      if (clause.meaning() instanceof Again again) {
        throw again(clause, again);
      }
      if (clause.meaning() instanceof Name name && name.choices().size() > 1) {
        throw ambiguous(clause, name);
      }
    }
    if (!reading.fills(Slot.OPERATION)) {
      throw new Refusal(
          "The line does not say what was done. Name an operation, such as 40m orbital sanding of"
              + " oak or 20m sweeping.");
    }
  }

  private Refusal ambiguous(Clause clause, Name name) {
    List<String> labels = name.choices().stream().map(Vocabulary.Entry::label).toList();
    return at(
        clause.at(),
        clause.to(),
        quoted(clause.at(), clause.to())
            + " may be "
            + Saying.anyOf(labels)
            + ": say which "
            + name.named().label()
            + ".");
  }

  private Refusal again(Clause clause, Again again) {
    return at(
        clause.from(),
        clause.to(),
        quoted(clause.from(), clause.to())
            + ": the "
            + again.filled().label()
            + " was said already. Say it once; a second session is a line of its own.");
  }

  private Refusal unknown(Clause clause, Optional<Slot> opened) {
    if (grammar.line().is(clause.from(), "using")) {
      return at(
          clause.from(),
          clause.to(),
          "Amounts of a finish are not kept yet: leave \"using …\" out, or put it after \"note\".");
    }
    return opened.map(slot -> noSuchName(clause, slot)).orElseGet(() -> noSuchWord(clause.from()));
  }

  private Refusal noSuchName(Clause clause, Slot slot) {
    if (clause.at() >= clause.to()) {
      return at(
          clause.from(),
          clause.to(),
          quoted(clause.from(), clause.to())
              + " wants "
              + slot.one()
              + " after it"
              + example(slot));
    }
    String typed = quoted(clause.at(), clause.to());
    return switch (slot) {
      case MASK ->
          at(
              clause.at(),
              nameEnd(clause.at()),
              WorkRules.noRespirator(name(clause.at()), grammar.scene()));
      case START ->
          at(
              clause.at(),
              clause.to(),
              typed + " is no time of day: say it such as 9:15 or 2:30pm.");
      case DAY ->
          at(
              clause.at(),
              clause.to(),
              typed + " is no date: say it such as 2026-03-02, yesterday or monday.");
      default -> nearest(clause.at(), List.of(slot), slot);
    };
  }

  private static String example(Slot slot) {
    return switch (slot) {
      case START -> ", such as 9:15.";
      case DAY -> ", such as 2026-03-02 or yesterday.";
      default -> ".";
    };
  }

  /** Whatever stands up to the next joint, taken as a name. */
  private int nameEnd(int from) {
    int to = from + 1;
    while (to < grammar.line().size() && !grammar.line().isJoint(to)) {
      to++;
    }
    return to;
  }

  private String name(int from) {
    return grammar.line().typed(from, nameEnd(from));
  }

  private Refusal nearest(int from, List<Slot> slots, Slot slot) {
    List<String> near = NearMiss.names(grammar, from, slots, any -> "");
    String message =
        near.isEmpty()
            ? quoted(from, from + 1) + " is not " + slot.one() + " of this book" + known(slot)
            : quoted(from, from + 1) + ": did you mean " + Saying.anyOf(near) + "?";
    return at(from, from + 1, message);
  }

  private String known(Slot slot) {
    List<String> labels =
        grammar.vocabulary(slot).entries().stream().map(Vocabulary.Entry::label).toList();
    return labels.isEmpty() ? "." : ". It knows: " + String.join(", ", labels) + ".";
  }

  private Refusal noSuchWord(int from) {
    List<String> elsewhere = inAnotherSlot(from);
    if (!elsewhere.isEmpty()) {
      return at(
          from,
          from + 1,
          quoted(from, from + 1) + " needs its joint: say " + Saying.anyOf(elsewhere) + ".");
    }
    List<String> near = NearMiss.names(grammar, from, BARE, any -> "");
    if (near.isEmpty()) {
      near = NearMiss.names(grammar, from, withJoints(), slot -> slot.joint() + " ");
    }
    if (near.isEmpty()) {
      near = NearMiss.words(grammar.line().token(from).word(), List.copyOf(joints()));
    }
    return at(
        from,
        from + 1,
        near.isEmpty()
            ? quoted(from, from + 1)
                + " is not understood. After the duration say an operation, \"of\" a material,"
                + " \"with\" a control, \"in\" a place, \"by\" a person, \"at\" a time, \"on\" a"
                + " date; anything else goes last, after \"note\"."
            : quoted(from, from + 1) + ": did you mean " + Saying.anyOf(near) + "?");
  }

  // Even where the rest of a misspelt name was taken for a name of its own.
  private static final List<Slot> BARE = List.of(Slot.OPERATION, Slot.MATERIAL);

  private static List<Slot> withJoints() {
    return List.of(Slot.CONTROL, Slot.PLACE, Slot.PERSON);
  }

  private static java.util.Set<String> joints() {
    return motebook.model.Names.JOINTS;
  }

  private List<String> inAnotherSlot(int from) {
    List<String> sayings = new ArrayList<>();
    for (Slot slot : withJoints()) {
      grammar.vocabulary(slot).at(grammar.line(), from).stream()
          .filter(Vocabulary.Match::unique)
          .map(match -> "\"" + slot.said(match.choices().get(0).label()) + "\"")
          .filter(saying -> !sayings.contains(saying))
          .forEach(sayings::add);
    }
    return sayings;
  }

  private String quoted(int from, int to) {
    return "\"" + Text.clean(grammar.line().typed(from, to)) + "\"";
  }

  private Refusal at(int from, int to, String message) {
    return grammar.line().refusal(message, from, to);
  }
}
