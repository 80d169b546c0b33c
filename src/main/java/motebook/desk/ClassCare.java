package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import motebook.desk.CareClock.Kind;
import motebook.desk.CareClock.RanOut;
import motebook.model.Element;
import motebook.reference.ElementClass.Service;

/** What ends a particulate element by the class that is printed on it. */
final class ClassCare {
  private final WearLog log;
  private final CareRules rules;

  ClassCare(WearLog log, CareRules rules) {
    this.log = log;
    this.rules = rules;
  }

  List<CareClock> clocks(Element element, Service service, Tally tally) {
    return switch (service) {
      case DIRTY -> List.of(dirty(Kind.DIRTY, element.limitMg(), tally, tally));
      case OIL -> oiled(element.limitMg(), tally);
      case SHIFT -> shift(element.limitMg(), tally);
      case OPEN -> load(element.limitMg(), tally);
    };
  }

  private static List<CareClock> load(OptionalDouble limitMg, Tally tally) {
    return limitMg.isPresent()
        ? List.of(tally.clock(Kind.LOAD, limitMg.getAsDouble(), Wear::highMg))
        : List.of();
  }

  // Without oil nothing but hygiene, damage and resistance ends class R, NIOSH 96-101.
  private List<CareClock> oiled(OptionalDouble limitMg, Tally tally) {
    List<Wear> worn = tally.worn();
    int first = 0;
    while (first < worn.size() && !log.oil(worn.get(first).session())) {
      first++;
    }
    return first == worn.size()
        ? load(limitMg, tally)
        : List.of(dirty(Kind.OILY, limitMg, tally.of(worn.subList(first, worn.size())), tally));
  }

  private List<CareClock> shift(OptionalDouble limitMg, Tally tally) {
    List<CareClock> clocks = new ArrayList<>(load(limitMg, tally));
    clocks.add(tally.clock(Kind.HOURS, rules.dirtyHours(), Wear::hours));
    tally.worn().stream()
        .findFirst()
        .map(wear -> wear.session().work().date())
        .map(day -> CareClock.date(Kind.SHIFT, day, day, tally.today()))
        .ifPresent(clocks::add);
    return clocks;
  }

  // Beyond eight hours only while the load stays low, so the later of the two ends it.
  private CareClock dirty(Kind kind, OptionalDouble limitMg, Tally hoursOf, Tally loadOf) {
    CareClock hours = hoursOf.clock(kind, rules.dirtyHours(), Wear::hours);
    CareClock load = loadOf.clock(Kind.LOAD, limitMg.orElse(rules.dirtyMg()), Wear::highMg);
    if (hours.ranOut().isEmpty() || load.ranOut().isEmpty()) {
      return hours.ranOut().isEmpty() && isLater(hours, load) ? hours : load;
    }
    return isLater(hours, load) ? hours : load;
  }

  private static boolean isLater(CareClock one, CareClock other) {
    if (one.ranOut().isPresent() && other.ranOut().isPresent()) {
      RanOut end = one.ranOut().get();
      return other.ranOut().get().before(end.date(), end.minute());
    }
    return one.workingDaysLeft().orElse(0) >= other.workingDaysLeft().orElse(Double.MAX_VALUE)
        || other.ranOut().isPresent();
  }
}
