package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.entry.Clause.Meaning;
import motebook.model.Place;

/**
 * Every part that may stand at one word of a line:
 *
 * <pre>
 * operation | [of] material | with control | and control | in [the] place | outdoors
 * | wearing respirator [checked] [95%] | by person | on date | at time
 * </pre>
 */
final class Grammar {
  private static final Pattern PERCENT =
      Pattern.compile("(\\d{1,3}(?:\\.\\d{1,4})?) *%" + Durations.END);

  private final Line line;
  private final Scene scene;
  private final Vocabularies vocabularies;

  Grammar(Line line, Scene scene) {
    this.line = line;
    this.scene = scene;
    vocabularies = new Vocabularies(scene);
  }

  Line line() {
    return line;
  }

  Scene scene() {
    return scene;
  }

  Vocabulary vocabulary(Slot slot) {
    return vocabularies.of(slot);
  }

  /** The parts that may begin at a word, after the slot of the part before it. */
  List<Clause> at(int index, Optional<Slot> before) {
    List<Clause> clauses = new ArrayList<>();
    names(Slot.OPERATION, index, index, clauses);
    names(Slot.MATERIAL, index, index, clauses);
    if (before.filter(Slot.CONTROL::equals).isPresent() && line.token(index).afterComma()) {
      names(Slot.CONTROL, index, index, clauses);
    }
    if (before.filter(Slot.MASK::equals).isPresent()) {
      wear(index, clauses);
    }
    opened(index, before).ifPresent(slot -> afterJoint(slot, index, clauses));
    if (line.is(index, "outdoors")) {
      outdoors(index, clauses);
    }
    clauses.add(new Clause(new Clause.Unknown(Optional.empty()), index, index, index + 1));
    return clauses;
  }

  private Optional<Slot> opened(int index, Optional<Slot> before) {
    String word = line.token(index).word();
    boolean strayAnd = word.equals("and") && before.filter(Slot.CONTROL::equals).isEmpty();
    return strayAnd ? Optional.empty() : Slot.openedBy(word);
  }

  private void afterJoint(Slot slot, int index, List<Clause> clauses) {
    int at = slot == Slot.PLACE && line.is(index + 1, "the") ? index + 2 : index + 1;
    switch (slot) {
      case DAY ->
          Days.at(line, at, scene.now().toLocalDate())
              .ifPresent(
                  day -> clauses.add(new Clause(new Clause.On(day.date()), index, at, day.to())));
      case START ->
          Clock.at(line, at)
              .ifPresent(
                  time ->
                      clauses.add(new Clause(new Clause.At(time.time()), index, at, time.to())));
      default -> names(slot, index, at, clauses);
    }
    Meaning unknown = new Clause.Unknown(Optional.of(slot));
    clauses.add(new Clause(unknown, index, at, Math.min(at + 1, line.size())));
  }

  private void names(Slot slot, int from, int at, List<Clause> clauses) {
    if (at >= line.size()) {
      return;
    }
    for (Vocabulary.Match match : vocabulary(slot).at(line, at)) {
      Meaning name = new Clause.Name(slot, match.choices(), match.exact());
      clauses.add(new Clause(name, from, at, match.to()));
    }
  }

  private void wear(int index, List<Clause> clauses) {
    if (line.is(index, "checked")) {
      clauses.add(new Clause(new Clause.Checked(), index, index, index + 1));
    }
    Matcher percent = line.matcherAt(PERCENT, index);
    if (percent.lookingAt()) {
      Meaning worn = new Clause.Worn(Double.parseDouble(percent.group(1)));
      clauses.add(new Clause(worn, index, index, line.wordAfter(percent.end())));
    }
  }

  /** The yard; where the book has renamed it, its only place outdoors. */
  private void outdoors(int index, List<Clause> clauses) {
    List<Place> open =
        scene.places().apply(scene.now().toLocalDate()).stream().filter(Place::outdoors).toList();
    List<Place> yard = open.stream().filter(place -> place.name().equals("yard")).toList();
    List<Vocabulary.Entry> choices =
        (yard.isEmpty() ? open : yard)
            .stream().map(p -> Vocabulary.Entry.of(p.name(), p.name(), List.of(p.name()))).toList();
    if (!choices.isEmpty()) {
      Meaning place = new Clause.Name(Slot.PLACE, choices, true);
      clauses.add(new Clause(place, index, index, index + 1));
    }
  }
}
