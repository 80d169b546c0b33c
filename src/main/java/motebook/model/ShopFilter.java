package motebook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A filter or bag of the shop's own: of a dust collector, a vacuum or an air cleaner.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique in the book, whatever the case
 * @param on what it sits in: "collector", "vacuum" or "air-cleaner"
 * @param place name of the place where that stands
 * @param from first day its hours are counted
 * @param cleanEveryHours run hours between cleanings, if set; above 0
 * @param changeAtHours run hours after which it is replaced, if set; above 0
 * @param gaugeClean the gauge's reading when clean, in the gauge's own unit, if it has one
 * @param gaugeChange the reading at which it is replaced; there with the clean one, never equal
 * @param retired when it went out of use, if it has
 */
public record ShopFilter(
    long id,
    String name,
    String on,
    String place,
    LocalDate from,
    OptionalDouble cleanEveryHours,
    OptionalDouble changeAtHours,
    OptionalDouble gaugeClean,
    OptionalDouble gaugeChange,
    Optional<Retirement> retired) {
  private static final double MOST = 1e6;

  public ShopFilter {
    name = Names.check("filter", name);
    on = Checks.key("place of a filter", on);
    place = Names.check("place", place);
    Checks.believable(from);
    cleanEveryHours.ifPresent(h -> Checks.aboveZero("time between cleanings", h, 1e5, "h"));
    changeAtHours.ifPresent(h -> Checks.aboveZero("time to a change", h, 1e5, "h"));
    gaugeClean.ifPresent(x -> Checks.within("clean reading", x, -MOST, MOST, "on the gauge"));
    gaugeChange.ifPresent(
        x -> Checks.within("reading to change at", x, -MOST, MOST, "on the gauge"));
    requireBothReadings(gaugeClean, gaugeChange);
    String itself = name;
    LocalDate first = from;
    retired.ifPresent(end -> end.requireFrom(itself, first, "put to use"));
  }

  private static void requireBothReadings(OptionalDouble clean, OptionalDouble change) {
    if (clean.isPresent() != change.isPresent()) {
      throw new Refusal(
          "A gauge needs both readings: the clean one and the one at which the filter is changed.");
    }
    if (clean.isPresent() && clean.getAsDouble() == change.getAsDouble()) {
      throw new Refusal(
          "The clean reading and the reading to change at are the same; they must differ.");
    }
  }

  /** The same, taken out of use. */
  public ShopFilter retired(Retirement end) {
    return new ShopFilter(
        id,
        name,
        on,
        place,
        from,
        cleanEveryHours,
        changeAtHours,
        gaugeClean,
        gaugeChange,
        Optional.of(end));
  }

  /** Whether it is in use on a day; the day it was retired is the last. */
  public boolean inUseOn(LocalDate day) {
    return !day.isBefore(from) && retired.map(end -> !day.isAfter(end.on())).orElse(true);
  }
}
