package motebook.desk;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import motebook.desk.CareClock.Kind;
import motebook.desk.CareClock.RanOut;
import motebook.model.Element;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.ElementClass;
import motebook.reference.ElementClass.Service;
import motebook.reference.Masks;
import motebook.reference.Solvent;

/** The clocks of the elements of respirators, from the sessions since each was put on. */
final class ElementCare {
  private final Masks masks;
  private final WearLog log;
  private final CareRules rules;
  private final VapourCare vapours;
  private final ClassCare classes;
  private final Map<Long, ElementStanding> standings = new HashMap<>();
  private final Map<Long, Map<LocalDate, ElementStanding>> days = new HashMap<>();

  ElementCare(Masks masks, WearLog log, VapourAir air, CareRules rules) {
    this.masks = masks;
    this.log = log;
    this.rules = rules;
    this.vapours = new VapourCare(air, rules);
    this.classes = new ClassCare(log, rules);
  }

  /** Where an element stands at the end of the log. */
  ElementStanding standing(Element element) {
    return standings.computeIfAbsent(element.id(), id -> reckon(element, log.last()));
  }

  /** The same as far as it matters on a day: of a fresh one each day, that day's own. */
  ElementStanding standing(Element element, LocalDate day) {
    return element.singleUse()
        ? days.computeIfAbsent(element.id(), id -> new HashMap<>())
            .computeIfAbsent(day, any -> reckon(element, day))
        : standing(element);
  }

  ElementClass classOf(Element element) {
    return masks
        .elementClass(element.elementClass())
        .orElseGet(() -> unknown(element.elementClass()));
  }

  // A book may hold a class that this program's table does not know; it then holds nothing back.
  private static ElementClass unknown(String key) {
    return new ElementClass(
        key, key, List.of(), Set.of(), Set.of(), "", 0, Service.OPEN, "", "not in the table");
  }

  private ElementStanding reckon(Element element, LocalDate day) {
    ElementClass kind = classOf(element);
    List<Wear> worn = element.opened().isEmpty() ? List.of() : worn(element, day);
    return new ElementStanding(
        element,
        kind,
        worn,
        () -> vapours.typicalShare(element, worn),
        daysOpen(element),
        element.opened().isPresent() ? clocks(element, kind, worn) : shelf(element));
  }

  private List<Wear> worn(Element element, LocalDate day) {
    LocalDate last = element.retired().map(gone -> gone.on()).orElse(log.last());
    List<Wear> around =
        element.singleUse()
            ? log.of(element.respirator(), day, day.plusDays(1))
            : log.of(element.respirator(), element.from(), last.plusDays(1));
    return around.stream().filter(wear -> isOn(element, wear.session().work())).toList();
  }

  private static boolean isOn(Element element, Work work) {
    return element.wornAt(work.date(), work.startMinute());
  }

  private OptionalLong daysOpen(Element element) {
    LocalDate end = element.retired().map(gone -> gone.on()).orElse(log.last());
    return element
        .opened()
        .map(opened -> OptionalLong.of(ChronoUnit.DAYS.between(opened, end)))
        .orElse(OptionalLong.empty());
  }

  private List<CareClock> shelf(Element element) {
    return element
        .sealedUntil()
        .map(last -> List.of(CareClock.date(Kind.SHELF, element.from(), last, log.last())))
        .orElse(List.of());
  }

  private List<CareClock> clocks(Element element, ElementClass kind, List<Wear> worn) {
    Pace pace = Pace.of(log);
    List<Wear> recent = log.of(element.respirator(), Pace.first(log.last()));
    Tally tally = new Tally(worn, recent, pace, log.last());
    List<CareClock> clocks = new ArrayList<>();
    openedLate(element).ifPresent(clocks::add);
    element.limitHours().ifPresent(h -> clocks.add(tally.clock(Kind.HOURS, h, Wear::hours)));
    clocks.addAll(classes.clocks(element, kind.service(), tally));
    if (kind.gas()) {
      clocks.add(opened(element));
      clocks.addAll(vapours.clocks(element, kind, tally));
    }
    return element.singleUse() ? ofOneDay(clocks) : clocks;
  }

  // Thrown away in the evening: no date ends it, and nothing is foreseen but for that day.
  private static List<CareClock> ofOneDay(List<CareClock> clocks) {
    return clocks.stream()
        .filter(clock -> clock.kind() != Kind.SHIFT && clock.kind() != Kind.OPENED)
        .map(CareClock::unforeseen)
        .toList();
  }

  // Shelf life and service life are two clocks: one opened after its shelf life was never good.
  private static Optional<CareClock> openedLate(Element element) {
    LocalDate opened = element.opened().orElseThrow();
    return element
        .sealedUntil()
        .filter(opened::isAfter)
        .map(
            last ->
                new CareClock(
                    Kind.SHELF,
                    ChronoUnit.DAYS.between(last, opened),
                    0,
                    Optional.of(new RanOut(opened, 0)),
                    OptionalDouble.empty(),
                    Optional.of(last)));
  }

  private CareClock opened(Element element) {
    LocalDate opened = element.opened().orElseThrow();
    return CareClock.date(
        Kind.OPENED, opened, opened.plusMonths(rules.openedGasMonths()), log.last());
  }

  /** Typical share of an element's vapour life that some sessions used; 0 where it holds no gas. */
  double vapourShare(Element element, List<Wear> worn) {
    return classOf(element).gas() ? vapours.typicalShare(element, worn) : 0;
  }

  /** What the vapour of a session asks of a mask. */
  VapourDemand demand(Session session) {
    return vapours.demand(session);
  }

  /** Whether oil may have been in the air of a session. */
  boolean oil(Session session) {
    return log.oil(session);
  }

  /** What vapour a session was worn in. */
  Set<Solvent> solvents(Session session) {
    return vapours.solvents(session);
  }
}
