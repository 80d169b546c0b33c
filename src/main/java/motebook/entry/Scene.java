package motebook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Text;
import motebook.reference.Finishes;
import motebook.reference.Reference;

/**
 * What a line is read against: what was done, or what is planned. All times are local.
 *
 * @param now the time at which the line is said
 * @param person the book's own person, meant where nobody is named
 * @param place the place meant where none is named
 * @param people everybody in the book
 * @param places the places, each as it is on the date asked for
 * @param respirators the names of the respirators that the book holds
 * @param reference the shipped tables
 * @param finishes the finishes, the owner's own among them; asked for when a line needs them
 * @param ahead whether lines say what may come to be done: what has no time begins now, a weekday
 *     is the next one, and nothing need be over
 * @param recorded whether lines say what is on record or was kept to be said again, whose controls
 *     stay where they no longer serve
 */
public record Scene(
    LocalDateTime now,
    String person,
    String place,
    List<Person> people,
    Function<LocalDate, List<Place>> places,
    List<String> respirators,
    Reference reference,
    Supplier<Finishes> finishes,
    boolean ahead,
    boolean recorded) {

  public Scene {
    people = List.copyOf(people);
    respirators = List.copyOf(respirators);
    places = askedOnce(places);
  }

  // A scene is of one moment, and a line asks for the places of its day again and again.
  private static Function<LocalDate, List<Place>> askedOnce(
      Function<LocalDate, List<Place>> places) {
    Map<LocalDate, List<Place>> known = new ConcurrentHashMap<>();
    return day -> known.computeIfAbsent(day, places);
  }

  /** A scene of what was done, in which the owner has entered no finish. */
  public Scene(
      LocalDateTime now,
      String person,
      String place,
      List<Person> people,
      Function<LocalDate, List<Place>> places,
      List<String> respirators,
      Reference reference) {
    this(
        now,
        person,
        place,
        people,
        places,
        respirators,
        reference,
        Finishes::shipped,
        false,
        false);
  }

  /** The same scene at another time. */
  public Scene at(LocalDateTime other) {
    return new Scene(
        other, person, place, people, places, respirators, reference, finishes, ahead, recorded);
  }

  /** The same scene whose places are told by something else. */
  public Scene with(Function<LocalDate, List<Place>> others) {
    return new Scene(
        now, person, place, people, others, respirators, reference, finishes, ahead, recorded);
  }

  /** The same scene for lines that say what may come to be done. */
  public Scene planned() {
    return new Scene(
        now, person, place, people, places, respirators, reference, finishes, true, recorded);
  }

  /** The same scene for lines that say what is on record, or what was kept to be said again. */
  public Scene ofRecord() {
    return new Scene(
        now, person, place, people, places, respirators, reference, finishes, ahead, true);
  }

  LocalDate today() {
    return now.toLocalDate();
  }

  /** The place with the name on a day; an equal spelling beats one that only folds the same. */
  Optional<Place> placeNamed(String name, LocalDate day) {
    List<Place> all = places.apply(day);
    return all.stream()
        .filter(place -> place.name().equals(name))
        .findFirst()
        .or(() -> all.stream().filter(place -> same(place.name(), name)).findFirst());
  }

  boolean knowsPerson(String name) {
    return same(person, name) || people.stream().anyMatch(each -> same(each.name(), name));
  }

  boolean holdsRespirator(String name) {
    return respirators.stream().anyMatch(each -> same(each, name));
  }

  private static boolean same(String a, String b) {
    return Text.folded(a).equals(Text.folded(b));
  }
}
