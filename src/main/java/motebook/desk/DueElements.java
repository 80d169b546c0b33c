package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.DueItem.Kind;
import motebook.desk.DueItem.State;
import motebook.model.Action;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.Masks;

/** What is due of the elements of the masks, those on them and the spares. */
final class DueElements {
  private final Gear gear;
  private final Masks masks;
  private final Care care;
  private final LocalDate today;

  DueElements(Gear gear, Masks masks, Care care) {
    this.gear = gear;
    this.masks = masks;
    this.care = care;
    this.today = care.today();
  }

  List<DueItem> items() {
    List<DueItem> items = new ArrayList<>();
    for (Element element : gear.elements()) {
      boolean kept =
          gear.respirator(element.respirator()).filter(m -> m.inUseOn(today)).isPresent();
      boolean lasting = !element.singleUse() || element.opened().isEmpty();
      if (kept && lasting && element.retired().isEmpty()) {
        item(element).ifPresent(items::add);
      }
    }
    gear.respirators().forEach(mask -> bare(mask).ifPresent(items::add));
    return items;
  }

  private Optional<DueItem> item(Element element) {
    Optional<CareClock> first = care.standing(element).first();
    return first.flatMap(clock -> care.state(clock).map(state -> item(element, clock, state)));
  }

  private DueItem item(Element element, CareClock clock, State state) {
    boolean spare = element.opened().isEmpty();
    return new DueItem(
        element.name() + " on " + element.respirator(),
        spare ? Kind.SPARE : Kind.ELEMENT,
        people(element),
        clock.ends().orElse(today),
        state,
        why(clock),
        next(element, today),
        clock.workingDaysLeft());
  }

  /** What a yes does to an element: a fresh one in its place, a spare thrown away. */
  static Action next(Element element, LocalDate today) {
    return element.opened().isEmpty()
        ? new Action.DiscardSpare(element.name())
        : new Action.ChangeElement(element.name(), today, 0, false);
  }

  static String why(CareClock clock) {
    String forecast = Clocks.forecast(clock);
    return Clocks.ended(clock) + (forecast.isEmpty() ? "" : ", " + forecast);
  }

  private String people(Element element) {
    return gear.respirator(element.respirator())
        .map(mask -> String.join(", ", mask.people()))
        .orElse("");
  }

  /** A mask that is worn without an element on record. */
  private Optional<DueItem> bare(Respirator mask) {
    boolean needs =
        masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece()).stream()
            .anyMatch(row -> !row.suppliedAir());
    if (!needs
        || !mask.inUseOn(today)
        || !gear.elementsOn(mask.name(), today).isEmpty()
        || care.wearers(mask.name()).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DueItem(
            "element for " + mask.name(),
            Kind.ELEMENT,
            String.join(", ", mask.people()),
            today,
            State.DUE,
            "It is worn, and no element is on record on it",
            Suggested.element(
                gear, mask.name(), Suggested.dustClass(mask, masks), today, Optional.empty()),
            OptionalDouble.empty()));
  }
}
