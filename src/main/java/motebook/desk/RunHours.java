package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.desk.CareClock.RanOut;
import motebook.model.Session;
import motebook.model.ShopFilter;
import motebook.model.Surroundings;
import motebook.model.Text;
import motebook.model.Work;
import motebook.reference.Control;

/**
 * When the machine that a filter sits in ran, from the sessions that used it; used by two at once
 * it ran once.
 *
 * @param runs oldest first, none overlapping another
 */
record RunHours(List<Run> runs) {

  /** One stretch, in minutes of a day. */
  record Run(LocalDate date, int from, int to) {
    double hours() {
      return (to - from) / 60.0;
    }
  }

  /** From a day on, to the end of the log. */
  static RunHours of(ShopFilter filter, WearLog log, LocalDate first) {
    String control = control(filter);
    List<Run> raw = new ArrayList<>();
    for (Session session : log.sessionsFrom(first)) {
      Work work = session.work();
      if (work.controls().contains(control) && same(work.place(), filter.place())) {
        int end = Math.min(work.endMinute() + runOn(control, work, log), RoomDay.DAY_ENDS);
        raw.add(new Run(work.date(), work.startMinute(), end));
      }
    }
    raw.sort(Comparator.comparing(Run::date).thenComparing(Run::from));
    return new RunHours(merged(raw));
  }

  private static boolean same(String one, String other) {
    return Text.folded(one).equals(Text.folded(other));
  }

  /** The control whose use runs the filter. */
  static String control(ShopFilter filter) {
    return filter.on().equals("vacuum") ? "tool-vacuum" : filter.on();
  }

  // The room's cleaner runs on after the work; a collector or a vacuum is switched off with it.
  private static int runOn(String control, Work work, WearLog log) {
    return control.equals(Control.AIR_CLEANER)
            && log.shop(work.date()).place(work.place()).surroundings()
                instanceof Surroundings.Indoors room
        ? room.cleanerRunOnMinutes()
        : 0;
  }

  private static List<Run> merged(List<Run> sorted) {
    List<Run> runs = new ArrayList<>();
    for (Run next : sorted) {
      Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
      if (last != null && last.date.equals(next.date) && next.from <= last.to) {
        runs.set(runs.size() - 1, new Run(last.date, last.from, Math.max(last.to, next.to)));
      } else {
        runs.add(next);
      }
    }
    return List.copyOf(runs);
  }

  /** What ran after a moment. */
  RunHours after(LocalDate day, int minute) {
    return new RunHours(
        runs.stream()
            .filter(run -> run.date.isAfter(day) || (run.date.equals(day) && run.to > minute))
            .map(
                run ->
                    run.date.equals(day) ? new Run(day, Math.max(run.from, minute), run.to) : run)
            .toList());
  }

  double hours() {
    return runs.stream().mapToDouble(Run::hours).sum();
  }

  /** When so many hours had run, if they have. */
  Optional<RanOut> reached(double limit) {
    double sum = 0;
    for (Run run : runs) {
      sum += run.hours();
      if (sum >= limit) {
        return Optional.of(new RanOut(run.date, run.to));
      }
    }
    return Optional.empty();
  }
}
