package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import motebook.model.Action;
import motebook.model.Action.AddFinish;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.WearInSession;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.ElementClass;
import motebook.reference.Finish;
import motebook.reference.Hazard;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.Reference;
import motebook.reference.Solvents;

/** Whether the elements on a mask hold what is in the air, and by which row they are rated. */
final class Elements {
  private static final String GAS = "gas";

  private final Gear gear;
  private final Respirator mask;
  private final Session session;
  private final Work work;
  private final List<ElementStanding> on;
  private final Masks masks;

  Elements(Gear gear, Respirator mask, Session session, List<ElementStanding> on, Masks masks) {
    this.gear = gear;
    this.masks = masks;
    this.mask = mask;
    this.session = session;
    this.work = session.work();
    this.on = on;
  }

  /**
   * What speaks against counting on the elements for one thing in the air.
   *
   * @param finishes what gives off the vapour
   */
  List<Objection> against(Hazard hazard, List<Finish> finishes) {
    if (hazard.suppliedAirOnly()) {
      return List.of(suppliedAirOnly(hazard, finishes));
    }
    if (hazard.kind() != Hazard.Kind.DUST && masks.particlesOnly(mask)) {
      return List.of(particlesOnly(hazard));
    }
    List<ElementStanding> holding =
        on.stream().filter(this::ofScheme).filter(e -> hazard.heldBy(e.elementClass())).toList();
    return holding.isEmpty()
        ? List.of(missing(hazard))
        : holding.stream().flatMap(one -> over(one, hazard).stream()).toList();
  }

  // A shipped finish stands for any of its kind: the sheet of the one that was used knows better.
  private Objection suppliedAirOnly(Hazard hazard, List<Finish> finishes) {
    List<Finish> holding = finishes.stream().filter(finish -> holds(finish, hazard)).toList();
    boolean generic = hazard.key().equals(Hazard.METHANOL) && !holding.isEmpty();
    if (!generic || holding.stream().anyMatch(Finish::own)) {
      return new Objection("needs supplied air", withoutStop(hazard.advice()), suppliedAir());
    }
    String name = holding.get(0).name();
    return new Objection(
        "may hold methanol",
        "The data sheet of the product itself decides whether there is methanol in its "
            + name
            + ", as is assumed here; no cartridge holds methanol",
        Optional.of(new AddFinish(name)),
        suppliedAir());
  }

  private static boolean holds(Finish finish, Hazard hazard) {
    return finish.solvents().keySet().stream()
        .flatMap(key -> Solvents.shipped().withKey(key).stream())
        .anyMatch(solvent -> hazard.solvents().contains(solvent.element()));
  }

  /** What brings its own air: those of the book, else one that is to be added. */
  List<Action> suppliedAir() {
    List<Action> owned = others(this::suppliesAir);
    return owned.isEmpty() ? List.of(Suggested.airLine(gear, mask.scheme(), masks)) : owned;
  }

  /** The other respirators of the book that may have been worn. */
  List<Action> others() {
    return others(any -> true);
  }

  private List<Action> others(Predicate<Respirator> which) {
    return gear.respirators().stream()
        .filter(one -> one.inUseOn(work.date()) && one.isFor(work.person()))
        .filter(one -> !one.name().equals(mask.name()) && which.test(one))
        .map(one -> (Action) new WearInSession(session.id(), one.name()))
        .toList();
  }

  private boolean suppliesAir(Respirator one) {
    return masks.factors(one).stream().anyMatch(ProtectionFactor::suppliedAir);
  }

  private boolean ofScheme(ElementStanding one) {
    return one.elementClass().schemes().contains(mask.scheme().key());
  }

  // 42 CFR 84.170 to 84.181 and EN 149 certify filtering facepieces for particles alone.
  private Objection particlesOnly(Hazard hazard) {
    String odd =
        on.stream()
            .filter(one -> one.elementClass().gas())
            .map(one -> ", whatever is printed on " + one.element().name())
            .collect(Collectors.joining());
    return new Objection(
        "holds particles only",
        mask.name()
            + " is a filtering facepiece and holds particles only, not "
            + hazard.name()
            + odd
            + "; that takes a mask with a cartridge for it, or supplied air",
        others(one -> !masks.particlesOnly(one)));
  }

  private Objection missing(Hazard hazard) {
    return Objection.mendable(
        on.isEmpty() ? "no element" : "wrong element",
        lack(hazard),
        Suggested.element(gear, mask.name(), wanted(hazard), work.date(), next(hazard)));
  }

