package motebook.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import motebook.model.Surroundings;
import motebook.science.Dust;
import motebook.science.Emission;
import motebook.science.SteadyRoom;

/** The air of one room over one day, source by source; clean when the day begins. */
public final class RoomDay {
  static final int DAY_ENDS = 24 * 60;

  private static final double HALF_A_MINUTE = 0.5;

  private final Map<Source, Traces> traces = new LinkedHashMap<>();

  private record Traces(SteadyRoom.Trace coarse, SteadyRoom.Trace fine) {
    Portion at(double minute) {
      return new Portion(coarse.mgPerM3At(minute), fine.mgPerM3At(minute));
    }
  }

  /**
   * The day of a room.
   *
   * @param room as it is on that day
   * @param sources everything that was done in it, by anyone
   */
  RoomDay(Surroundings.Indoors room, List<Source> sources) {
    RoomLosses lost = new RoomLosses(room, sources);
    SteadyRoom coarse = new SteadyRoom(room.volumeM3(), lost.of(Dust.COARSE));
    SteadyRoom fine = new SteadyRoom(room.volumeM3(), lost.of(Dust.FINE));
    for (Source source : sources) {
      traces.put(
          source, new Traces(trace(coarse, source, Dust.COARSE), trace(fine, source, Dust.FINE)));
    }
  }

  private static SteadyRoom.Trace trace(SteadyRoom room, Source source, Dust dust) {
    return room.trace(source.mgPerMin() * Emission.share(dust), source.from(), source.to());
  }

  /** What one source put into the room's air over a time, in mg·min/m³. */
  Portion fromSource(Source source, double fromMinute, double toMinute) {
    if (toMinute <= source.from()) {
      return Portion.NONE;
    }
    Traces of = traces.get(source);
    return new Portion(
        of.coarse.mgMinPerM3(fromMinute, toMinute), of.fine.mgMinPerM3(fromMinute, toMinute));
  }

  /** Coarse dust in the room in the middle of each minute of the day, all sources, in mg/m³. */
  double[] coarseByMinute() {
    return byMinute(Traces::coarse);
  }

  /** Fine dust likewise. */
  double[] fineByMinute() {
    return byMinute(Traces::fine);
  }

  private double[] byMinute(Function<Traces, SteadyRoom.Trace> dust) {
    double[] sums = new double[DAY_ENDS];
    traces.values().forEach(of -> dust.apply(of).addMinutes(sums, HALF_A_MINUTE));
    return sums;
  }

  /** The concentration in the room at a time, all sources together, in mg/m³. */
  public Portion at(double minute) {
    return traces.values().stream()
        .map(trace -> trace.at(minute))
        .reduce(Portion.NONE, Portion::plus);
  }
}
