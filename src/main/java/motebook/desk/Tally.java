package motebook.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import motebook.desk.CareClock.Kind;
import motebook.desk.CareClock.RanOut;
import motebook.model.Work;

/**
 * A clock that runs with the work.
 *
 * @param worn the sessions it has run in, oldest first
 * @param recent those of the last four weeks, earlier elements' among them: the pace
 * @param pace of the shop
 * @param today from which it is foreseen
 */
record Tally(List<Wear> worn, List<Wear> recent, Pace pace, LocalDate today) {

  /** The same clock run by some of the sessions alone, at the same pace. */
  Tally of(List<Wear> some) {
    return new Tally(some, recent, pace, today);
  }

  /**
   * The clock of a sum that never falls as sessions are added.
   *
   * @param sum what some sessions make together
   */
  CareClock clock(Kind kind, double limit, ToDoubleFunction<List<Wear>> sum) {
    double used = sum.applyAsDouble(worn);
    if (used >= limit) {
      RanOut end = endOf(worn.get(firstOver(limit, sum) - 1).session().work());
      return new CareClock(
          kind, used, limit, Optional.of(end), OptionalDouble.empty(), Optional.of(end.date()));
    }
    OptionalDouble left = left(limit - used, sum);
    Optional<LocalDate> ends =
        left.isPresent() ? Optional.of(pace.after(today, left.getAsDouble())) : Optional.empty();
    return new CareClock(kind, used, limit, Optional.empty(), left, ends);
  }

  private static RanOut endOf(Work work) {
    return new RanOut(work.date(), work.endMinute());
  }

  // How many sessions it takes to reach the limit; the sum is known to reach it with all of them.
  private int firstOver(double limit, ToDoubleFunction<List<Wear>> sum) {
    int below = 0;
    int over = worn.size();
    while (over - below > 1) {
      int middle = (below + over) / 2;
      if (sum.applyAsDouble(worn.subList(0, middle)) >= limit) {
        over = middle;
      } else {
        below = middle;
      }
    }
    return over;
  }

  private OptionalDouble left(double more, ToDoubleFunction<List<Wear>> sum) {
    double lately = pace.still() ? 0 : sum.applyAsDouble(recent) / pace.workingDays();
    return lately > 0 ? OptionalDouble.of(more / lately) : OptionalDouble.empty();
  }
}
