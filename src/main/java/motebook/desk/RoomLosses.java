package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import motebook.model.Surroundings;
import motebook.reference.Control;
import motebook.science.Dust;
import motebook.science.Loss;

/**
 * How fast the air of a room loses what is in it, over one day.
 *
 * @param room as it is on that day
 * @param sources everything that was done in it, by anyone
 */
record RoomLosses(Surroundings.Indoors room, List<Source> sources) {

  /** For one kind of dust, which settles and which an air cleaner takes out. */
  List<Loss> of(Dust dust) {
    return between(minute -> rate(minute, dust.settlingPerHour(), cleaned(minute)));
  }

  /** For vapour, which neither settles nor stays in a dust filter. */
  List<Loss> ofVapour() {
    return between(minute -> rate(minute, 0, 0));
  }

  private List<Loss> between(IntToDoubleFunction perMinute) {
    List<Loss> losses = new ArrayList<>();
    Integer from = null;
    for (Integer to : knots()) {
      if (from != null) {
        losses.add(new Loss(from, to, perMinute.applyAsDouble(from)));
      }
      from = to;
    }
    return losses;
  }

  private Set<Integer> knots() {
    Set<Integer> knots = new TreeSet<>(List.of(0, RoomDay.DAY_ENDS));
    for (Source source : sources) {
      knots.add(source.from());
      knots.add(source.to());
      if (source.uses(Control.AIR_CLEANER)) {
        knots.add(Math.min(RoomDay.DAY_ENDS, source.to() + room.cleanerRunOnMinutes()));
      }
    }
    return knots;
  }

  // The room has one cleaner and one fan: used by two sessions at once, each still counts once.
  private double rate(int minute, double settlingPerHour, double cleanedM3PerMin) {
    boolean open = running(Control.DOORS_OPEN, minute, 0);
    double fan = running(Control.WINDOW_FAN, minute, 0) ? room.fanFlowM3PerMin().orElse(0) : 0;
    return Loss.rate(
        open ? room.openAirChangesPerHour() : room.airChangesPerHour(),
        settlingPerHour,
        cleanedM3PerMin + fan,
        room.volumeM3());
  }

  private double cleaned(int minute) {
    return running(Control.AIR_CLEANER, minute, room.cleanerRunOnMinutes())
        ? room.cleanerFlowM3PerMin().orElse(0)
        : 0;
  }

  private boolean running(String control, int minute, int runOn) {
    return sources.stream()
        .anyMatch(s -> s.uses(control) && s.from() <= minute && minute < s.to() + runOn);
  }
}
