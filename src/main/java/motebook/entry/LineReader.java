package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Work;

/** Reads one line in one scene. */
final class LineReader {
  private final Line line;
  private final Scene scene;
  private final Stretch stretch;
  private final Vocabularies names;
  private final Clauses clauses;

  LineReader(Line line, Scene scene) {
    this.line = line;
    this.scene = scene;
    stretch = Stretch.of(line);
    names = new Vocabularies(scene);
    clauses = new Clauses(line, scene, names);
  }

  Stretch stretch() {
    return stretch;
  }

  Vocabularies names() {
    return names;
  }

  /** Every faultless reading of every beginning of the line. */
  Search faultless() {
    return new Search(first(), line.size(), this::clauses, false);
  }

  /** Index of the first word that is not the duration at the beginning. */
  private int first() {
    return stretch.from() == 0 ? stretch.to() : 0;
  }

  private List<Phrase> clauses(int index) {
    return index == stretch.from() ? List.of(duration()) : clauses.at(index);
  }

  private Phrase duration() {
    int from = stretch.from();
    return new Phrase(new Said.Passed(), from, from, stretch.to(), 0, false);
  }

  Work work() {
    List<Reading> best = faultless().best();
    if (best.isEmpty() || Broad.operation(best.get(0)).isEmpty()) {
      throw complaint(best);
    }
    if (best.size() > 1) {
      throw twoWays(best.get(0), best.get(1));
    }
    Everyday.unlikeAny(line)
        .filter(open -> best.get(0).phrases(Slot.OPERATION).allMatch(it -> it.from() > open.from()))
        .ifPresent(
            open -> {
              throw Complaint.whichOperation(line, open);
            });
    return work(best.get(0));
  }

  private Work work(Reading reading) {
    return new Assembly(line, stretch, reading, scene).work();
  }

  private Refusal twoWays(Reading one, Reading other) {
    return new Refusal(
        "The line can be read in two ways: \"%s\" or \"%s\". Write the names out in full."
            .formatted(SpokenLine.say(work(one), scene), SpokenLine.say(work(other), scene)));
  }

  private Refusal complaint(List<Reading> best) {
    Optional<Refusal> twice = stretch.again(line);
    if (twice.isPresent()) {
      return twice.get();
    }
    Optional<Everyday.Refusing> unlike = Everyday.unlikeAny(line);
    if (unlike.isPresent()) {
      return Complaint.whichOperation(line, unlike.get());
    }
    Complaint complaint = new Complaint(line, stretch, first(), names);
    if (!best.isEmpty() && !best.get(0).says(Said.Broad.class) && Everyday.isNearest(line)) {
      return complaint.about(best.get(0));
    }
    Mishaps mishaps = new Mishaps(line, scene, names);
    Search tolerant = new Search(first(), line.size(), index -> all(mishaps, index), true);
    return complaint.about(tolerant.best().get(0));
  }

  private List<Phrase> all(Mishaps mishaps, int index) {
    List<Phrase> phrases = new ArrayList<>(clauses(index));
    phrases.removeIf(phrase -> phrase.said() instanceof Said.Broad);
    if (index != stretch.from()) {
      phrases.addAll(mishaps.at(index));
    }
    return phrases;
  }
}
