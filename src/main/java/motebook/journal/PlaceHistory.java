package motebook.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;

/** How a change of a place's figures runs through its dated versions. Pure. */
final class PlaceHistory {
  private PlaceHistory() {}

  /** Every version changed, each by itself. */
  static List<PlaceVersion> everywhere(
      List<PlaceVersion> versions, UnaryOperator<Surroundings> change) {
    return versions.stream()
        .map(version -> new PlaceVersion(version.from(), change.apply(version.surroundings())))
        .toList();
  }

  /**
   * The versions after a change from a day on. The version in force on that day is changed from
   * then on; later ones take over each changed figure for as long as theirs still equals the old
   * one, so that a later change, once made, stays.
   *
   * @param versions in order of time, the first from the beginning
   */
  static List<PlaceVersion> from(
      LocalDate day, List<PlaceVersion> versions, UnaryOperator<Surroundings> change) {
    List<PlaceVersion> earlier = versions.stream().filter(v -> isBefore(v, day)).toList();
    List<PlaceVersion> later = versions.stream().filter(v -> isAfter(v, day)).toList();
    Surroundings old = inForce(day, versions);
    Surroundings now = change.apply(old);
    if (now.equals(old)) {
      return versions;
    }
    List<PlaceVersion> all = new ArrayList<>(earlier);
    all.add(new PlaceVersion(Optional.of(day), now));
    all.addAll(takenOver(later, old, now));
    return all;
  }

  private static boolean isBefore(PlaceVersion version, LocalDate day) {
    return version.from().map(from -> from.isBefore(day)).orElse(true);
  }

  private static boolean isAfter(PlaceVersion version, LocalDate day) {
    return version.from().map(from -> from.isAfter(day)).orElse(false);
  }

  private static Surroundings inForce(LocalDate day, List<PlaceVersion> versions) {
    return versions.stream()
        .filter(version -> !isAfter(version, day))
        .reduce((first, second) -> second)
        .orElseThrow()
        .surroundings();
  }

  private static List<PlaceVersion> takenOver(
      List<PlaceVersion> later, Surroundings old, Surroundings now) {
    List<PlaceVersion> result = new ArrayList<>();
    for (PlaceVersion version : later) {
      Surroundings before = version.surroundings();
      Surroundings after = takenOver(before, old, now);
      result.add(new PlaceVersion(version.from(), after));
      old = before;
      now = after;
    }
    return result;
  }

  /** Within one kind of place figure by figure; a change of kind only as a whole. */
  private static Surroundings takenOver(Surroundings later, Surroundings old, Surroundings now) {
    if (later instanceof Indoors l && old instanceof Indoors o && now instanceof Indoors n) {
      return new Indoors(
          pick(l.volumeM3(), o.volumeM3(), n.volumeM3()),
          pick(l.airChangesPerHour(), o.airChangesPerHour(), n.airChangesPerHour()),
          pick(l.openAirChangesPerHour(), o.openAirChangesPerHour(), n.openAirChangesPerHour()),
          pick(l.airSpeedMPerMin(), o.airSpeedMPerMin(), n.airSpeedMPerMin()),
          pick(l.cleanerFlowM3PerMin(), o.cleanerFlowM3PerMin(), n.cleanerFlowM3PerMin()),
          pick(l.fanFlowM3PerMin(), o.fanFlowM3PerMin(), n.fanFlowM3PerMin()),
          pick(l.cleanerRunOnMinutes(), o.cleanerRunOnMinutes(), n.cleanerRunOnMinutes()));
    }
    return pick(later, old, now);
  }

  private static <T> T pick(T later, T old, T now) {
    return later.equals(old) ? now : later;
  }
}
