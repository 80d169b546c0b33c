package motebook.entry;

import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Surroundings;
import motebook.reference.Reference;

/** The scenes that the tests of this package read their lines in. */
final class Scenes {
  /** A Wednesday. */
  static final LocalDateTime NOW = LocalDateTime.of(2026, 3, 4, 14, 30, 20);

  static final Place SHOP = new Place(1, "shop", room(OptionalDouble.empty()));
  static final Place GARAGE = new Place(2, "Big Garage", room(OptionalDouble.of(11.3)));
  static final Place YARD = new Place(3, "yard", new Surroundings.Outdoors(60));
  static final Place MEADOW = new Place(4, "meadow", new Surroundings.Outdoors(90));

  private Scenes() {}

  private static Surroundings room(OptionalDouble flow) {
    return new Surroundings.Indoors(100, 1, 3, 6, flow, flow, 0);
  }

  /** A room without a cleaner, one with cleaner and fan, and a yard; Me and Ana Lee; no mask. */
  static Scene usual() {
    return at(NOW);
  }

  static Scene at(LocalDateTime now) {
    return with(now, List.of(SHOP, GARAGE, YARD), List.of());
  }

  static Scene places(Place... places) {
    return with(NOW, List.of(places), List.of());
  }

  static Scene masks(String... respirators) {
    return with(NOW, List.of(SHOP, GARAGE, YARD), List.of(respirators));
  }

  static Scene with(LocalDateTime now, List<Place> places, List<String> respirators) {
    return new Scene(
        now,
        "me",
        places.get(0).name(),
        List.of(new Person(1, "me"), new Person(2, "Ana Lee")),
        date -> places,
        respirators,
        Reference.shipped());
  }
}
