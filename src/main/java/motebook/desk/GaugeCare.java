package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import motebook.desk.CareClock.Kind;
import motebook.desk.CareClock.RanOut;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import motebook.model.Upkeep.What;

/** A filter's gauge between its clean reading and the one at which the filter is changed. */
final class GaugeCare {
  private final ShopFilter filter;
  private final RunHours runs;
  private final List<Upkeep> readings = new ArrayList<>();
  private LocalDate begun;

  /**
   * @param upkeep what was done to the filter, oldest first
   */
  GaugeCare(ShopFilter filter, List<Upkeep> upkeep, RunHours runs) {
    this.filter = filter;
    this.runs = runs;
    begun = filter.from();
    for (Upkeep done : upkeep) {
      if (done.what() == What.CLEANED || done.what() == What.REPLACED) {
        readings.clear();
        begun = done.date();
      } else if (done.what() == What.GAUGE) {
        readings.add(done);
      }
    }
  }

  /** The latest reading since it was cleaned or replaced. */
  OptionalDouble reading() {
    return readings.isEmpty() ? OptionalDouble.empty() : latest().reading();
  }

  private Upkeep latest() {
    return readings.get(readings.size() - 1);
  }

  /**
   * The gauge's clock; empty without a gauge or a reading.
   *
   * @param hoursPerDay run hours of a working day lately
   * @param foreseen the day on which so many working days are over
   */
  Optional<CareClock> clock(
      OptionalDouble hoursPerDay, Function<OptionalDouble, Optional<LocalDate>> foreseen) {
    if (filter.gaugeChange().isEmpty() || readings.isEmpty()) {
      return Optional.empty();
    }
    double used = share(latest());
    if (used >= 1) {
      Upkeep first = readings.stream().filter(r -> share(r) >= 1).findFirst().orElseThrow();
      return Optional.of(
          new CareClock(
              Kind.GAUGE,
              used,
              1,
              Optional.of(new RanOut(first.date(), 0)),
              OptionalDouble.empty(),
              Optional.of(first.date())));
    }
    OptionalDouble left = left(used, hoursPerDay);
    return Optional.of(
        new CareClock(
            Kind.GAUGE, Math.max(0, used), 1, Optional.empty(), left, foreseen.apply(left)));
  }

  private double share(Upkeep read) {
    double clean = filter.gaugeClean().orElseThrow();
    return (read.reading().orElseThrow() - clean) / (filter.gaugeChange().orElseThrow() - clean);
  }

  // Straight on from the clean reading to the latest one, by run hours.
  private OptionalDouble left(double used, OptionalDouble hoursPerDay) {
    double since = runs.after(latest().date(), RoomDay.DAY_ENDS).hours();
    double to = runs.after(begun, RoomDay.DAY_ENDS).hours() - since;
    if (used <= 0 || to <= 0 || hoursPerDay.isEmpty()) {
      return OptionalDouble.empty();
    }
    double hoursLeft = Math.max(0, to * (1 - used) / used - since);
    return OptionalDouble.of(hoursLeft / hoursPerDay.getAsDouble());
  }
}
