package motebook.journal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import motebook.journal.Deed.Subject;
import motebook.model.Action;
import motebook.model.Element;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.ShopFilter;
import motebook.model.Upkeep;
import motebook.reference.Masks;

/**
 * Where masks and filters hang: what is added there, opened, changed and looked after. Each method
 * makes one change, and undo takes it back.
 */
public final class Rack {
  private final GearTables tables;
  private final Changes changes;
  private final People people;
  private final Places places;
  private final Today today;

  Rack(GearTables tables, Changes changes, People people, Places places, Today today) {
    this.tables = tables;
    this.changes = changes;
    this.people = people;
    this.places = places;
    this.today = today;
  }

  /** Every respirator's name, those in use first: a line on a past day may name a retired one. */
  public List<String> respiratorNames() {
    return tables.respirators().all().stream()
        .sorted(Comparator.comparing(one -> one.retired().isPresent()))
        .map(Respirator::name)
        .toList();
  }

  /**
   * The respirator of that name, in use.
   *
   * @throws Refusal if there is none, or it was retired
   */
  public Respirator respirator(String name) {
    return tables.names().respirator(name);
  }

  /** The same where it was in use on a day, though it may have been retired since. */
  public Respirator respirator(String name, LocalDate day) {
    return tables.names().respirator(name, day);
  }

  /** The shop filter of that name, in use; refuses likewise. */
  public ShopFilter filter(String name) {
    return tables.names().filter(name);
  }

  /**
   * Adds a respirator.
   *
   * @throws Refusal if the name is taken, or somebody it is for is not in the book
   */
  public Respirator add(Respirator respirator) {
    return changes.make(
        Deed.added(
            Subject.RESPIRATOR, respirator.name(), "Added the respirator " + respirator.name()),
        () -> {
          tables.names().requireFresh(respirator.name());
          List<Long> owners = people.known().idsOf(respirator.people());
          tables.respirators().insert(respirator, owners);
          return tables.names().respirator(respirator.name());
        });
  }

  /**
   * Gives a respirator to some people, and to no others; to anybody where none is named.
   *
   * @throws Refusal if it is unknown or retired, or somebody is not in the book
   */
  public Respirator give(String name, List<String> people) {
    String whom = people.isEmpty() ? "anybody" : String.join(" and ", people);
    return changes.make(
        Deed.changed(Subject.RESPIRATOR, name, "Gave " + name + " to " + whom),
        () -> {
          Respirator given = tables.names().respirator(name);
          tables.respirators().give(given, this.people.known().idsOf(people));
          return tables.names().respirator(name);
        });
  }

  /**
   * Adds an element to a respirator.
   *
   * @throws Refusal if the name is taken, the respirator is unknown or retired, or a day that must
   *     have come is still to come
   */
  public Element add(Element element) {
    element.opened().ifPresent(day -> today.requireCome(day, "opened"));
    today.requireCome(element.from(), "put to use");
    element.retired().ifPresent(end -> today.requireCome(end.on(), "changed"));
    return changes.make(
        Deed.added(
            Subject.ELEMENT,
            element.name(),
            "Added the element %s to %s".formatted(element.name(), element.respirator())),
        () -> {
          Respirator respirator = tables.names().respirator(element.respirator(), element.from());
          Masks.shipped().requireHeldBy(respirator, element.elementClass());
          tables.names().requireFresh(element.name());
          Element told =
              element.retired().isPresent()
                  ? element
                  : respirator
                      .retired()
                      .map(Retirement::withIt)
                      .map(element::retired)
                      .orElse(element);
          long id = tables.respirators().insert(told, respirator.id());
          return tables.names().withNumber(id);
        });
  }

