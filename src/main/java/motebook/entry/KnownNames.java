package motebook.entry;

import java.util.List;
import java.util.Optional;
import motebook.entry.WorkRules.Breach;
import motebook.model.Place;
import motebook.model.Work;
import motebook.reference.Named;

/** The rule that all a session names is in the tables or in the book. */
final class KnownNames {
  private KnownNames() {}

  static Optional<Breach> breach(Work work, Scene scene) {
    return row(Slot.OPERATION, work.operation(), scene.reference().operations())
        .or(
            () ->
                work.material()
                    .flatMap(key -> row(Slot.MATERIAL, key, scene.reference().materials())))
        .or(
            () ->
                work.controls().stream()
                    .flatMap(key -> row(Slot.CONTROL, key, scene.reference().controls()).stream())
                    .findFirst())
        .or(() -> place(work, scene))
        .or(() -> person(work, scene));
  }

  private static Optional<Breach> row(Slot slot, String key, List<? extends Named> rows) {
    if (rows.stream().anyMatch(row -> row.key().equals(key))) {
      return Optional.empty();
    }
    return Optional.of(
        new Breach(
            slot,
            key,
            "\"%s\" is no %s. Known are %s."
                .formatted(
                    key,
                    slot.label(),
                    Wording.list(rows.stream().map(Named::key).toList(), "and"))));
  }

  private static Optional<Breach> place(Work work, Scene scene) {
    if (scene.placeNamed(work.place(), work.date()).isPresent()) {
      return Optional.empty();
    }
    List<String> known = scene.places().apply(work.date()).stream().map(Place::name).toList();
    return Optional.of(
        new Breach(
            Slot.PLACE,
            "",
            "The book has no place \"%s\" on %s. It has %s."
                .formatted(work.place(), work.date(), Wording.list(known, "and"))));
  }

  private static Optional<Breach> person(Work work, Scene scene) {
    if (scene.knowsPerson(work.person())) {
      return Optional.empty();
    }
    List<String> known = scene.people().stream().map(person -> person.name()).toList();
    return Optional.of(
        new Breach(
            Slot.PERSON,
            "",
            "The book has no person \"%s\". It has %s."
                .formatted(work.person(), Wording.list(known, "and"))));
  }
}
