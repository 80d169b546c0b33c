package motebook.entry;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.reference.Named;

/** What each slot of the line may name in a scene. */
final class Vocabularies {
  private final Map<Slot, Vocabulary> bySlot = new EnumMap<>(Slot.class);
  private final Scene scene;

  Vocabularies(Scene scene) {
    this.scene = scene;
    bySlot.put(Slot.OPERATION, rows(scene.reference().operations(), Saying::name));
    bySlot.put(Slot.MATERIAL, rows(scene.reference().materials(), Saying::name));
    bySlot.put(Slot.CONTROL, rows(scene.reference().controls(), Named::spoken));
    bySlot.put(
        Slot.PLACE,
        names(scene.places().apply(scene.today()).stream().map(place -> place.name()).toList()));
    bySlot.put(Slot.PERSON, names(people(scene)));
    bySlot.put(Slot.MASK, names(scene.respirators()));
  }

  /** The names of a slot; none for a date or a time of day. */
  Vocabulary of(Slot slot) {
    // The finishes are read when a line first asks for them.
    return slot == Slot.FINISH
        ? bySlot.computeIfAbsent(slot, any -> finishes())
        : bySlot.getOrDefault(slot, new Vocabulary(List.of()));
  }

  private Vocabulary finishes() {
    return rows(scene.finishes().get().all(), Saying::finish);
  }

  private static <N extends Named> Vocabulary rows(
      List<N> rows, Function<? super N, String> label) {
    return new Vocabulary(
        rows.stream()
            .map(row -> Vocabulary.Entry.of(row.key(), label.apply(row), row.names()))
            .toList());
  }

  private static List<String> people(Scene scene) {
    return Stream.concat(
            Stream.of(scene.person()), scene.people().stream().map(person -> person.name()))
        .distinct()
        .toList();
  }

  private static Vocabulary names(List<String> names) {
    return new Vocabulary(
        names.stream().map(name -> Vocabulary.Entry.of(name, name, List.of(name))).toList());
  }
}
