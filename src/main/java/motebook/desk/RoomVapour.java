package motebook.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import motebook.model.Surroundings;
import motebook.science.Loss;
import motebook.science.RoomTrace;

/**
 * The vapour in the air of one room over one day, finish by finish; clean when the day begins. What
 * is still to dry at midnight is left out.
 */
final class RoomVapour {
  /** Outdoors, where no room holds anything back. */
  static final RoomVapour NONE = new RoomVapour();

  private final Map<Drying, List<RoomTrace>> traces = new HashMap<>();
  private final List<Loss> losses;

  private RoomVapour() {
    losses = List.of();
  }

  /**
   * The day of a room.
   *
   * @param room as it is on that day
   * @param sources everything that was done in it, by anyone
   * @param drying every finish used in it
   */
  RoomVapour(Surroundings.Indoors room, List<Source> sources, List<Drying> drying) {
    losses = new RoomLosses(room, sources).ofVapour();
    for (Drying finish : drying) {
      traces.put(
          finish,
          finish.releases().stream()
              .map(release -> new RoomTrace(room.volumeM3(), losses, release))
              .toList());
    }
  }

  /**
   * The minute by which the air has changed a number of times after another minute; the day's end
   * where it does not, and at once outdoors.
   */
  double afterAirChanges(double minute, double changes) {
    double left = changes;
    for (Loss loss : losses) {
      double from = Math.max(minute, loss.fromMinute());
      double changed = Math.max(0, loss.toMinute() - from) * loss.perMinute();
      if (changed >= left) {
        return from + left / loss.perMinute();
      }
      left -= changed;
    }
    return losses.isEmpty() ? minute : RoomDay.DAY_ENDS;
  }

  /** What one finish puts into the room's air, all solvents together; none outdoors. */
  List<RoomTrace> traces(Drying finish) {
    return traces.getOrDefault(finish, List.of());
  }

  /** What one finish put into the room's air over a time, all solvents together, mg·min/m³. */
  double mgMinPerM3(Drying finish, double fromMinute, double toMinute) {
    return traces(finish).stream()
        .mapToDouble(trace -> trace.mgMinPerM3(fromMinute, toMinute))
        .sum();
  }

  /** The concentration of it at a time, all solvents together, mg/m³. */
  double mgPerM3At(Drying finish, double minute) {
    return traces(finish).stream().mapToDouble(trace -> trace.mgPerM3At(minute)).sum();
  }
}
