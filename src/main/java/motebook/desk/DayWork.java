package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.Session;
import motebook.model.Surroundings;

/** What was done in the shop on one day and what that put into its rooms, whoever breathed it. */
final class DayWork {
  private final LocalDate date;
  private final Shop shop;
  private final List<Source> sources;
  private final Map<String, Optional<RoomDay>> rooms = new HashMap<>();

  /**
   * A day.
   *
   * @param sources what everybody did
   */
  DayWork(LocalDate date, List<Source> sources, Shop shop) {
    this.date = date;
    this.sources = List.copyOf(sources);
    this.shop = shop;
  }

  /** A day from everybody's sessions. */
  static DayWork of(LocalDate date, List<Session> sessions, Shop shop) {
    return new DayWork(
        date,
        sessions.stream()
            .map(session -> shop.learned().source(Source.of(session, shop.reference())))
            .toList(),
        shop);
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

  /** The air of a place over the day; nothing outdoors. */
  Optional<RoomDay> room(String place) {
    return rooms.computeIfAbsent(place, this::reckoned);
  }

  private Optional<RoomDay> reckoned(String place) {
    return shop.place(place).surroundings() instanceof Surroundings.Indoors indoors
        ? Optional.of(
            new RoomDay(indoors, sources.stream().filter(source -> source.in(place)).toList()))
        : Optional.empty();
  }
}
