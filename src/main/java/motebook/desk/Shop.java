package motebook.desk;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import motebook.journal.Settings;
import motebook.model.Place;
import motebook.reference.Finishes;
import motebook.reference.Reference;

/**
 * What a day is reckoned with, beside its sessions.
 *
 * @param reference the tables
 * @param settings the owner's choices
 * @param places the book's places as they are on the day, by name
 * @param credits what a worn respirator counts for
 * @param finishes the finishes, the owner's own among them; asked for on a day that used any
 * @param learned what the shop's samples taught
 */
public record Shop(
    Reference reference,
    Settings settings,
    Map<String, Place> places,
    CreditRule credits,
    Supplier<Finishes> finishes,
    Learned learned) {

  /** A shop of some places whose owner has entered no finish. */
  public static Shop of(
      Reference reference, Settings settings, List<Place> places, CreditRule credits) {
    return of(reference, settings, places, credits, Finishes::shipped);
  }

  /** A shop of some places, by the published figures. */
  public static Shop of(
      Reference reference,
      Settings settings,
      List<Place> places,
      CreditRule credits,
      Supplier<Finishes> finishes) {
    Map<String, Place> byName =
        places.stream().collect(Collectors.toUnmodifiableMap(Place::name, Function.identity()));
    return new Shop(reference, settings, byName, credits, finishes, Learned.NOTHING);
  }

  /** The same shop by what its samples taught. */
  public Shop with(Learned lessons) {
    return new Shop(reference, settings, places, credits, finishes, lessons);
  }

  /** The same shop with another rule of what its masks count for. */
  Shop crediting(CreditRule rule) {
    return new Shop(reference, settings, places, rule, finishes, learned);
  }

  /** The same shop with finishes that are at hand. */
  Shop finishing(Finishes known) {
    return new Shop(reference, settings, places, credits, () -> known, learned);
  }

  Place place(String name) {
    Place place = places.get(name);
    if (place == null) {
      throw new IllegalArgumentException("no place is named " + name);
    }
    return place;
  }
}
