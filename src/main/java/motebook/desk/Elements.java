package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.ElementClass;
import motebook.reference.Hazard;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;

/** Whether the elements on a mask hold what is in the air, and by which row they are rated. */
final class Elements {
  private static final String GAS = "gas";

  private final Gear gear;
  private final Respirator mask;
  private final Session session;
  private final Work work;
  private final List<ElementStanding> on;
  private final Masks masks;
  private final Set<String> lacking = new LinkedHashSet<>();

  Elements(Gear gear, Respirator mask, Session session, List<ElementStanding> on, Masks masks) {
    this.gear = gear;
    this.masks = masks;
    this.mask = mask;
    this.session = session;
    this.work = session.work();
    this.on = on;
  }

  /** What speaks against counting on the elements for one thing in the air. */
  List<Objection> against(Hazard hazard) {
    if (hazard.suppliedAirOnly()) {
      return List.of(
          Objection.mendable(
              "needs supplied air", withoutStop(hazard.advice()), throughAnAirLine()));
    }
    List<ElementStanding> holding =
        on.stream().filter(this::ofScheme).filter(e -> hazard.heldBy(e.elementClass())).toList();
    return holding.isEmpty()
        ? List.of(missing(hazard))
        : holding.stream().flatMap(one -> over(one).stream()).toList();
  }

  /** What mends that no element holds it: one that brings its own air, first of the book's. */
  String throughAnAirLine() {
    return gear.respirators().stream()
        .filter(one -> one.retired().isEmpty() && suppliesAir(one))
        .findFirst()
        .map(one -> Settle.ifWorn(session.id(), one.name()))
        .orElseGet(
            () -> "If supplied air was worn, or will be, add it: " + Settle.addSuppliedAir(gear));
  }

  private boolean suppliesAir(Respirator one) {
    return masks.factors(one.scheme().key(), one.kind(), one.facepiece()).stream()
        .anyMatch(ProtectionFactor::suppliedAir);
  }

  private boolean ofScheme(ElementStanding one) {
    return one.elementClass().schemes().contains(mask.scheme().key());
  }

  private Objection missing(Hazard hazard) {
    lacking.add(wanted(hazard));
    return Objection.mendable(
        on.isEmpty() ? "no element" : "wrong element",
        lack(hazard),
        "If one was on it, say so: "
            + Settle.addElement(gear, mask.name(), wanted(hazard), work.date())
            + Settle.until(next(hazard)));
  }

  // When one that holds it was put on later: what is told for before that ends there.
  private Optional<LocalDate> next(Hazard hazard) {
    return gear.elementsOf(mask.name()).stream()
        .filter(one -> one.opened().isPresent() && one.from().isAfter(work.date()))
        .filter(one -> masks.elementClass(one.elementClass()).filter(hazard::heldBy).isPresent())
        .map(Element::from)
        .min(Comparator.naturalOrder());
  }

  private String lack(Hazard hazard) {
    if (on.isEmpty()) {
      return "No element is on record on " + mask.name() + " on " + work.date();
    }
    return on.stream().anyMatch(one -> !ofScheme(one) && hazard.heldBy(one.elementClass()))
        ? classes() + " on " + mask.name() + " is no class of the scheme " + mask.scheme().key()
        : withoutStop(hazard.advice()) + "; on " + mask.name() + " was " + classes();
  }

  private String wanted(Hazard hazard) {
    if (hazard.kind() != Hazard.Kind.DUST) {
      return hazard.key().equals("solvent-vapour") ? "organic vapour" : hazard.name();
    }
    return usual(mask, masks);
  }

  /** The class that a mask is usually worn with against dust. */
  static String usual(Respirator mask, Masks masks) {
    if (mask.scheme() == Scheme.OSHA) {
      return "P100";
    }
    List<ProtectionFactor> rows = masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece());
    // the rated ones stand from the coarsest to the finest, those with a gas element last
    return rows.stream()
        .map(ProtectionFactor::rating)
        .filter(rating -> !rating.startsWith(GAS))
        .reduce((coarser, finer) -> finer)
        .orElse("P3");
  }

  private String classes() {
    return on.stream().map(one -> one.elementClass().name()).collect(Collectors.joining(" and "));
  }

  private Optional<Objection> over(ElementStanding one) {
    return one.clocks().stream()
        .filter(clock -> clock.ranOut().filter(this::cameBefore).isPresent())
        .findFirst()
        .map(
            clock ->
                Objection.mendable(
                    "element at its end",
                    one.element().name()
                        + " came to its end on "
                        + clock.ranOut().orElseThrow().date()
                        + ": "
                        + Clocks.ended(clock),
                    mend(one, clock)));
  }

  // What ran out earlier on the same day is changed between the two; that work stays with it.
  private String mend(ElementStanding one, CareClock clock) {
    String name = one.element().name();
    boolean sameDay = clock.ranOut().orElseThrow().date().equals(work.date());
    String change =
        sameDay && clock.kind() != CareClock.Kind.SHELF
            ? Settle.change(name, work.date(), work.startMinute())
            : Settle.change(name, work.date());
    return "If it was changed by then, say so: "
        + change
        + (clock.kind() == CareClock.Kind.SHIFT
            ? ". If a fresh one is taken each day, add --single-use to that"
            : "");
  }

  private boolean cameBefore(CareClock.RanOut end) {
    return end.before(work.date(), work.startMinute());
  }

  /** The row that the elements are rated by, those that are missing among them; if there is one. */
  Optional<ProtectionFactor> row(List<ProtectionFactor> rows) {
    Set<String> ratings = ratings();
    return rows.stream()
        .filter(row -> row.rating().isEmpty() || ratings.contains(row.rating()))
        .min(Comparator.comparingDouble(ProtectionFactor::apf));
  }

  // A gas element beside a particulate one lowers the factor: the two are one rating.
  private Set<String> ratings() {
    List<ElementClass> all = new ArrayList<>(on.stream().map(e -> e.elementClass()).toList());
    lacking.forEach(name -> masks.elementClass(name).ifPresent(all::add));
    boolean gas = all.stream().anyMatch(ElementClass::gas);
    boolean dust = all.stream().anyMatch(ElementClass::particulate);
    return all.stream()
        .filter(kind -> !(gas && dust && kind.rating().equals(GAS)))
        .map(kind -> gas && !kind.gas() ? GAS + " and " + kind.rating() : kind.rating())
        .collect(Collectors.toSet());
  }

  Objection notAllowed() {
    return Objection.lasting(
        "not allowed",
        "The factors of the scheme "
            + mask.scheme().key()
            + " have none for "
            + mask.kind()
            + " with "
            + mask.facepiece()
            + ": it is not allowed");
  }

  Objection notRated(List<ProtectionFactor> rows) {
    lacking.add(usual(mask, masks));
    return Objection.mendable(
        "wrong element",
        "The factors for "
            + mask.facepiece()
            + " have none for "
            + classes()
            + ", only for "
            + rows.stream().map(ProtectionFactor::rating).collect(Collectors.joining(", ")),
        "If another was on it, say so: "
            + Settle.addElement(gear, mask.name(), usual(mask, masks), work.date()));
  }

  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
