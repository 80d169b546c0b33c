package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.model.Units;

/**
 * What stands on the sheet of a week.
 *
 * @param review all there is to say of it
 * @param worstDay the day with the highest headline figure outside
 * @param air of that day, place by place
 * @param units in which the owner's own measures are shown
 * @param figures every shipped figure that was used, and the owner's own of each place
 */
public record WeekSheet(
    WeekReview review, DayReport worstDay, List<Air> air, Units units, List<UsedFigure> figures) {
  public WeekSheet {
    air = List.copyOf(air);
    figures = List.copyOf(figures);
  }

  /** The place in which most was breathed at one time on the worst day. */
  public Optional<Air> worstAir() {
    return air.stream()
        .max(Comparator.comparingDouble(place -> place.breathed(0, RoomDay.DAY_ENDS)));
  }
}
