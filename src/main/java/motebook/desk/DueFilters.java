package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.DueItem.Kind;
import motebook.model.Action;
import motebook.model.Gear;
import motebook.model.ShopFilter;
import motebook.model.Upkeep.What;

/** What is due of the shop's own filters. */
final class DueFilters {
  private final Gear gear;
  private final Care care;

  DueFilters(Gear gear, Care care) {
    this.gear = gear;
    this.care = care;
  }

  List<DueItem> items() {
    List<DueItem> items = new ArrayList<>();
    for (ShopFilter filter : gear.filters()) {
      if (filter.inUseOn(care.today())) {
        care.standing(filter).clocks().forEach(clock -> item(filter, clock).ifPresent(items::add));
      }
    }
    return items;
  }

  private Optional<DueItem> item(ShopFilter filter, CareClock clock) {
    return care.state(clock)
        .map(
            state ->
                new DueItem(
                    task(clock) + " " + filter.name(),
                    kind(clock),
                    filter.place(),
                    clock.ends().orElse(care.today()),
                    state,
                    DueElements.why(clock),
                    next(filter, clock),
                    clock.workingDaysLeft()));
  }

  private static String task(CareClock clock) {
    return switch (clock.kind()) {
      case CLEANING -> "clean";
      case EMPTYING -> "empty";
      case EXAMINATION -> "examine";
      default -> "replace";
    };
  }

  private static Kind kind(CareClock clock) {
    return switch (clock.kind()) {
      case CLEANING -> Kind.CLEANING;
      case EMPTYING -> Kind.EMPTYING;
      case EXAMINATION -> Kind.EXAMINATION;
      case GAUGE -> Kind.GAUGE;
      default -> Kind.REPLACING;
    };
  }

  /** What the clock of a filter asks for. */
  static Action next(ShopFilter filter, CareClock clock) {
    return new Action.RecordUpkeep(filter.name(), done(clock));
  }

  private static What done(CareClock clock) {
    return switch (clock.kind()) {
      case CLEANING -> What.CLEANED;
      case EMPTYING -> What.EMPTIED;
      case EXAMINATION -> What.INSPECTED;
      default -> What.REPLACED;
    };
  }
}