  // When one that holds it was put on later: what is told for before that ends there.
  private Optional<LocalDate> next(Hazard hazard) {
    return later(hazard).map(Element::from);
  }

  private Optional<Element> later(Hazard hazard) {
    return gear.elementsOf(mask.name()).stream()
        .filter(one -> one.opened().isPresent() && one.from().isAfter(work.date()))
        .filter(one -> masks.elementClass(one.elementClass()).filter(hazard::heldBy).isPresent())
        .min(Comparator.comparing(Element::from));
  }

  private String lack(Hazard hazard) {
    if (on.isEmpty()) {
      return "No element is on record on " + mask.name() + " on " + work.date();
    }
    return on.stream().anyMatch(one -> !ofScheme(one) && hazard.heldBy(one.elementClass()))
        ? classes() + " on " + mask.name() + " is no class of the scheme " + mask.scheme().key()
        : lackOf(hazard) + "; on " + mask.name() + " was " + classes();
  }

  // Where a finish is put on there is little dust, and mist where it is sprayed.
  private String lackOf(Hazard hazard) {
    return hazard.key().equals(Hazard.WOOD_DUST)
            && Reference.shipped().operation(work.operation()).finishes()
        ? "The mist of a sprayed finish and the dust in the air need a particulate filter (R or P)"
            + " besides the cartridge"
        : withoutStop(hazard.advice());
  }

  private String wanted(Hazard hazard) {
    if (hazard.kind() != Hazard.Kind.DUST) {
      return hazard.key().equals("solvent-vapour") ? "organic vapour" : hazard.name();
    }
    return later(hazard)
        .flatMap(one -> masks.elementClass(one.elementClass()))
        .map(ElementClass::name)
        .orElseGet(() -> Suggested.dustClass(mask, masks));
  }

  private String classes() {
    return on.stream().map(one -> one.elementClass().name()).collect(Collectors.joining(" and "));
  }

  private Optional<Objection> over(ElementStanding one, Hazard hazard) {
    return one.clocks().stream()
        .filter(clock -> hazard.kind() != Hazard.Kind.DUST || !ofGasAlone(clock, one))
        .filter(clock -> clock.ranOut().filter(this::cameBefore).isPresent())
        .findFirst()
        .map(
            clock ->
                Objection.mendable(
                    hazard.kind() == Hazard.Kind.DUST ? "filter used up" : "cartridge used up",
                    one.element().name()
                        + " was used up on "
                        + clock.ranOut().orElseThrow().date()
                        + ": "
                        + Clocks.ended(clock),
                    mend(one, clock)));
  }

  // What ends the sorbent of a combined element leaves its filter as it is.
  private static boolean ofGasAlone(CareClock clock, ElementStanding one) {
    return switch (clock.kind()) {
      case VAPOUR, OPENED -> true;
      case SHIFT -> one.elementClass().service() != ElementClass.Service.SHIFT;
      default -> false;
    };
  }

  // What ran out earlier on the same day is changed between the two; that work stays with it.
  private Action mend(ElementStanding one, CareClock clock) {
    boolean sameDay = clock.ranOut().orElseThrow().date().equals(work.date());
    return new ChangeElement(
        one.element().name(),
        work.date(),
        sameDay && clock.kind() != CareClock.Kind.SHELF ? work.startMinute() : 0,
        clock.kind() == CareClock.Kind.SHIFT);
  }

  private boolean cameBefore(CareClock.RanOut end) {
    return end.before(work.date(), work.startMinute());
  }

  /** The row that the elements are rated by; if there is one. */
  Optional<ProtectionFactor> row(List<ProtectionFactor> rows) {
    Set<String> ratings = ratings();
    return rows.stream()
        .filter(row -> row.rating().isEmpty() || ratings.contains(row.rating()))
        .min(Comparator.comparingDouble(ProtectionFactor::apf));
  }

  // A gas element beside a particulate one lowers the factor: the two are one rating.
  private Set<String> ratings() {
    boolean gas = on.stream().anyMatch(one -> one.elementClass().gas());
    boolean dust = on.stream().anyMatch(one -> one.elementClass().particulate());
    return on.stream()
        .map(ElementStanding::elementClass)
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
    return Objection.mendable(
        "wrong element",
        "The factors for "
            + mask.facepiece()
            + " have none for "
            + classes()
            + ", only for "
            + rows.stream().map(ProtectionFactor::rating).collect(Collectors.joining(", ")),
        Suggested.element(
            gear, mask.name(), Suggested.dustClass(mask, masks), work.date(), Optional.empty()));
  }

  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
