package motebook.journal;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Session;
import motebook.model.Work;

/** Writes work into the book, by the names that a person gives. */
final class Logging {
  private final Sessions sessions;
  private final People people;
  private final Places places;
  private final Respirators respirators;

  Logging(Sessions sessions, People people, Places places, Respirators respirators) {
    this.sessions = sessions;
    this.people = people;
    this.places = places;
    this.respirators = respirators;
  }

  Session log(Work work, ZoneId zone) {
    return insert(work, roll(), zone);
  }

  private Roll roll() {
    return new Roll(people.known(), places.known(), respirators.all());
  }

  List<Session> logAll(List<Work> works, ZoneId zone) {
    Roll roll = roll();
    List<Session> logged = new ArrayList<>(works.size());
    for (Work work : works) {
      try {
        logged.add(insert(work, roll, zone));
      } catch (Refusal e) {
        throw ofEntry(logged.size() + 1, works, e);
      }
    }
    return List.copyOf(logged);
  }

  private static Refusal ofEntry(int number, List<Work> works, Refusal e) {
    String work = Told.whole(works.get(number - 1));
    return new Refusal(
        "Entry " + number + " of " + works.size() + " (" + work + "): " + e.getMessage());
  }

  private Session insert(Work work, Roll roll, ZoneId zone) {
    return sessions.insert(work, roll.who(work), zone);
  }

  Session amend(Session old, Work work, ZoneId zone) {
    if (!work.equals(old.work())) {
      Who who = roll().who(work);
      sessions.update(old, work, who, zone);
    }
    return sessions.get(old.id());
  }

  /** Everybody and everywhere, looked up once for a list of entries. */
  private record Roll(Known people, Known places, List<Respirator> respirators) {
    Who who(Work work) {
      work.mask().ifPresent(mask -> refuseRetired(mask.respirator(), work.date()));
      return new Who(people.get(work.person()), places.get(work.place()));
    }

    private void refuseRetired(String name, LocalDate day) {
      respirators.stream()
          .filter(one -> one.name().equals(name) && !one.inUseOn(day))
          .forEach(
              one -> {
                LocalDate end = one.retired().orElseThrow().on();
                throw new Refusal(
                    ("\"%s\" was retired on %s and cannot have been worn on %s. Name another,"
                            + " or leave it out.")
                        .formatted(name, end, day));
              });
    }
  }
}