  /**
   * Opens a sealed element, which is on the mask from then on.
   *
   * @throws Refusal if none in use has the name, it is open already, or the day is still to come
   */
  public Element open(String name, LocalDate on) {
    today.requireCome(on, "opened");
    return changes.make(
        Deed.changed(Subject.ELEMENT, name, "Opened " + name + " on " + on),
        () -> {
          Element sealed = tables.names().element(name);
          sealed.opened().ifPresent(day -> refuseOpen(sealed, day));
          requireHeld(sealed);
          tables.respirators().open(sealed.opened(on), on);
          return tables.names().element(name);
        });
  }

  private void requireHeld(Element element) {
    tables
        .names()
        .gear()
        .respirator(element.respirator())
        .ifPresent(mask -> Masks.shipped().requireHeldBy(mask, element.elementClass()));
  }

  private static void refuseOpen(Element element, LocalDate since) {
    throw new Refusal("\"%s\" is open since %s already.".formatted(element.name(), since));
  }

  /**
   * Takes an element off and puts a fresh one of the same kind in its place, under its name.
   *
   * @return the fresh one
   * @throws Refusal if none in use has the name, it is still sealed, or the day is before its
   *     opening or still to come
   */
  public Element change(String name, LocalDate on) {
    return change(name, on, 0, false);
  }

  /**
   * The same at a minute of the day; the work before it stays with the one that was taken off. One
   * that was forgotten goes in between: the fresh one is then worn until the next change on record.
   *
   * @param singleUse whether from then on a fresh one is taken each day
   */
  public Element change(String name, LocalDate on, int minute, boolean singleUse) {
    today.requireCome(on, minute, "changed");
    return changes.make(
        Deed.changed(Subject.ELEMENT, name, "Changed " + name + " on " + on),
        () -> {
          GearNames names = tables.names();
          Element worn =
              names.gear().elementAt(name, on, minute).orElseGet(() -> names.element(name));
          refuseSealed(worn);
          requireHeld(worn);
          Element gone = worn.retired(new Retirement(on, minute, Retirement.CHANGED));
          Element fresh = worn.heir(on, minute);
          tables.respirators().retire(gone, gone.retired().orElseThrow());
          long id =
              tables
                  .respirators()
                  .insert(singleUse ? fresh.forOneDay() : fresh, names.numberOf(worn.respirator()));
          return tables.names().withNumber(id);
        });
  }

  private static void refuseSealed(Element element) {
    if (element.opened().isEmpty()) {
      throw new Refusal(
          "\"%s\" is still sealed and on no mask.".formatted(element.name()),
          new Action.OpenElement(element.name()));
    }
  }

  /**
   * Adds a filter of the shop's own.
   *
   * @throws Refusal if the name is taken, the place is unknown, or its first day is still to come
   */
  public ShopFilter add(ShopFilter filter) {
    today.requireCome(filter.from(), "put to use");
    return changes.make(
        Deed.added(Subject.SHOP_FILTER, filter.name(), "Added the filter " + filter.name()),
        () -> {
          tables.names().requireFresh(filter.name());
          tables.filters().insert(filter, places.known().idOf(filter.place()));
          return tables.names().filter(filter.name());
        });
  }

  /**
   * Writes down what was done to a filter of the shop.
   *
   * @throws Refusal if none in use has the name, or the day is before it was put to use or still to
   *     come
   */
  public void note(Upkeep upkeep) {
    today.requireCome(upkeep.date(), "done to a filter");
    changes.make(
        Deed.added(
            Subject.UPKEEP,
            upkeep.filter(),
            "Wrote down for the filter %s on %s: %s"
                .formatted(upkeep.filter(), upkeep.date(), upkeep.what().key())),
        () -> {
          ShopFilter filter = tables.names().filter(upkeep.filter());
          refuseEarly(upkeep, filter);
          tables.filters().insert(upkeep, filter.id());
        });
  }

  private static void refuseEarly(Upkeep upkeep, ShopFilter filter) {
    if (upkeep.date().isBefore(filter.from())) {
      throw new Refusal(
          ("\"%s\" was put to use on %s, so nothing was done to it on %s. Give that day"
                  + " or a later one.")
              .formatted(filter.name(), filter.from(), upkeep.date()));
    }
  }
}
