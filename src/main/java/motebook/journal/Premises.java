package motebook.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import motebook.journal.Deed.Subject;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings;

/** Who works in the shop, and in which places. */
public final class Premises {
  private final Changes changes;
  private final People people;
  private final Places places;

  Premises(Changes changes, People people, Places places) {
    this.changes = changes;
    this.people = people;
    this.places = places;
  }

  /** Everyone, in the order in which they were added. */
  public List<Person> people() {
    return people.all();
  }

  /** Every place as it is on a day, in the order in which they were added. */
  public List<Place> places(LocalDate on) {
    return places.on(on);
  }

  /** The place of that name, whatever the case, as it is on a day. */
  public Optional<Place> place(String name, LocalDate on) {
    return places.find(name, on);
  }

  /**
   * All that a place was and will be, in order of time; the first is from the beginning.
   *
   * @throws Refusal if there is no such place
   */
  public List<PlaceVersion> placeVersions(String name) {
    return places.versions(name);
  }

  /**
   * Adds somebody who works in the shop.
   *
   * @throws Refusal if the name is taken, whatever its case, or cannot be a name
   */
  public Person addPerson(String name) {
    return changes.make(
        Deed.added(Subject.PERSON, name, "Added person " + name), () -> people.add(name));
  }

  /**
   * Gives somebody another name, on all days.
   *
   * @throws Refusal if nobody has the old name, or the new one is taken or cannot be a name
   */
  public Person renamePerson(String old, String name) {
    return changes.make(
        Deed.changed(Subject.PERSON, name, "Renamed " + old + " to " + name),
        () -> people.rename(old, name));
  }

  /**
   * Adds a place, which is so from the beginning.
   *
   * @throws Refusal if the name is taken, whatever its case, or cannot be a name
   */
  public Place addPlace(String name, Surroundings surroundings) {
    return changes.make(
        Deed.added(Subject.PLACE, name, "Added place " + name),
        () -> places.add(name, surroundings));
  }

  /**
   * Changes what the air of a place does.
   *
   * @param change the figures as they will be, from the figures as they were
   * @param from the first day of the change; later versions take over each figure that was still
   *     the old one. Empty: all versions are changed, each by itself
   * @param what the change in words, for the history
   * @throws Refusal if there is no such place or a figure becomes impossible
   */
  public void changePlace(
      String name, UnaryOperator<Surroundings> change, Optional<LocalDate> from, String what) {
    changes.make(Deed.changed(Subject.PLACE, name, what), () -> places.change(name, change, from));
  }
}
