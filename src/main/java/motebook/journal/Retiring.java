package motebook.journal;

import java.time.LocalDate;
import java.util.Optional;
import motebook.journal.Changes.Decided;
import motebook.journal.Deed.Subject;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.ShopFilter;

/** How masks and filters go: retired, or deleted while nothing refers to them. */
public final class Retiring {
  private static final String DELETED = "deleted";

  private final GearTables tables;
  private final Changes changes;
  private final Today today;

  Retiring(GearTables tables, Changes changes, Today today) {
    this.tables = tables;
    this.changes = changes;
    this.today = today;
  }

  /**
   * Retires whatever in use has the name; a respirator with its elements.
   *
   * @throws Refusal if nothing has it, it is retired already, or the day is before its first or
   *     still to come, or a session wore it later
   */
  public void retire(String name, Retirement end) {
    today.requireCome(end.on(), end.minute(), "retired");
    changes.make(
        Deed.changed(
            Subject.GEAR, name, "Retired %s on %s (%s)".formatted(name, end.on(), end.why())),
        () -> end(name, end));
  }

  private void end(String name, Retirement end) {
    GearNames names = tables.names();
    names.requireKnown(name);
    if (names.gear().element(name).isPresent()) {
      end(names.element(name), end);
    } else if (names.gear().respirator(name).isPresent()) {
      end(names.respirator(name), names.gear(), end);
    } else if (names.gear().filter(name).isPresent()) {
      end(names.filter(name), end);
    } else {
      names.element(name);
    }
  }

  private void end(Element element, Retirement end) {
    tables.respirators().retire(element.retired(end), end);
  }

  private void end(Respirator respirator, Gear gear, Retirement end) {
    tables
        .respirators()
        .wornAfter(respirator, end.on())
        .ifPresent(day -> refuseWorn(respirator, day));
    tables.respirators().retire(respirator, end);
    gear.elementsOf(respirator.name()).stream()
        .filter(element -> element.retired().isEmpty())
        .forEach(element -> end(element, end.withIt()));
  }

  private static void refuseWorn(Respirator respirator, LocalDate day) {
    throw new Refusal(
        "\"%s\" was worn on %s. Give that day or a later one.".formatted(respirator.name(), day));
  }

  private void end(ShopFilter filter, Retirement end) {
    tables.filters().retire(filter.retired(end), end);
  }

  /**
   * Deletes what was added by mistake. What sessions, elements, fit tests or upkeep refer to is
   * retired instead.
   *
   * @param on the day it is retired on, if it is
   * @return whether it was deleted; otherwise it was retired
   * @throws Refusal as {@link #retire}
   */
  public boolean delete(String name, LocalDate on) {
    today.requireCome(on, DELETED);
    return changes.make(
        () ->
            deletion(name)
                .map(
                    deletion ->
                        new Decided<>(
                            Deed.removed(Subject.GEAR, name, "Deleted " + name),
                            () -> done(deletion)))
                .orElseGet(
                    () ->
                        new Decided<>(
                            Deed.changed(Subject.GEAR, name, "Retired " + name),
                            () -> retired(name, on))));
  }

  private static boolean done(Runnable deletion) {
    deletion.run();
    return true;
  }

  private boolean retired(String name, LocalDate on) {
    end(name, new Retirement(on, DELETED));
    return false;
  }

  /** What deletes it; empty where something refers to it. */
  private Optional<Runnable> deletion(String name) {
    GearNames names = tables.names();
    Gear gear = names.gear();
    names.requireKnown(name);
    Optional<Element> element = gear.element(name);
    Optional<Respirator> respirator = gear.respirator(name);
    if (element.isPresent()) {
      return element.filter(this::unused).map(one -> () -> tables.respirators().delete(one));
    }
    if (respirator.isPresent()) {
      Respirator one = names.respirator(respirator.get().name());
      return unused(one, gear)
          ? Optional.of(() -> tables.respirators().delete(one))
          : Optional.empty();
    }
    return gear.filter(name)
        .filter(filter -> unused(filter, gear))
        .map(filter -> () -> tables.filters().delete(filter));
  }

  private boolean unused(Element element) {
    return !tables.respirators().isInSessions(element);
  }

  private boolean unused(Respirator respirator, Gear gear) {
    return !tables.respirators().isInSessions(respirator)
        && gear.elementsOf(respirator.name()).isEmpty()
        && gear.fitTestsOf(respirator.name()).isEmpty();
  }

  private boolean unused(ShopFilter filter, Gear gear) {
    return filter.retired().isEmpty()
        && gear.upkeepOf(filter.name()).isEmpty()
        && !tables.filters().isInSessions(filter);
  }
}
