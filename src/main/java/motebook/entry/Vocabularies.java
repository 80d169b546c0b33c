package motebook.entry;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What each slot of the line may name in a scene. */
final class Vocabularies {
  private final Map<Slot, Vocabulary> bySlot = new EnumMap<>(Slot.class);
  private final Scene scene;

  Vocabularies(Scene scene) {
    this.scene = scene;
    TradeNames trade = TradeNames.of(scene.reference());
    bySlot.put(Slot.OPERATION, trade.operations());
    bySlot.put(Slot.MATERIAL, trade.materials());
    bySlot.put(Slot.CONTROL, trade.controls());
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
    return TradeNames.rows(scene.finishes().get().all(), Saying::finish);
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
