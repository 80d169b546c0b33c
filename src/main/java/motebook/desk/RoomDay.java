package motebook.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.model.Surroundings;
import motebook.science.Dust;
import motebook.science.Emission;
import motebook.science.SteadyRoom;
import motebook.science.SteadyRoom.Span;

/** The air of one room over one day, source by source; clean when the day begins. */
public final class RoomDay {
  static final int DAY_ENDS = 24 * 60;

  private static final double HALF_A_MINUTE = 0.5;

  private final SteadyRoom room;
  private final Traces[] traces;

  private record Traces(int from, SteadyRoom.Trace coarse, SteadyRoom.Trace fine) {
    Portion at(double minute) {
      return new Portion(coarse.mgPerM3At(minute), fine.mgPerM3At(minute));
    }
  }

  /**
   * The day of a room.
   *
   * @param indoors as it is on that day
   * @param place its name
   * @param sources everything that was done on that day, there and elsewhere, by anyone
   */
  RoomDay(Surroundings.Indoors indoors, String place, List<Source> sources) {
    RoomLosses lost =
        new RoomLosses(indoors, sources.stream().filter(source -> source.in(place)).toList());
    room = new SteadyRoom(indoors.volumeM3(), lost.of(Dust.COARSE));
    SteadyRoom fine = new SteadyRoom(indoors.volumeM3(), lost.of(Dust.FINE));
    traces = new Traces[sources.size()];
    for (int i = 0; i < traces.length; i++) {
      Source source = sources.get(i);
      if (source.in(place)) {
        traces[i] =
            new Traces(
                source.from(), trace(room, source, Dust.COARSE), trace(fine, source, Dust.FINE));
      }
    }
  }

  private static SteadyRoom.Trace trace(SteadyRoom room, Source source, Dust dust) {
    return room.trace(source.mgPerMin() * Emission.share(dust), source.from(), source.to());
  }

  /**
   * What one source put into the room's air over a time, in mg·min/m³.
   *
   * @param source its place among the day's sources
   */
  Portion fromSource(int source, double fromMinute, double toMinute) {
    Traces of = traces[source];
    return of == null || toMinute <= of.from
        ? Portion.NONE
        : new Portion(
            of.coarse.mgMinPerM3(fromMinute, toMinute), of.fine.mgMinPerM3(fromMinute, toMinute));
  }

  /** Adds some share of what each source put into the room's air over a time. */
  void addTo(Breathed sums, double fromMinute, double toMinute, double share) {
    Optional<Span> whole = room.span(fromMinute, toMinute);
    for (int i = 0; i < traces.length; i++) {
      if (traces[i] != null && traces[i].from < toMinute) {
        if (whole.isPresent()) { // a session begins and ends where the room's losses may change
          Span span = whole.get();
          sums.add(i, traces[i].coarse.mgMinPerM3(span), traces[i].fine.mgMinPerM3(span), share);
        } else {
          Portion part = fromSource(i, fromMinute, toMinute);
          sums.add(i, part.coarse(), part.fine(), share);
        }
      }
    }
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
    all().forEach(of -> dust.apply(of).addMinutes(sums, HALF_A_MINUTE));
    return sums;
  }

  /** The concentration in the room at a time, all sources together, in mg/m³. */
  public Portion at(double minute) {
    return all().map(trace -> trace.at(minute)).reduce(Portion.NONE, Portion::plus);
  }

  private Stream<Traces> all() {
    return Arrays.stream(traces).filter(Objects::nonNull);
  }
}
