package motebook.journal;

import java.time.LocalDate;
import java.util.List;
import motebook.journal.Deed.Subject;

/** The cautions that somebody has read and set aside for a day. */
public final class SetAside {
  private final Store store;
  private final Changes changes;
  private final People people;

  SetAside(Store store, Changes changes, People people) {
    this.store = store;
    this.changes = changes;
    this.people = people;
  }

  /** The keys of those that a person set aside for a day, in the order in which they were. */
  public List<String> on(LocalDate date, String person) {
    return store.list("cautions-set-aside", Row::text, person, date);
  }

  /**
   * Sets cautions aside for a day; the record of changes keeps that it was done.
   *
   * @throws motebook.model.Refusal if there is no such person
   */
  public void put(LocalDate date, String person, List<String> cautions) {
    changes.make(
        Deed.added(
            Subject.CAUTION,
            "",
            "Set aside for " + date + ", by " + person + ": " + String.join(", ", cautions)),
        () -> {
          long whose = people.known().idOf(person);
          cautions.forEach(caution -> store.run("set-aside", whose, date, caution));
        });
  }

  /** Brings all cautions of a person's day back. */
  public void bringBack(LocalDate date, String person) {
    changes.make(
        Deed.removed(
            Subject.CAUTION, "", "Brought back the cautions of " + date + " for " + person),
        () -> store.run("bring-back", people.known().idOf(person), date));
  }
}
