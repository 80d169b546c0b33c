package motebook.entry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Work;

/** What could follow a line that is being typed. */
final class Completion {
  static final int MOST = 8;
  private static final int LONGEST_NAME = 8;
  private static final int LONGEST_HOURS = Work.LONGEST_MINUTES / 60;

  private final String typed;
  private final Line line;
  private final Scene scene;
  private final LineReader reader;
  private final Search search;
  private final Set<String> found = new LinkedHashSet<>();

  private Completion(String typed, Line line, Scene scene) {
    this.typed = typed;
    this.line = line;
    this.scene = scene;
    reader = new LineReader(line, scene);
    search = reader.faultless();
  }

  static List<String> of(String typed, Scene scene) {
    try {
      Line line = Line.of(typed);
      return line.hasNote() ? List.of() : new Completion(typed, line, scene).lines();
    } catch (Refusal noDurationYet) {
      return durations(typed);
    }
  }

  /** The units for a number that begins a line; usual durations for an empty one. */
  private static List<String> durations(String typed) {
    if (typed.isBlank()) {
      return Stream.of("15m ", "30m ", "1h ").map(typed::concat).toList();
    }
    return typed.matches("\\d{1,3}") ? minutesOrHours(typed) : List.of();
  }

  private static List<String> minutesOrHours(String number) {
    return Integer.parseInt(number) > LONGEST_HOURS
        ? List.of(number + "m ")
        : List.of(number + "m ", number + "h ");
  }

  private List<String> lines() {
    int last = line.size();
    for (int from = Math.max(reader.stretch().to(), last - LONGEST_NAME); from < last; from++) {
      for (Reading reading : search.at(from)) {
        unfinished(reading, from);
      }
    }
    search.at(last).stream().findFirst().ifPresent(this::next);
    return found.stream().limit(MOST).toList();
  }

  /** Ends for the words from an index on, which follow a reading. */
  private void unfinished(Reading reading, int from) {
    Optional<Slot> slot = opened(reading, from);
    if (slot.filter(Slot.FINISH::equals).isPresent()) {
      amounts(reading, from + 1);
    } else if (slot.isPresent()) {
      boolean passed = line.is(from + 1, "with") || line.is(from + 1, "the");
      int name = passed ? from + 2 : Fillers.past(line, from + 1);
      ends(reading, slot.get(), name);
      ends(reading, Slot.OPERATION, from);
    } else if (!line.isJoint(from)) {
      ends(reading, Slot.OPERATION, from);
      ends(reading, Slot.MATERIAL, from);
      if (from == line.size() - 1 && !line.endsInGap()) {
        joints(reading).filter(it -> it.startsWith(line.token(from).word())).forEach(this::replace);
      }
    }
  }

  private Optional<Slot> opened(Reading reading, int from) {
    if (line.is(from, "and")) {
      return Stream.of(Slot.CONTROL, Slot.FINISH).filter(reading::endsIn).findFirst();
    }
    return Slot.openedBy(line.token(from).word());
  }

  /** An amount where none is typed yet, and the finish after it. */
  private void amounts(Reading reading, int from) {
    Optional<Amounts.Found> amount = Amounts.at(line, from);
    if (amount.isPresent()) {
      ends(reading, Slot.FINISH, amount.get().to());
    } else if (from == line.size()) {
      found.add(typed + gap() + Amounts.EXAMPLE + " ");
    }
  }

  private void ends(Reading reading, Slot slot, int from) {
    if (reading.has(slot) && !slot.repeats()) {
      return;
    }
    switch (slot) {
      case DAY -> words(Days.words(scene.ahead()), from);
      case START -> words(List.of(usualStart()), from);
      default -> names(reading, slot, from);
    }
  }

  private String usualStart() {
    int ago = scene.ahead() ? 0 : reader.stretch().minutes();
    return Wording.time(scene.now().minusMinutes(ago).toLocalTime());
  }

  private void words(List<String> words, int from) {
    if (from == line.size()) {
      words.forEach(word -> found.add(typed + gap() + word));
    } else if (from == line.size() - 1 && !line.endsInGap()) {
      words.stream().filter(it -> it.startsWith(line.token(from).word())).forEach(this::replace);
    }
  }

  private String gap() {
    return line.endsInGap() ? "" : " ";
  }

  /** Adds what a word lacks after the letters of it that are there. */
  private void replace(String word) {
    String begun = line.token(line.size() - 1).word();
    if (word.length() > begun.length()) {
      found.add(typed + word.substring(begun.length()));
    }
  }

