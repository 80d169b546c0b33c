package motebook.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import motebook.reference.Caution;

/**
 * All there is to say of a week.
 *
 * @param week its figures
 * @param attribution where the dust outside came from
 * @param quarter the trend of the last 12 weeks up to it
 * @param year the trend of the last 52 weeks up to it
 * @param change what changed against the week before, if both have work
 * @param best the one change that would have helped most, if any would have
 * @param wear what it used up of masks and filters
 */
public record WeekReview(
    WeekReport week,
    Attribution attribution,
    Trend quarter,
    Trend year,
    Optional<Weeks.Change> change,
    Optional<BestChange> best,
    WeekWear wear) {

  /** The cautions that the week's work raised, each once. */
  public List<Caution> cautions() {
    Set<Caution> all = new LinkedHashSet<>();
    week.days().forEach(day -> all.addAll(day.cautions()));
    return List.copyOf(all);
  }

  /** What a reader must know beside the figures, each once. */
  public List<String> remarks() {
    return week.days().stream().flatMap(day -> day.remarks().stream()).distinct().toList();
  }
}
