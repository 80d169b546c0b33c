package motebook.desk;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import motebook.model.Sample;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Work;

/**
 * A figure out of any shop's range, mostly a slip of its unit. It is asked about before it is kept.
 * The ranges are judgement.
 *
 * @param kind what is unlikely of what
 * @param value the figure, in the unit of the kind; 0 where there is none
 */
public record Unlikely(Kind kind, double value) {
  private static final double MOST_CHANGES = 60;
  private static final double SMALLEST_M3 = 8;
  private static final double LARGEST_M3 = 20_000;
  private static final double MOST_MG_M3 = 500;
  private static final double MOST_L_PER_MIN = 25;

  /** What may be unlikely. */
  public enum Kind {
    /** Air changes per hour with doors closed. */
    AIR_CHANGES,
    /** The same with them open. */
    OPEN_AIR_CHANGES,
    /** Changes per hour that the air cleaner alone makes. */
    CLEANER,
    /** Changes per hour that the window fan alone makes. */
    FAN,
    /** A room smaller than any workshop, m³. */
    SMALL,
    /** A room larger than any workshop, m³. */
    LARGE,
    /** A measured result, mg/m³. */
    RESULT,
    /** The flow of a sampling pump, L/min. */
    PUMP,
    /** A sample that ends after now. */
    FUTURE,
    /** A sample in whose time its person did no work. */
    NO_WORK
  }

  /** What is unlikely of a place. */
  public static List<Unlikely> of(Surroundings surroundings) {
    List<Unlikely> found = new ArrayList<>();
    if (surroundings instanceof Indoors room) {
      double volume = room.volumeM3();
      above(Kind.AIR_CHANGES, room.airChangesPerHour(), MOST_CHANGES, found);
      if (room.openAirChangesPerHour() > room.airChangesPerHour()) {
        above(Kind.OPEN_AIR_CHANGES, room.openAirChangesPerHour(), MOST_CHANGES, found);
      }
      above(Kind.CLEANER, changes(room.cleanerFlowM3PerMin(), volume), MOST_CHANGES, found);
      above(Kind.FAN, changes(room.fanFlowM3PerMin(), volume), MOST_CHANGES, found);
      above(Kind.LARGE, volume, LARGEST_M3, found);
      if (volume < SMALLEST_M3) {
        found.add(new Unlikely(Kind.SMALL, volume));
      }
    }
    return found;
  }

  /**
   * What is unlikely of a sample.
   *
   * @param now the local time
   * @param sessions of its person on its day
   */
  public static List<Unlikely> of(Sample sample, LocalDateTime now, List<Session> sessions) {
    List<Unlikely> found = new ArrayList<>();
    above(Kind.RESULT, Measured.of(sample).mgPerM3(), MOST_MG_M3, found);
    if (sample.result() instanceof Sample.Weighed weighed) {
      above(Kind.PUMP, weighed.litresPerMin(), MOST_L_PER_MIN, found);
    }
    if (sample.date().atStartOfDay().plusMinutes(sample.toMinute()).isAfter(now)) {
      found.add(new Unlikely(Kind.FUTURE, 0));
    }
    if (sessions.stream().map(Session::work).noneMatch(work -> overlaps(work, sample))) {
      found.add(new Unlikely(Kind.NO_WORK, 0));
    }
    return found;
  }

  private static boolean overlaps(Work work, Sample sample) {
    return work.startMinute() < sample.toMinute() && work.endMinute() > sample.fromMinute();
  }

  private static void above(Kind kind, double value, double most, List<Unlikely> found) {
    if (value > most) {
      found.add(new Unlikely(kind, value));
    }
  }

  private static double changes(OptionalDouble flowM3PerMin, double volumeM3) {
    return 60 * flowM3PerMin.orElse(0) / volumeM3;
  }
}
