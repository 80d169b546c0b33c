package motebook.journal;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Which daily copies are worth their room. */
final class Keeping {
  static final int DAYS = 7;
  static final int WEEKS = 4;
  static final int MONTHS = 12;

  private Keeping() {}

  /**
   * The days whose copies are kept: the newest seven, the newest of each of the newest four weeks
   * (Monday to Sunday) and of each of the newest twelve months that have one. Throwing the others
   * away day by day leaves the same as throwing them away at the end.
   */
  static Set<LocalDate> kept(Collection<LocalDate> days) {
    Set<LocalDate> kept = new HashSet<>();
    kept.addAll(days(days));
    kept.addAll(weeks(days));
    kept.addAll(newest(days, MONTHS, YearMonth::from));
    return kept;
  }

  /** The newest seven days. */
  static Set<LocalDate> days(Collection<LocalDate> days) {
    return newest(days, DAYS, day -> day);
  }

  /** The newest day of each of the newest four weeks. */
  static Set<LocalDate> weeks(Collection<LocalDate> days) {
    return newest(days, WEEKS, Keeping::week);
  }

  private static Set<LocalDate> newest(
      Collection<LocalDate> days, int count, Function<LocalDate, Object> span) {
    Set<Object> spans = new HashSet<>();
    Set<LocalDate> newest = new HashSet<>();
    Set<LocalDate> backwards = new TreeSet<>(Collections.reverseOrder());
    backwards.addAll(days);
    for (LocalDate day : backwards) {
      if (spans.size() < count && spans.add(span.apply(day))) {
        newest.add(day);
      }
    }
    return newest;
  }

  private static Object week(LocalDate day) {
    return day.get(IsoFields.WEEK_BASED_YEAR) * 100 + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }
}
