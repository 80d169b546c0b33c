package motebook.model;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A mask or hood of the shop. One of another size or make is another respirator, and asks for a fit
 * test of its own.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique in the book, whatever the case; sessions name it so
 * @param scheme whose protection factors count for it
 * @param kind such as "air-purifying", "powered air-purifying" or "supplied air, demand"
 * @param facepiece such as "half mask", "full facepiece" or "hood"
 * @param size as the maker marks it, if it was said
 * @param make maker and model, if it was said
 * @param people names of those it is for; empty where it is for anybody
 * @param retired when it went out of use, if it has
 */
public record Respirator(
    long id,
    String name,
    Scheme scheme,
    String kind,
    String facepiece,
    Optional<String> size,
    Optional<String> make,
    List<String> people,
    Optional<Retirement> retired) {
  public Respirator {
    name = Names.check("respirator", name);
    kind = Checks.words("kind of a respirator", kind);
    facepiece = Checks.words("facepiece", facepiece);
    size = size.map(word -> Checks.words("size", word));
    make = make.map(word -> Checks.words("make", word));
    people = people.stream().map(person -> Names.check("person", person)).toList();
    refuseTwice(people);
  }

  private static void refuseTwice(List<String> people) {
    Set<String> seen = new HashSet<>();
    for (String person : people) {
      if (!seen.add(Text.folded(person))) {
        throw new Refusal("\"" + person + "\" is named twice; name each person once.");
      }
    }
  }

  /** Whether a person may count on it: it is theirs, or anybody's. */
  public boolean isFor(String person) {
    String folded = Text.folded(person);
    return people.isEmpty() || people.stream().anyMatch(p -> Text.folded(p).equals(folded));
  }

  /** Whether it is in use on a day; the day it was retired is the last. */
  public boolean inUseOn(LocalDate day) {
    return retired.map(end -> !day.isAfter(end.on())).orElse(true);
  }
}