  private void names(Reading reading, Slot slot, int from) {
    Vocabulary vocabulary = reader.names().of(slot);
    List<Vocabulary.Entry> whole = saidWhole(vocabulary, from);
    for (Vocabulary.Entry entry : vocabulary.entries()) {
      // The other names of what is said whole say nothing more.
      if (gone(slot, entry) || whole.contains(entry)) {
        continue;
      }
      if (slot != Slot.CONTROL || serves(reading, entry)) {
        ending(vocabulary, entry, from).ifPresent(end -> found.add(typed + end));
      }
    }
  }

  private boolean gone(Slot slot, Vocabulary.Entry entry) {
    return slot == Slot.FINISH
        && !scene.finishes().get().finish(entry.key()).inUseOn(scene.today());
  }

  /** What finishes a name so that it names this entry alone; empty where nothing does. */
  private Optional<String> ending(Vocabulary vocabulary, Vocabulary.Entry entry, int from) {
    List<String> ends = new ArrayList<>(new NameEndings(line, from).of(entry));
    ends.removeIf(end -> end.isBlank() || !namesOnly(vocabulary, entry, from, typed + end));
    return ends.stream().findFirst();
  }

  private List<Vocabulary.Entry> saidWhole(Vocabulary vocabulary, int from) {
    return vocabulary.at(line, from).stream()
        .filter(match -> match.exact() && match.to() == line.size() && match.unique())
        .flatMap(match -> match.choices().stream())
        .toList();
  }

  private static boolean namesOnly(
      Vocabulary vocabulary, Vocabulary.Entry entry, int from, String candidate) {
    Line whole = Line.of(candidate);
    return vocabulary.at(whole, from).stream()
        .filter(match -> match.to() == whole.size())
        .anyMatch(match -> match.choices().equals(List.of(entry)));
  }

  private boolean serves(Reading reading, Vocabulary.Entry control) {
    return !reading.keys(Slot.CONTROL).contains(control.key()) && usable(reading, control.key());
  }

  private boolean usable(Reading reading, String control) {
    Optional<String> operation = Broad.operation(reading);
    Optional<Place> place = place(reading);
    return operation.isEmpty()
        || place.isEmpty()
        || new ControlRules(scene.reference(), operation.get(), place.get())
            .objection(control)
            .isEmpty();
  }

  private Optional<Place> place(Reading reading) {
    if (reading.said(Said.Outdoors.class).isPresent()) {
      return scene.places().apply(scene.today()).stream().filter(Place::outdoors).findFirst();
    }
    List<String> said = reading.keys(Slot.PLACE);
    return scene.placeNamed(said.isEmpty() ? scene.place() : said.get(0), scene.today());
  }

  /** What can follow when the line is read as far as it goes. */
  private void next(Reading reading) {
    if (Broad.operation(reading).isPresent()) {
      joints(reading).forEach(joint -> found.add(typed + gap() + joint));
    } else if (!reading.says(Said.Broad.class)) {
      reader.names().of(Slot.OPERATION).entries().stream()
          .map(Vocabulary.Entry::label)
          .forEach(label -> found.add(typed + gap() + label));
    }
  }

  private Stream<String> joints(Reading reading) {
    return Stream.of(
            joint("of ", open(reading, Slot.MATERIAL)),
            joint("and ", reading.endsIn(Slot.CONTROL) && moreControls(reading)),
            joint("and ", reading.endsIn(Slot.FINISH)),
            joint("with ", !reading.has(Slot.CONTROL) && moreControls(reading)),
            joint("using ", !reading.has(Slot.FINISH) && usesFinishes(reading)),
            joint("in ", open(reading, Slot.PLACE)),
            joint("outdoors", open(reading, Slot.PLACE) && hasOutdoors()),
            joint("wearing ", open(reading, Slot.MASK)),
            joint("by ", open(reading, Slot.PERSON) && scene.people().size() > 1),
            joint("at ", !reading.has(Slot.START) && reader.stretch().start().isEmpty()),
            joint("on ", !reading.has(Slot.DAY)),
            joint("note ", true))
        .flatMap(Optional::stream);
  }

  private boolean usesFinishes(Reading reading) {
    return Broad.operation(reading).stream()
        .anyMatch(key -> scene.reference().operation(key).finishes());
  }

  private static Optional<String> joint(String joint, boolean fits) {
    return fits ? Optional.of(joint) : Optional.empty();
  }

  private boolean open(Reading reading, Slot slot) {
    return !reading.has(slot) && !reader.names().of(slot).entries().isEmpty();
  }

  private boolean hasOutdoors() {
    return scene.places().apply(scene.today()).stream().anyMatch(Place::outdoors);
  }

  private boolean moreControls(Reading reading) {
    return reader.names().of(Slot.CONTROL).entries().stream()
        .anyMatch(control -> serves(reading, control));
  }
}
