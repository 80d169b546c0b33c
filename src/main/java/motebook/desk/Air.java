package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.model.Work;

/**
 * The air of one place over one day, minute by minute, and what one person breathed of it.
 *
 * <p>All figures are typical concentrations in mg/m³; a minute counts from midnight.
 */
public final class Air {
  private final String place;
  private final boolean outdoors;
  private final double[] coarse;
  private final double[] fine;
  private final double[] breathed = new double[RoomDay.DAY_ENDS];

  private Air(String place, DayReckoning day) {
    this.place = place;
    Optional<RoomDay> room = day.room(place);
    outdoors = room.isEmpty();
    coarse = room.map(RoomDay::coarseByMinute).orElseGet(() -> new double[RoomDay.DAY_ENDS]);
    fine = room.map(RoomDay::fineByMinute).orElseGet(() -> new double[RoomDay.DAY_ENDS]);
    day.breaths().stream().filter(b -> b.place().equals(place)).forEach(b -> breathe(b, day));
  }

  private void breathe(Breath breath, DayReckoning day) {
    double near = breath.own().map(own -> day.nearField(own).inhalable()).orElse(0.0);
    for (int minute = breath.from(); minute < breath.to(); minute++) {
      breathed[minute] = near + coarse[minute] + fine[minute];
    }
  }

  /** The air of every place of a day: the person's own places first, then those of others. */
  public static List<Air> of(DayReckoning day) {
    List<Work> works = new ArrayList<>();
    day.sources().forEach(source -> works.add(source.session().work()));
    works.sort(
        Comparator.comparing((Work work) -> !work.person().equals(day.person()))
            .thenComparing(Work::start));
    Set<String> places = new LinkedHashSet<>();
    works.forEach(work -> places.add(work.place()));
    return places.stream().map(place -> new Air(place, day)).toList();
  }

  /** The name of the place. */
  public String place() {
    return place;
  }

  /** Whether the place has no room that holds dust back; its air is then shown as clean. */
  public boolean outdoors() {
    return outdoors;
  }

  /** Highest coarse dust of the room in some minutes of the day. */
  public double coarse(int from, int to) {
    return highest(coarse, from, to);
  }

  /** Highest fine dust of the room in some minutes of the day. */
  public double fine(int from, int to) {
    return highest(fine, from, to);
  }

  /** Highest inhalable dust that the person breathed here outside the mask; 0 while away. */
  public double breathed(int from, int to) {
    return highest(breathed, from, to);
  }

  private static double highest(double[] minutes, int from, int to) {
    double highest = 0;
    for (int minute = Math.max(0, from); minute < Math.min(to, minutes.length); minute++) {
      highest = Math.max(highest, minutes[minute]);
    }
    return highest;
  }
}
