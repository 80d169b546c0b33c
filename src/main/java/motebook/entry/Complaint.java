package motebook.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.entry.Said.Fault;
import motebook.model.Refusal;
import motebook.reference.Reference;

/** Says what is wrong with a line that cannot be read, at the word where it goes wrong. */
final class Complaint {
  private final Line line;
  private final Vocabularies names;
  private final NearMiss nearMiss;
  private final UnknownWords unknown;
  private final Stretch stretch;

  /**
   * @param start index of the first word that may belong to a name
   */
  Complaint(Line line, Stretch stretch, int start, Vocabularies names) {
    this.line = line;
    this.names = names;
    this.stretch = stretch;
    nearMiss = new NearMiss(line, start, names);
    unknown = new UnknownWords(line, names, nearMiss);
  }

  /** The refusal for the gravest fault of a reading. */
  Refusal about(Reading reading) {
    return reading.phrases().stream()
        .filter(Phrase::faulty)
        .min(Comparator.comparing(phrase -> fault(phrase).kind()))
        .map(phrase -> line.refusal(refusal(phrase, reading), phrase.nameFrom(), phrase.to()))
        .orElseGet(() -> noOperation(reading));
  }

  private static Fault fault(Phrase phrase) {
    return (Fault) phrase.said();
  }

  private Refusal noOperation(Reading reading) {
    return Everyday.first(line)
        .map(open -> whichOperation(line, open))
        .orElseGet(() -> unsaid(reading));
  }

  /** The refusal of words that leave the operation open, or that no operation comes near. */
  static Refusal whichOperation(Line line, Everyday.Refusing open) {
    List<String> said =
        open.word().operations().stream()
            .map(Reference.shipped()::operation)
            .map(Saying::name)
            .toList();
    String typed = line.typed(open.from(), open.to());
    String which =
        said.isEmpty()
            ? "There are no figures for \"%s\"."
            : open.word().nearest()
                ? "There are no figures for \"%s\"; %s comes nearest. Say that."
                : said.size() == 1 ? "\"%s\": say %s." : "\"%s\" may be %s. Say which.";
    String advice = open.word().advice().isEmpty() ? "" : " " + open.word().advice();
    return line.refusal(
        which.formatted(typed, Wording.list(said, "or")) + advice, open.from(), open.to());
  }

  private Refusal unsaid(Reading reading) {
    String time = line.typed(stretch.from(), stretch.to());
    String room = " For time in %s without dusty work, say: %s in shop in %s.";
    return new Refusal(
        "What was done is missing. Say it after the duration, such as: "
            + time
            + " orbital sanding of oak."
            + reading.keys(Slot.PLACE).stream()
                .findFirst()
                .map(place -> room.formatted(place, time, place))
                .orElse(""));
  }

  private Refusal refusal(Phrase phrase, Reading reading) {
    return fault(phrase).kind() == Fault.Kind.UNKNOWN
        ? unknown.about(phrase, reading)
        : new Refusal(message(phrase, reading));
  }

  private String message(Phrase phrase, Reading reading) {
    String typed = line.typed(phrase.nameFrom(), phrase.to());
    Fault fault = fault(phrase);
    return switch (fault.kind()) {
      case AMOUNT -> noAmount(line.typedSigned(phrase.nameFrom(), phrase.to()));
      case UNKNOWN -> throw new IllegalArgumentException("told by UnknownWords");
      case DANGLING -> misspeltOr(phrase, typed, dangling(fault.slot(), typed));
      case LOOSE -> misspeltOr(phrase, typed, loose(typed));
      case ELSEWHERE ->
          misspeltOr(
              phrase,
              typed,
              notWood(fault, typed, reading).orElseGet(() -> elsewhere(fault, typed)));
      case REPEATED -> misspeltOr(phrase, typed, repeated(phrase, fault.slot(), reading, typed));
      case AMBIGUOUS ->
          misspeltOr(
              phrase,
              typed,
              ambiguous(typed, fault.choices().stream().map(Vocabulary.Entry::label).toList()));
    };
  }

  /** A letter wrong in a name of several words explains more than what became of its words. */
  private String misspeltOr(Phrase phrase, String typed, String message) {
    if (isName(phrase)) {
      return message;
    }
    List<String> near = nearMiss.oneLetterOff(phrase.nameFrom());
    return near.isEmpty() ? message : UnknownWords.didYouMean(typed, near);
  }

  private boolean isName(Phrase phrase) {
    Slot slot = fault(phrase).slot();
    return slot != null
        && names.of(slot).at(line, phrase.nameFrom()).stream()
            .anyMatch(match -> match.exact() && match.to() == phrase.to());
  }

  private static String noAmount(String typed) {
    return "\"%s\" does not begin with an amount. Say how much, then of which finish: using %s"
            .formatted(typed, Amounts.EXAMPLE)
        + " lacquer; ml, l, fl oz, pint, quart and gallon are known.";
  }

