package motebook.entry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.model.Refusal;
import motebook.reference.Control;
import motebook.reference.Operation;

/** What may follow the words typed so far. */
final class Completion {
  private static final int MOST = 8;
  private static final int LONGEST_NAME = 8;

  private final Line line;
  private final Grammar grammar;
  private final Scene scene;
  private final int from;
  private final Set<String> found = new LinkedHashSet<>();

  private Completion(Line line, Scene scene, int from) {
    this.line = line;
    this.scene = scene;
    this.from = from;
    grammar = new Grammar(line, scene);
  }

  static List<String> of(String text, Scene scene) {
    try {
      Line line = Line.of(text);
      if (line.size() == 0 || line.hasNote()) {
        return List.of();
      }
      return new Completion(line, scene, Stretch.of(line).to()).lines();
    } catch (Refusal noDurationYet) {
      return List.of();
    }
  }

  private List<String> lines() {
    if (!line.endsInGap() && line.size() > from) {
      for (int start = Math.max(from, line.size() - LONGEST_NAME); start < line.size(); start++) {
        goOnFrom(start);
      }
    }
    Reading all = Reading.of(grammar, from, line.size(), false);
    if (all.clean()) {
      goOnAfter(all);
    }
    return found.stream().limit(MOST).toList();
  }

  /** Completes the name that begins at a word, or after the joint that stands there. */
  private void goOnFrom(int start) {
    Reading before = Reading.of(grammar, from, start, false);
    if (!before.clean()) {
      return;
    }
    Optional<Slot> opened = Slot.openedBy(line.token(start).word());
    if (opened.isPresent()) {
      names(opened.get(), before, start + 1, line.typed(0, start + 1));
    } else {
      for (Slot slot : List.of(Slot.OPERATION, Slot.MATERIAL)) {
        names(slot, before, start, line.typed(0, start));
      }
    }
  }

  private void names(Slot slot, Reading before, int at, String kept) {
    if (before.fills(slot) && !slot.repeats()) {
      return;
    }
    for (Vocabulary.Entry entry : grammar.vocabulary(slot).entries()) {
      boolean begun = entry.names().stream().anyMatch(name -> begins(at, name));
      if (begun && (slot != Slot.CONTROL || serves(entry.key(), before))) {
        found.add(kept + " " + entry.label());
      }
    }
  }

  /** Whether the words from one on to the end of the line are a run of beginnings of a name's. */
  private boolean begins(int at, Vocabulary.Spelling name) {
    int typed = line.size() - at;
    for (int first = 0; first + typed <= name.size(); first++) {
      int matched = 0;
      while (matched < typed && Vocabulary.fits(line, at + matched, name, first + matched)) {
        matched++;
      }
      if (matched == typed) {
        return true;
      }
    }
    return false;
  }

  private boolean serves(String control, Reading reading) {
    Optional<String> operation = reading.key(Slot.OPERATION);
    return !reading.controls().contains(control)
        && operation
            .map(key -> scene.reference().control(control).rowFor(key).isPresent())
            .orElse(true);
  }

  /** Offers the next part of a line that is understood so far. */
  private void goOnAfter(Reading reading) {
    String kept = line.typed(0, line.size());
    if (!reading.fills(Slot.OPERATION)) {
      scene.reference().operations().forEach(o -> found.add(kept + " " + Saying.name(o)));
      return;
    }
    Operation operation = scene.reference().operation(reading.key(Slot.OPERATION).orElseThrow());
    if (!reading.fills(Slot.MATERIAL) && operation.dusty()) {
      found.add(kept + " of ");
    }
    boolean controlled = !reading.controls().isEmpty();
    scene.reference().controls().stream()
        .filter(control -> control.actsOn() == Control.ActsOn.SOURCE || controlled)
        .filter(control -> serves(control.key(), reading))
        .limit(3)
        .forEach(c -> found.add(kept + (controlled ? " and " : " with ") + Saying.name(c)));
    offer(reading, Slot.PLACE, kept);
    if (scene.people().size() > 1) {
      offer(reading, Slot.PERSON, kept);
    }
    if (reading.first(Clause.At.class).isEmpty()) {
      found.add(kept + " at ");
    }
    found.add(kept + " note ");
  }

  private void offer(Reading reading, Slot slot, String kept) {
    if (!reading.fills(slot)) {
      found.add(kept + " " + slot.joint() + " ");
    }
  }
}
