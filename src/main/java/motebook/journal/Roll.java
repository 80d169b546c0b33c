package motebook.journal;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Work;

/** Everybody and everywhere, looked up once for a list of entries. */
final class Roll {
  private final Known people;
  private final Known places;
  private final Map<String, List<Respirator>> respirators;
  private final Map<String, Known.Name> person = new HashMap<>();
  private final Map<String, Known.Name> place = new HashMap<>();

  Roll(Known people, Known places, List<Respirator> respirators) {
    this.people = people;
    this.places = places;
    this.respirators = respirators.stream().collect(Collectors.groupingBy(Respirator::name));
  }

  /**
   * Who worked and where.
   *
   * @throws Refusal if the book does not know them, or the respirator was gone by then
   */
  Who who(Work work) {
    work.mask().ifPresent(mask -> refuseRetired(mask.respirator(), work.date()));
    return new Who(
        person.computeIfAbsent(work.person(), people::get),
        place.computeIfAbsent(work.place(), places::get));
  }

  private void refuseRetired(String name, LocalDate day) {
    for (Respirator one : respirators.getOrDefault(name, List.of())) {
      if (!one.inUseOn(day)) {
        throw new Refusal(
            ("\"%s\" was retired on %s and cannot have been worn on %s. Name another,"
                    + " or leave it out.")
                .formatted(name, one.retired().orElseThrow().on(), day));
      }
    }
  }
}
