package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import motebook.desk.CareClock.Kind;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Retirement;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import motebook.science.Estimate;

/**
 * What a week used up of the elements of masks and of the shop's own filters.
 *
 * @param elements those that the person wore, and those of the person's masks that were put on,
 *     taken off or came to their end
 * @param filters those that ran, were looked after or came to their end
 */
public record WeekWear(List<OfElement> elements, List<OfFilter> filters) {
  /** Nothing at all. */
  public static final WeekWear NONE = new WeekWear(List.of(), List.of());

  private static final int DAYS = 7;

  public WeekWear {
    elements = List.copyOf(elements);
    filters = List.copyOf(filters);
  }

  /**
   * An element in the week.
   *
   * @param element the element
   * @param hoursByPerson hours on each face that wore it, by name
   * @param loadMg dust drawn onto it, a pair taken together; none on one that holds gas alone
   * @param vapourShare typical share of its vapour life used in the week, the safety fraction
   *     allowed for
   * @param vapour the clock of its vapour life at the end of the week, where it ran in it
   * @param hoursLimit hours worn that end it, where such a clock runs
   * @param loadLimitMg dust that ends it, where such a clock runs
   * @param putOn the day it was put on, if in the week
   * @param takenOff when and why it was taken off, if in the week
   * @param spent the clocks that ran out in the week
   */
  public record OfElement(
      Element element,
      Map<String, Double> hoursByPerson,
      Estimate loadMg,
      double vapourShare,
      Optional<CareClock> vapour,
      OptionalDouble hoursLimit,
      OptionalDouble loadLimitMg,
      Optional<LocalDate> putOn,
      Optional<Retirement> takenOff,
      List<CareClock> spent) {
    /** Hours on all faces. */
    public double hours() {
      return hoursByPerson.values().stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  /**
   * A filter of the shop in the week.
   *
   * @param filter the filter
   * @param runHours hours that it ran
   * @param upkeep what was done to it, gauge readings left out
   * @param takenOff when and why it went out of use, if in the week
   * @param spent the clocks that ran out in the week
   */
  public record OfFilter(
      ShopFilter filter,
      double runHours,
      List<Upkeep> upkeep,
      Optional<Retirement> takenOff,
      List<CareClock> spent) {}

  /**
   * The week that ends with the day up to which the care looks.
   *
   * @param monday its first day
   * @param person whose
   */
  static WeekWear of(Gear gear, Care care, LocalDate monday, String person) {
    Reader week = new Reader(gear, care, monday);
    List<OfElement> elements = new ArrayList<>();
    for (Element element : gear.elements()) {
      if (week.holds(element)) {
        week.of(element, person).ifPresent(elements::add);
      }
    }
    List<OfFilter> filters = new ArrayList<>();
    for (ShopFilter filter : gear.filters()) {
      if (week.holds(filter)) {
        week.of(filter).ifPresent(filters::add);
      }
    }
    return new WeekWear(elements, filters);
  }

  /** Whether nothing was used up, put on, taken off or looked after. */
  public boolean isEmpty() {
    return elements.isEmpty() && filters.isEmpty();
  }

  /** Looks at one thing after the other. */
  private record Reader(Gear gear, Care care, LocalDate monday) {
    private boolean in(LocalDate day) {
      return !day.isBefore(monday) && day.isBefore(monday.plusDays(DAYS));
    }

    /** What was there before the week was over and not gone before it began. */
    boolean holds(Element element) {
      return element.opened().isPresent()
          && !element.from().isAfter(care.today())
          && element.retired().map(gone -> !gone.on().isBefore(monday)).orElse(true);
    }

    boolean holds(ShopFilter filter) {
      return !filter.from().isAfter(care.today())
          && filter.retired().map(gone -> !gone.on().isBefore(monday)).orElse(true);
    }

    Optional<OfElement> of(Element element, String person) {
      List<Wear> worn =
          care.log().of(element.respirator(), monday).stream()
              .filter(
                  wear ->
                      element.wornAt(
                          wear.session().work().date(), wear.session().work().startMinute()))
              .toList();
      boolean theirs =
          worn.stream().anyMatch(wear -> wear.session().work().person().equals(person))
              || gear.respirator(element.respirator()).map(r -> r.isFor(person)).orElse(false);
      if (!theirs) {
        return Optional.empty();
      }
      ElementStanding standing = care.standing(element);
      double vapourShare = care.vapourShare(element, worn);
      OfElement used =
          new OfElement(
              element,
              worn.stream()
                  .collect(
                      Collectors.groupingBy(
                          wear -> wear.session().work().person(),
                          LinkedHashMap::new,
                          Collectors.summingDouble(wear -> wear.minutes() / 60))),
              standing.elementClass().particulate() ? Wear.mg(worn) : Estimate.ZERO,
              vapourShare,
              vapourShare > 0 ? clock(standing.clocks(), Kind.VAPOUR) : Optional.empty(),
              limit(standing.clocks(), Kind.HOURS).isPresent()
                  ? limit(standing.clocks(), Kind.HOURS)
                  : limit(standing.clocks(), Kind.DIRTY),
              limit(standing.clocks(), Kind.LOAD),
              Optional.of(element.from()).filter(this::in),
              element.retired().filter(gone -> in(gone.on())),
              spent(standing.clocks()));
      return Optional.of(used)
          .filter(
              any ->
                  used.hours() > 0
                      || used.putOn().isPresent()
                      || used.takenOff().isPresent()
                      || !used.spent().isEmpty());
    }

    private static OptionalDouble limit(List<CareClock> clocks, Kind kind) {
      return clock(clocks, kind).stream().mapToDouble(CareClock::limit).findFirst();
    }

    private static Optional<CareClock> clock(List<CareClock> clocks, Kind kind) {
      return clocks.stream().filter(clock -> clock.kind() == kind).findFirst();
    }

    private List<CareClock> spent(List<CareClock> clocks) {
      return clocks.stream()
          .filter(clock -> clock.ranOut().filter(end -> in(end.date())).isPresent())
          .toList();
    }

    Optional<OfFilter> of(ShopFilter filter) {
      OfFilter used =
          new OfFilter(
              filter,
              RunHours.of(filter, care.log(), monday).hours(),
              gear.upkeepOf(filter.name()).stream()
                  .filter(done -> in(done.date()) && done.what() != Upkeep.What.GAUGE)
                  .toList(),
              filter.retired().filter(gone -> in(gone.on())),
              spent(care.hourly(filter)));
      return Optional.of(used)
          .filter(
              any ->
                  used.runHours() > 0
                      || !used.upkeep().isEmpty()
                      || used.takenOff().isPresent()
                      || !used.spent().isEmpty());
    }
  }
}
