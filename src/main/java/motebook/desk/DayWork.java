package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.journal.Flawed;
import motebook.journal.Logged;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.science.Estimate;
import motebook.science.ObservedSum;
import motebook.science.SharedDoubts;

/** What was done in the shop on one day and what that put into its rooms, whoever breathed it. */
final class DayWork {
  private final LocalDate date;
  private final Shop shop;
  private final List<Source> sources;
  private final List<Flawed> leftOut;
  private final Map<String, Optional<RoomDay>> rooms = new HashMap<>();
  private final Map<Source, Integer> places = new HashMap<>();
  private Function<double[], Estimate> sum;

  /**
   * A day.
   *
   * @param sources what everybody did
   * @param leftOut what else is on record of the day and cannot be gone by
   */
  DayWork(LocalDate date, List<Source> sources, List<Flawed> leftOut, Shop shop) {
    this.date = date;
    this.sources = List.copyOf(sources);
    this.leftOut = List.copyOf(leftOut);
    this.shop = shop;
    for (int i = 0; i < this.sources.size(); i++) {
      places.put(this.sources.get(i), i);
    }
  }

  /** A day from everybody's sessions. */
  static DayWork of(LocalDate date, List<Session> sessions, Shop shop) {
    return of(date, new Logged(sessions, List.of()), shop);
  }

  /** A day from all that is on record of it. */
  static DayWork of(LocalDate date, Logged logged, Shop shop) {
    return new DayWork(
        date,
        logged.sessions().stream()
            .map(session -> shop.learned().source(source(session, shop)))
            .toList(),
        logged.leftOut(),
        shop);
  }

  private static Source source(Session session, Shop shop) {
    boolean outdoors = shop.place(session.work().place()).outdoors();
    return Source.of(session, outdoors, shop.reference());
  }

  LocalDate date() {
    return date;
  }

  Shop shop() {
    return shop;
  }

  List<Source> sources() {
    return sources;
  }

  /** What else is on record of the day and cannot be gone by. */
  List<Flawed> leftOut() {
    return leftOut;
  }

  /** The place of a source in the list; −1 where it is of another day. */
  int placeOf(Source source) {
    return places.getOrDefault(source, -1);
  }

  /**
   * The sum of something that each source makes.
   *
   * @param typical of each source, in their order
   */
  Estimate sum(double[] typical) {
    if (sum == null) {
      SharedDoubts doubts = new SharedDoubts(sources.stream().map(Source::doubts).toList());
      Optional<ObservedSum> observed = shop.learned().sums(date, sources);
      sum = observed.isPresent() ? observed.get()::sum : doubts::sum;
    }
    return sum.apply(typical);
  }

  /** The air of a place over the day; nothing outdoors. */
  Optional<RoomDay> room(String place) {
    return rooms.computeIfAbsent(place, this::reckoned);
  }

  private Optional<RoomDay> reckoned(String place) {
    return shop.place(place).surroundings() instanceof Surroundings.Indoors indoors
        ? Optional.of(new RoomDay(indoors, place, sources))
        : Optional.empty();
  }
}
