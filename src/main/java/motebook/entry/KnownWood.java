package motebook.entry;

import java.util.Optional;
import motebook.model.Refusal;
import motebook.reference.Reference;
import motebook.reference.Wood;
import motebook.reference.Woods;

/** A line that names a wood without figures of its own, with what stands for it in its place. */
final class KnownWood {
  private KnownWood() {}

  /** The line that could be said instead; empty where none can be read. */
  static Optional<String> in(String text, Scene scene) {
    Line line = Line.of(text);
    Vocabulary woods =
        new Vocabulary(
            Woods.shipped().all().stream().flatMap(wood -> entry(wood).stream()).toList());
    for (int index = 0; index < line.size(); index++) {
      for (Vocabulary.Match match : woods.at(line, index)) {
        String other = line.withWords(index, match.to(), match.choices().get(0).label());
        if (match.exact() && reads(other, scene)) {
          return Optional.of(other);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Vocabulary.Entry> entry(Wood wood) {
    return wood.stands()
        .map(key -> Saying.name(Reference.shipped().material(Optional.of(key))))
        .map(stands -> Vocabulary.Entry.of(wood.key(), stands, wood.names()));
  }

  private static boolean reads(String line, Scene scene) {
    try {
      SpokenLine.read(line, scene);
      return true;
    } catch (Refusal faulty) {
      return false;
    }
  }
}
