package motebook.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import motebook.model.Surroundings;
import motebook.science.Dust;
import motebook.science.Emission;
import motebook.science.Loss;
import motebook.science.RoomTrace;

/** The air of one room over one day, source by source; clean when the day begins. */
public final class RoomDay {
  static final int DAY_ENDS = 24 * 60;

  private final Map<Source, Map<Dust, RoomTrace>> traces = new HashMap<>();

  /**
   * The day of a room.
   *
   * @param room as it is on that day
   * @param sources everything that was done in it, by anyone
   */
  RoomDay(Surroundings.Indoors room, List<Source> sources) {
    RoomLosses lost = new RoomLosses(room, List.copyOf(sources));
    for (Dust dust : Dust.values()) {
      List<Loss> losses = lost.of(dust);
      for (Source source : sources) {
        double emission = source.mgPerMin() * Emission.share(dust);
        traces
            .computeIfAbsent(source, any -> new HashMap<>())
            .put(
                dust, new RoomTrace(room.volumeM3(), losses, emission, source.from(), source.to()));
      }
    }
  }

  /** What one source put into the room's air over a time, in mg·min/m³. */
  Portion fromSource(Source source, double fromMinute, double toMinute) {
    Map<Dust, RoomTrace> trace = traces.get(source);
    return new Portion(
        trace.get(Dust.COARSE).mgMinPerM3(fromMinute, toMinute),
        trace.get(Dust.FINE).mgMinPerM3(fromMinute, toMinute));
  }

  /** The concentration in the room at a time, all sources together, in mg/m³. */
  public Portion at(double minute) {
    Portion sum = Portion.NONE;
    for (Map<Dust, RoomTrace> trace : traces.values()) {
      sum =
          sum.plus(
              new Portion(
                  trace.get(Dust.COARSE).mgPerM3At(minute),
                  trace.get(Dust.FINE).mgPerM3At(minute)));
    }
    return sum;
  }
}
