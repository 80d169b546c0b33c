package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import motebook.model.Surroundings;
import motebook.reference.Control;
import motebook.science.Dust;
import motebook.science.Loss;

/** How fast the air of a room loses what is in it, over one day. */
final class RoomLosses {
  private final Surroundings.Indoors room;
  private final List<Source> cleaned;
  private final List<Source> opened;
  private final List<Source> fanned;
  private final int[] knots;

  /**
   * A day of a room.
   *
   * @param room as it is on that day
   * @param sources everything that was done in it, by anyone
   */
  RoomLosses(Surroundings.Indoors room, List<Source> sources) {
    this.room = room;
    cleaned = using(Control.AIR_CLEANER, sources);
    opened = using(Control.DOORS_OPEN, sources);
    fanned = using(Control.WINDOW_FAN, sources);
    knots = knots(sources);
  }

  private static List<Source> using(String control, List<Source> sources) {
    return sources.stream().filter(source -> source.uses(control)).toList();
  }

  private int[] knots(List<Source> sources) {
    IntStream.Builder knots = IntStream.builder().add(0).add(RoomDay.DAY_ENDS);
    sources.forEach(source -> knots.add(source.from()).add(source.to()));
    cleaned.forEach(
        source -> knots.add(Math.min(RoomDay.DAY_ENDS, source.to() + room.cleanerRunOnMinutes())));
    return knots.build().sorted().distinct().toArray();
  }

  /** For one kind of dust, which settles and which an air cleaner takes out. */
  List<Loss> of(Dust dust) {
    return between(minute -> rate(minute, dust.settlingPerHour(), cleaned(minute)));
  }

  /** For vapour, which neither settles nor stays in a dust filter. */
  List<Loss> ofVapour() {
    return between(minute -> rate(minute, 0, 0));
  }

  private List<Loss> between(IntToDoubleFunction perMinute) {
    List<Loss> losses = new ArrayList<>(knots.length);
    for (int i = 1; i < knots.length; i++) {
      losses.add(new Loss(knots[i - 1], knots[i], perMinute.applyAsDouble(knots[i - 1])));
    }
    return losses;
  }

  // The room has one cleaner and one fan: used by two sessions at once, each still counts once.
  private double rate(int minute, double settlingPerHour, double cleanedM3PerMin) {
    double fan = running(fanned, minute, 0) ? room.fanFlowM3PerMin().orElse(0) : 0;
    return Loss.rate(
        running(opened, minute, 0) ? room.openAirChangesPerHour() : room.airChangesPerHour(),
        settlingPerHour,
        cleanedM3PerMin + fan,
        room.volumeM3());
  }

  private double cleaned(int minute) {
    return running(cleaned, minute, room.cleanerRunOnMinutes())
        ? room.cleanerFlowM3PerMin().orElse(0)
        : 0;
  }

  private static boolean running(List<Source> sources, int minute, int runOn) {
    for (Source source : sources) {
      if (source.from() <= minute && minute < source.to() + runOn) {
        return true;
      }
    }
    return false;
  }
}
