package motebook.desk;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import motebook.desk.DueItem.State;
import motebook.model.Action;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.ShopFilter;
import motebook.reference.Masks;

/** The state of all masks and filters as it is on one day. */
public final class Care {
  private final Gear gear;
  private final Masks masks = Masks.shipped();
  private final CareRules rules;
  private final WearLog log;
  private final ElementCare elements;
  private final FilterCare filters;
  private final CreditRule credits;

  /** As it stands at the end of a day; the past is read when it is asked for. */
  public Care(Gear gear, History history, VapourAir vapours, CareRules rules, LocalDate today) {
    this.gear = gear;
    this.rules = rules;
    log = new WearLog(history, masks, today);
    elements = new ElementCare(masks, log, vapours, rules);
    filters = new FilterCare(gear, log, rules, () -> Due.inUk(gear, history.shop(today)));
    credits =
        new MaskRule(gear, masks, elements, rules, new Remedies(log, vapours, rules, masks)::of);
  }

  /** What the respirators of this day's and earlier sessions count for. */
  public CreditRule credits() {
    return credits;
  }

  /** Where an element stands. */
  public ElementStanding standing(Element element) {
    return elements.standing(element);
  }

  /** Where a filter of the shop stands. */
  public FilterStanding standing(ShopFilter filter) {
    return filters.standing(filter);
  }

  /** How a respirator fits each person that it concerns, in sentences; at least one. */
  public List<String> fits(Respirator mask) {
    return MaskFits.told(mask, gear, masks, this);
  }

  /** What a week used up; the day up to which this looks is its Sunday. */
  WeekWear week(LocalDate monday, String person) {
    return WeekWear.of(gear, this, monday, person);
  }

  /** The clocks of a filter that run with its hours, read no further back than each began. */
  List<CareClock> hourly(ShopFilter filter) {
    return filters.hourly(filter);
  }

  /** Typical share of an element's vapour life that some sessions used. */
  double vapourShare(Element element, List<Wear> worn) {
    return elements.vapourShare(element, worn);
  }

  /** What a clock of a filter asks for. */
  public Action next(ShopFilter filter, CareClock clock) {
    return DueFilters.next(filter, clock);
  }

  /** What may be done with an element today: a fresh one in its place, a spare thrown away. */
  public Action next(Element element) {
    return DueElements.next(element, today());
  }

  /** What is due, and due soon. */
  public DueReport due() {
    return ahead().only(item -> item.state() != State.LATER);
  }

  /** Everything that has a date or a foreseen one, far off or not. */
  public DueReport ahead() {
    return Due.report(gear, masks, this);
  }

  LocalDate today() {
    return log.last();
  }

  CareRules rules() {
    return rules;
  }

  WearLog log() {
    return log;
  }

  /** Names of those who wore a respirator in the last four weeks. */
  List<String> wearers(String respirator) {
    return log.sessionsFrom(Pace.first(today())).stream()
        .filter(session -> WearLog.wore(session, respirator))
        .map(session -> session.work().person())
        .distinct()
        .toList();
  }

  /** How what may be done up to and on a day stands. */
  State state(LocalDate lastDay) {
    long days = ChronoUnit.DAYS.between(today(), lastDay);
    if (days <= 0) {
      return days < 0 ? State.OVERDUE : State.DUE;
    }
    return days <= rules.soonDays() ? State.SOON : State.LATER;
  }

  /** How a clock stands; empty where nothing moves it. */
  Optional<State> state(CareClock clock) {
    if (clock.workingDaysLeft().isPresent()) {
      double left = clock.workingDaysLeft().getAsDouble();
      State ahead = left <= rules.soonWorkingDays() ? State.SOON : State.LATER;
      return Optional.of(left <= 0 ? State.DUE : ahead);
    }
    return clock.ends().map(this::state);
  }
}