  private static String dangling(Slot slot, String typed) {
    String example =
        switch (slot) {
          case MATERIAL -> "oak";
          case CONTROL -> "tool vacuum";
          case DAY -> Days.YESTERDAY;
          case START -> "9:15";
          case FINISH -> "lacquer";
          default -> "NAME";
        };
    return "\"" + typed + "\" wants " + slot.one() + " after it: " + slot.said(example) + ".";
  }

  private static String loose(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "and" ->
          "\"" + typed + "\" joins one control to another: with tool vacuum and air cleaner.";
      case "checked" -> "\"" + typed + "\" belongs after a respirator: wearing NAME checked.";
      case "the" -> "\"" + typed + "\" has no name after it. Leave it out.";
      default -> "\"" + typed + "\" cannot stand here. Leave it out.";
    };
  }

  /** A finish where no finish is put on is what is worked: "sanding epoxy". */
  private Optional<String> notWood(Fault fault, String typed, Reading reading) {
    boolean finishing =
        reading.keys(Slot.OPERATION).stream()
            .anyMatch(key -> Reference.shipped().operation(key).finishes());
    return fault.slot() == Slot.FINISH && !finishing
        ? new TradeWords(names, typed).notWood()
        : Optional.empty();
  }

  private static String elsewhere(Fault fault, String typed) {
    Stream<String> meant =
        fault.choices().isEmpty()
            ? Stream.of(typed)
            : fault.choices().stream().map(Vocabulary.Entry::label);
    List<String> said = meant.map(fault.slot()::said).toList();
    if (said.equals(List.of(typed))) {
      return "\"%s\" is %s and stands alone: leave out the word before it."
          .formatted(typed, fault.slot().one());
    }
    return "\"%s\" is %s; say: %s.".formatted(typed, fault.slot().one(), Wording.list(said, "or"));
  }

  private String repeated(Phrase again, Slot slot, Reading reading, String typed) {
    String first =
        reading
            .phrases(slot)
            .filter(phrase -> phrase.from() < again.from())
            .map(phrase -> line.typed(phrase.nameFrom(), phrase.to()))
            .findFirst()
            .orElse(typed);
    return secondJobOrControl(again, slot, reading, first)
        .or(() -> stillOpen(again, slot, reading))
        .orElseGet(
            () ->
                "The %s is said twice: \"%s\" and \"%s\". Say it once."
                    .formatted(slot.label(), first, typed));
  }

  /** "Sanded with the belt sander": what both may mean. */
  private Optional<String> stillOpen(Phrase again, Slot slot, Reading reading) {
    if (slot != Slot.OPERATION) {
      return Optional.empty();
    }
    List<String> both = new ArrayList<>(labels(again));
    reading
        .phrases(slot)
        .filter(phrase -> phrase.from() < again.from())
        .forEach(phrase -> both.retainAll(labels(phrase)));
    return both.size() > 1
        ? Optional.of(ambiguous(line.typed(again.nameFrom(), again.to()), both))
        : Optional.empty();
  }

  private List<String> labels(Phrase phrase) {
    return names.of(Slot.OPERATION).at(line, phrase.nameFrom()).stream()
        .filter(match -> match.to() == phrase.to())
        .flatMap(match -> match.choices().stream())
        .map(Vocabulary.Entry::label)
        .toList();
  }

  /** Words such as "vacuum" name an operation and a control; only who says them knows which. */
  private Optional<String> secondJobOrControl(
      Phrase again, Slot slot, Reading reading, String first) {
    if (slot != Slot.OPERATION) {
      return Optional.empty();
    }
    String typed = line.typed(again.nameFrom(), again.to());
    List<Vocabulary.Entry> called =
        names.of(Slot.CONTROL).at(line, again.nameFrom()).stream()
            .filter(match -> match.to() == again.to())
            .flatMap(match -> match.choices().stream())
            .toList();
    List<Vocabulary.Entry> serving =
        called.stream().filter(control -> serves(control, reading)).toList();
    List<String> controls =
        (serving.isEmpty() ? called : serving)
            .stream().map(control -> Slot.CONTROL.said(control.label())).toList();
    return controls.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "\"%s\" with \"%s\": did you mean \"%s\"? A second job goes in a line of its own."
                .formatted(typed, first, Wording.list(controls, "or")));
  }

  private static boolean serves(Vocabulary.Entry control, Reading reading) {
    return reading.keys(Slot.OPERATION).stream()
        .anyMatch(key -> Reference.shipped().control(control.key()).rowFor(key).isPresent());
  }

  private static String ambiguous(String typed, List<String> labels) {
    return "\"%s\" may be %s. Say which.".formatted(typed, Wording.list(labels, "or"));
  }
}
