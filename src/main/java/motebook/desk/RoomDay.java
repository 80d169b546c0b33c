package motebook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import motebook.model.Surroundings;
import motebook.reference.Control;
import motebook.science.Dust;
import motebook.science.Emission;
import motebook.science.Loss;
import motebook.science.RoomTrace;

/** The air of one room over one day, source by source; clean when the day begins. */
public final class RoomDay {
  static final int DAY_ENDS = 24 * 60;

  private final Surroundings.Indoors room;
  private final List<Source> sources;
  private final Map<Source, Map<Dust, RoomTrace>> traces = new HashMap<>();

  /**
   * The day of a room.
   *
   * @param room as it is on that day
   * @param sources everything that was done in it, by anyone
   */
  RoomDay(Surroundings.Indoors room, List<Source> sources) {
    this.room = room;
    this.sources = List.copyOf(sources);
    for (Dust dust : Dust.values()) {
      List<Loss> losses = losses(dust);
      for (Source source : sources) {
        double emission = source.mgPerMin() * Emission.share(dust);
        traces
            .computeIfAbsent(source, any -> new HashMap<>())
            .put(
                dust, new RoomTrace(room.volumeM3(), losses, emission, source.from(), source.to()));
      }
    }
  }

  private List<Loss> losses(Dust dust) {
    List<Loss> losses = new ArrayList<>();
    Integer from = null;
    for (Integer to : knots()) {
      if (from != null) {
        losses.add(new Loss(from, to, lossAt(from, dust)));
      }
      from = to;
    }
    return losses;
  }

  private Set<Integer> knots() {
    Set<Integer> knots = new TreeSet<>(List.of(0, DAY_ENDS));
    for (Source source : sources) {
      knots.add(source.from());
      knots.add(source.to());
      if (source.uses(Control.AIR_CLEANER)) {
        knots.add(Math.min(DAY_ENDS, source.to() + room.cleanerRunOnMinutes()));
      }
    }
    return knots;
  }

  // The room has one cleaner and one fan: used by two sessions at once, each still counts once.
  private double lossAt(int minute, Dust dust) {
    boolean open = running(Control.DOORS_OPEN, minute, 0);
    double cleaner =
        running(Control.AIR_CLEANER, minute, room.cleanerRunOnMinutes())
            ? room.cleanerFlowM3PerMin().orElse(0)
            : 0;
    double fan = running(Control.WINDOW_FAN, minute, 0) ? room.fanFlowM3PerMin().orElse(0) : 0;
    return Loss.rate(
        open ? room.openAirChangesPerHour() : room.airChangesPerHour(),
        dust.settlingPerHour(),
        cleaner + fan,
        room.volumeM3());
  }

  private boolean running(String control, int minute, int runOn) {
    return sources.stream()
        .anyMatch(s -> s.uses(control) && s.from() <= minute && minute < s.to() + runOn);
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
