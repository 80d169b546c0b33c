package motebook.entry;

import java.util.List;
import motebook.model.Action;
import motebook.model.Names;
import motebook.model.Refusal;

/** What is told of words that name nothing: what they may have been meant for. */
final class UnknownWords {
  private static final int MOST_LISTED = 12;
  private static final int SHORTEST_JOINT = 4;

  private final Line line;
  private final Vocabularies names;
  private final NearMiss nearMiss;

  UnknownWords(Line line, Vocabularies names, NearMiss nearMiss) {
    this.line = line;
    this.names = names;
    this.nearMiss = nearMiss;
  }

  static String didYouMean(String typed, List<String> near) {
    // Where joints are in the way, marks show where one choice ends and the next begins.
    boolean jointed =
        near.stream().anyMatch(name -> Slot.openedBy(name.split(" ", 2)[0]).isPresent());
    List<String> choices =
        jointed && near.size() > 1 ? near.stream().map(name -> "\"" + name + "\"").toList() : near;
    return "\"" + typed + "\": did you mean " + Wording.list(choices, "or") + "?";
  }

  /** The message about words of a reading that name nothing. */
  Refusal about(Phrase phrase, Reading reading) {
    String typed = line.typed(phrase.nameFrom(), phrase.to());
    Slot expected = ((Said.Fault) phrase.said()).slot();
    return new TradeWords(names, typed)
        .answer(expected, materialBeside(reading, phrase))
        .map(Refusal::new)
        .orElseGet(() -> unknown(phrase, expected, typed));
  }

  private static boolean materialBeside(Reading reading, Phrase except) {
    return reading.phrases(Slot.MATERIAL).anyMatch(phrase -> !phrase.equals(except));
  }

  private Refusal unknown(Phrase phrase, Slot expected, String typed) {
    if (expected == Slot.START) {
      return new Refusal(noTime(typed));
    }
    List<String> joints = expected == null ? misspeltJoint(phrase) : List.of();
    if (!joints.isEmpty()) {
      return new Refusal(didYouMean(line.token(phrase.nameFrom()).word(), joints));
    }
    List<String> near = nearMiss.around(phrase.nameFrom(), expected);
    return near.isEmpty() ? nothingNear(expected, typed) : new Refusal(didYouMean(typed, near));
  }

  /** The joints that one letter makes of a word; the short ones are one letter from anything. */
  private List<String> misspeltJoint(Phrase phrase) {
    String word = line.token(phrase.nameFrom()).word();
    return word.length() < SHORTEST_JOINT - 1
        ? List.of()
        : Names.JOINTS.stream()
            .filter(joint -> joint.length() >= SHORTEST_JOINT && !joint.endsWith(":"))
            .filter(joint -> Spelling.distance(word, joint, 1) <= 1)
            .sorted()
            .toList();
  }

  private Refusal nothingNear(Slot expected, String typed) {
    String quoted = "\"" + typed + "\"";
    if (expected == null) {
      return new Refusal(
          quoted
              + " names neither an operation nor a material, and no clause begins with it. Say what"
              + " was done and to what, such as: orbital sanding of oak.");
    }
    return switch (expected) {
      case DAY ->
          new Refusal(quoted + " is no date: say it as 2026-03-02, today, yesterday or a weekday.");
      case MASK -> WorkRules.respiratorNotHeld(typed, labels(Slot.MASK));
      case PLACE -> notInBook(expected, quoted).with(new Action.AddPlace());
      case PERSON -> notInBook(expected, quoted).with(new Action.AddPerson());
      default ->
          new Refusal(quoted + " is no " + expected.label() + ". Known are " + known(expected));
    };
  }

  private Refusal notInBook(Slot slot, String quoted) {
    return new Refusal(
        "The book has no " + slot.label() + " " + quoted + ". It has " + known(slot));
  }

  private static String noTime(String typed) {
    return typed.matches("0?[1-9]|1[0-2]")
        ? "\"%s\" may be early or late: say at %s:00, at %sam or at %spm."
            .formatted(typed, typed, typed, typed)
        : "\"" + typed + "\" is no time of day: say it as 9:15, 14:30 or 2:30pm.";
  }

  private String known(Slot slot) {
    List<String> labels = labels(slot);
    return labels.size() > MOST_LISTED
        ? String.join(", ", labels.subList(0, MOST_LISTED)) + " and others."
        : Wording.list(labels, "and") + ".";
  }

  private List<String> labels(Slot slot) {
    return names.of(slot).entries().stream().map(Vocabulary.Entry::label).toList();
  }
}
