package motebook.journal;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** Writes work into the book, by the names that a person gives. */
final class Logging {
  /** How many entries are written at a time: few enough to show how far it has come. */
  static final int AT_A_TIME = 2000;

  private final Store store;
  private final Sessions sessions;
  private final People people;
  private final Places places;
  private final Respirators respirators;

  Logging(Store store, Sessions sessions, People people, Places places) {
    this.store = store;
    this.sessions = sessions;
    this.people = people;
    this.places = places;
    this.respirators = new Respirators(store);
  }

  Session log(Work work, ZoneId zone) {
    return sessions.insert(work, roll().who(work), zone);
  }

  private Roll roll() {
    return new Roll(people.known(), places.known(), respirators.all());
  }

  /**
   * Writes many entries.
   *
   * @param written told how many have been written
   */
  List<Session> logAll(List<Work> works, ZoneId zone, IntConsumer written) {
    Roll roll = roll();
    Taken taken = new Taken(store);
    List<Session> logged = new ArrayList<>(works.size());
    for (int from = 0; from < works.size(); from += AT_A_TIME) {
      List<Work> some = works.subList(from, Math.min(from + AT_A_TIME, works.size()));
      SessionBatch batch = sessions.batch(zone);
      for (Work work : some) {
        try {
          add(work, roll, taken, batch);
        } catch (Refusal e) {
          throw ofEntry(logged.size() + batch.size() + 1, works, e);
        }
      }
      logged.addAll(batch.write());
      written.accept(logged.size());
    }
    return List.copyOf(logged);
  }

  private void add(Work work, Roll roll, Taken taken, SessionBatch batch) {
    Who who = roll.who(work);
    if (!taken.take(who.person().id(), work)) {
      batch.write();
      sessions.refuseOverlap(work, who);
      throw new IllegalStateException("a minute is taken by nobody: " + Told.whole(work));
    }
    batch.add(work, who);
  }

  private static Refusal ofEntry(int number, List<Work> works, Refusal e) {
    String work = Told.whole(works.get(number - 1));
    return new Refusal(
        "Entry " + number + " of " + works.size() + " (" + work + "): " + e.getMessage());
  }

  /** What keeps entries from being written; nothing is written. */
  List<Hindrance> hindrances(List<Work> works) {
    Roll roll = roll();
    Taken taken = new Taken(store);
    List<Hindrance> found = new ArrayList<>();
    for (int i = 0; i < works.size(); i++) {
      Optional<Hindrance> hindrance = hindrance(i, works.get(i), roll, taken);
      hindrance.ifPresent(found::add);
    }
    return found;
  }

  private Optional<Hindrance> hindrance(int index, Work work, Roll roll, Taken taken) {
    boolean ofTime = false;
    try {
      Who who = roll.who(work);
      ofTime = !taken.take(who.person().id(), work);
      if (ofTime) {
        sessions.refuseOverlap(work, who);
        throw new Refusal("Overlaps another of these entries. Keep one of them.");
      }
      return Optional.empty();
    } catch (Refusal e) {
      return Optional.of(new Hindrance(index, ofTime, e.getMessage()));
    }
  }

  Session amend(Session old, Work work, ZoneId zone) {
    if (!work.equals(old.work())) {
      Who who = roll().who(work);
      sessions.update(old, work, who, zone);
    }
    return sessions.get(old.id());
  }
}
