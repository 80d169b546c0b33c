package motebook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A filter or cartridge of a respirator, or a pair of the same changed together.
 *
 * <p>One that was not opened is a spare in its sealed package and is on no mask. A changed element
 * keeps its name for its successor, so a name belongs to one element in use and to any number of
 * retired ones.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique among the gear in use, whatever the case
 * @param respirator name of the respirator it is for
 * @param elementClass key of its class, such as "p100", "ffp3", "organic-vapour"
 * @param pair whether two are worn side by side and share the load
 * @param from first day on the mask, or since when the spare is kept
 * @param opened when its package was opened; empty while it is sealed
 * @param sealedUntil last day of its shelf life while sealed, if it was said
 * @param limitHours hours worn after which the owner changes it, if set; above 0
 * @param limitMg dust load after which the owner changes it, mg, if set; above 0
 * @param carbonGrams carbon it holds altogether, g, if known; above 0
 * @param retired when and why it was taken off, if it was
 */
public record Element(
    long id,
    String name,
    String respirator,
    String elementClass,
    boolean pair,
    LocalDate from,
    Optional<LocalDate> opened,
    Optional<LocalDate> sealedUntil,
    OptionalDouble limitHours,
    OptionalDouble limitMg,
    OptionalDouble carbonGrams,
    Optional<Retirement> retired) {
  public Element {
    name = Names.check("element", name);
    respirator = Names.check("respirator", respirator);
    elementClass = Checks.key("class of an element", elementClass);
    Checks.believable(from);
    opened.ifPresent(Checks::believable);
    sealedUntil.ifPresent(Checks::believable);
    limitHours.ifPresent(hours -> Checks.aboveZero("limit of hours worn", hours, 1e5, "h"));
    limitMg.ifPresent(mg -> Checks.aboveZero("limit of the dust load", mg, 1e6, "mg"));
    carbonGrams.ifPresent(grams -> Checks.aboveZero("carbon", grams, 1e5, "g"));
    requireOpenedFirst(name, opened, from);
    requireRetiredLast(name, opened, from, retired);
  }

  private static void requireOpenedFirst(String name, Optional<LocalDate> opened, LocalDate from) {
    if (opened.isPresent() && opened.get().isAfter(from)) {
      throw new Refusal(
          ("\"%s\" was opened on %s and cannot have been on the mask from %s. Give that day"
                  + " or a later one.")
              .formatted(name, opened.get(), from));
    }
  }

  private static void requireRetiredLast(
      String name, Optional<LocalDate> opened, LocalDate from, Optional<Retirement> retired) {
    retired.ifPresent(
        end -> {
          opened.ifPresent(day -> end.requireFrom(name, day, "opened"));
          end.requireFrom(name, from, "put to use");
        });
  }

  /**
   * Whether it is on the mask on a day. The day it was retired no longer counts: that day belongs
   * to what came in its place, so that no day loads two.
   */
  public boolean wornOn(LocalDate day) {
    return opened.isPresent() && !day.isBefore(from) && isKeptOn(day);
  }

  /** Whether it lies in its sealed package on a day. */
  public boolean sealedOn(LocalDate day) {
    return opened.map(day::isBefore).orElse(true) && isKeptOn(day);
  }

  private boolean isKeptOn(LocalDate day) {
    return retired.map(end -> day.isBefore(end.on())).orElse(true);
  }

  /** The same, taken off. */
  public Element retired(Retirement end) {
    return new Element(
        id,
        name,
        respirator,
        elementClass,
        pair,
        from,
        opened,
        sealedUntil,
        limitHours,
        limitMg,
        carbonGrams,
        Optional.of(end));
  }

  /** A sealed one, opened and put on the mask. */
  public Element opened(LocalDate on) {
    return new Element(
        id,
        name,
        respirator,
        elementClass,
        pair,
        on,
        Optional.of(on),
        sealedUntil,
        limitHours,
        limitMg,
        carbonGrams,
        retired);
  }

  /** A fresh one of the same kind, opened and put on the mask on a day; its shelf is not known. */
  public Element successor(LocalDate on) {
    return new Element(
        0,
        name,
        respirator,
        elementClass,
        pair,
        on,
        Optional.of(on),
        Optional.empty(),
        limitHours,
        limitMg,
        carbonGrams,
        Optional.empty());
  }
}
