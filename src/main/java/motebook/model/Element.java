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
 * @param fromMinute minute of the first day from which it was on the mask; 0 for all of the day
 * @param singleUse whether it stands for a fresh one on each day, thrown away at its end
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
    Optional<Retirement> retired,
    int fromMinute,
    boolean singleUse) {
  public Element {
    name = Names.check("element", name);
    respirator = Names.check("respirator", respirator);
    elementClass = Checks.key("class of an element", elementClass);
    Checks.believable(from);
    Checks.minute(fromMinute);
    opened.ifPresent(Checks::believable);
    sealedUntil.ifPresent(Checks::believable);
    limitHours.ifPresent(hours -> Checks.aboveZero("limit of hours worn", hours, 1e5, "h"));
    limitMg.ifPresent(mg -> Checks.aboveZero("limit of the dust load", mg, 1e6, "mg"));
    carbonGrams.ifPresent(grams -> Checks.aboveZero("carbon", grams, 1e5, "g"));
    requireOpenedFirst(name, opened, from);
    requireRetiredLast(name, opened, from, retired);
    requireLater(name, from, fromMinute, retired);
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

  /** One that has a whole first day and is used until it is changed. */
  public Element(
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
    this(
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
        retired,
        0,
        false);
  }

  private static void requireLater(
      String name, LocalDate from, int fromMinute, Optional<Retirement> retired) {
    if (retired.filter(end -> end.on().equals(from) && end.minute() < fromMinute).isPresent()) {
      throw new Refusal(
          "\"%s\" was put on at %s on %s, so it cannot be taken off before that."
              .formatted(name, MinuteOfDay.told(fromMinute), from));
    }
  }

  /**
   * Whether it is on the mask at a minute of a day. From the minute it was retired it no longer
   * counts: that belongs to what came in its place, so that no work loads two.
   */
  public boolean wornAt(LocalDate day, int minute) {
    return opened.isPresent()
        && (day.isAfter(from) || (day.equals(from) && minute >= fromMinute))
        && retired
            .map(e -> day.isBefore(e.on()) || (day.equals(e.on()) && minute < e.minute()))
            .orElse(true);
  }

  /** Whether it is on the mask as a day ends. */
  public boolean wornOn(LocalDate day) {
    return wornAt(day, 24 * 60);
  }

  /** Whether it lies in its sealed package on a day. */
  public boolean sealedOn(LocalDate day) {
    return opened.map(day::isBefore).orElse(true)
        && retired.map(end -> day.isBefore(end.on())).orElse(true);
  }

  /** The same, taken off. */
  public Element retired(Retirement end) {
    return with(id, from, fromMinute, opened, sealedUntil, Optional.of(end), singleUse);
  }

  /** A sealed one, opened and put on the mask. */
  public Element opened(LocalDate on) {
    return with(id, on, 0, Optional.of(on), sealedUntil, retired, singleUse);
  }

  /** The same, and a fresh one of it each day. */
  public Element forOneDay() {
    return with(id, from, fromMinute, opened, sealedUntil, retired, true);
  }

  /** A fresh one of the same kind, opened and put on the mask on a day; its shelf is not known. */
  public Element successor(LocalDate on) {
    return successor(on, 0);
  }

  /** The same from a minute of the day on. */
  public Element successor(LocalDate on, int minute) {
    return with(0, on, minute, Optional.of(on), Optional.empty(), Optional.empty(), singleUse);
  }

  /**
   * The fresh one that takes its place at a minute of a day; where another took it later, it was on
   * the mask until then.
   */
  public Element heir(LocalDate on, int minute) {
    Element next = successor(on, minute);
    return retired.map(next::retired).orElse(next);
  }

  /** The same under a number of the book. */
  public Element numbered(long number) {
    return with(number, from, fromMinute, opened, sealedUntil, retired, singleUse);
  }

  private Element with(
      long number,
      LocalDate first,
      int minute,
      Optional<LocalDate> unpacked,
      Optional<LocalDate> shelf,
      Optional<Retirement> end,
      boolean oneDay) {
    return new Element(
        number,
        name,
        respirator,
        elementClass,
        pair,
        first,
        unpacked,
        shelf,
        limitHours,
        limitMg,
        carbonGrams,
        end,
        minute,
        oneDay);
  }
}
