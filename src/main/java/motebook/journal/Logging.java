package motebook.journal;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** Writes work into the book, by the names that a person gives. */
final class Logging {
  private final Sessions sessions;
  private final People people;
  private final Places places;

  Logging(Sessions sessions, People people, Places places) {
    this.sessions = sessions;
    this.people = people;
    this.places = places;
  }

  Session log(Work work, ZoneId zone) {
    return insert(work, new Roll(people.known(), places.known()), zone);
  }

  List<Session> logAll(List<Work> works, ZoneId zone) {
    Roll roll = new Roll(people.known(), places.known());
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
    Who who = new Roll(people.known(), places.known()).who(work);
    if (!work.equals(old.work())) {
      sessions.update(old, work, who, zone);
    }
    return sessions.get(old.id());
  }

  /** Everybody and everywhere, looked up once for a list of entries. */
  private record Roll(Known people, Known places) {
    Who who(Work work) {
      return new Who(people.get(work.person()), places.get(work.place()));
    }
  }
}
