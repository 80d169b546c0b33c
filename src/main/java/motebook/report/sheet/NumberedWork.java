package motebook.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import motebook.desk.DayReport;
import motebook.desk.Source;
import motebook.model.Work;
import motebook.report.Wording;

/**
 * A session as it is marked under the air strip: the person's own with numbers, others' with
 * letters.
 *
 * @param number the mark
 * @param own whether it is the person's
 * @param lane the row of bars that it is drawn in: 0 for the person's own, 1 or 2 for others
 * @param work the session
 * @param said the mark, the time, who and what
 */
record NumberedWork(String number, boolean own, int lane, Work work, String said) {
  /** The sessions of a day in a place, those of others as far as the person breathed from them. */
  static List<NumberedWork> of(DayReport day, String place) {
    List<NumberedWork> all = new ArrayList<>();
    List<Source> mine = day.sessions().stream().map(line -> line.source()).toList();
    List<Source> theirs = day.others().stream().map(line -> line.source()).toList();
    for (Source source : in(place, mine)) {
      all.add(of(String.valueOf(all.size() + 1), 0, source));
    }
    int number = 0;
    for (Source source : in(place, theirs)) {
      all.add(of(letter(number++), lane(source.session().work(), all), source));
    }
    return all;
  }

  // Others side by side stand in two rows; where three work at once, two share the second.
  private static int lane(Work work, List<NumberedWork> before) {
    boolean taken = before.stream().anyMatch(other -> other.lane == 1 && other.work.overlaps(work));
    return taken ? 2 : 1;
  }

  private static List<Source> in(String place, List<Source> sources) {
    return sources.stream()
        .filter(source -> source.session().work().place().equals(place))
        .sorted(Comparator.comparing(source -> source.session().work().start()))
        .toList();
  }

  private static String letter(int number) {
    return number < 26 ? String.valueOf((char) ('a' + number)) : "a" + letter(number - 26);
  }

  private static NumberedWork of(String number, int lane, Source source) {
    Work work = source.session().work();
    boolean own = lane == 0;
    String who = own ? "" : work.person() + ", ";
    return new NumberedWork(
        number,
        own,
        lane,
        work,
        number + "  " + Wording.span(work) + "  " + who + Wording.jobAndControls(source));
  }
}
