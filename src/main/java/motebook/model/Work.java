package motebook.model;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * One stretch of work as a person says it; not yet in a book.
 *
 * @param person name of who worked
 * @param place name of where
 * @param date the local date
 * @param start local time of day, whole minutes
 * @param minutes 1 to 960; the work ends on the same date, midnight at the latest
 * @param operation key of the operation
 * @param material key of the material, if one was named
 * @param controls keys of the controls in the order said, none twice
 * @param mask the respirator worn, if any
 * @param amounts how much of which finishes was used, in the order said, none twice
 * @param note free text, cleaned, possibly empty
 */
public record Work(
    String person,
    String place,
    LocalDate date,
    LocalTime start,
    int minutes,
    String operation,
    Optional<String> material,
    List<String> controls,
    Optional<MaskUse> mask,
    List<Amount> amounts,
    String note) {

  /** The longest session that is believed, 16 h. */
  public static final int LONGEST_MINUTES = 16 * 60;

  private static final int MINUTES_A_DAY = 24 * 60;

  public Work {
    controls = List.copyOf(controls);
    amounts = List.copyOf(amounts);
    note = Text.note(note);
    if (minutes < 1) {
      throw new Refusal("A session lasts at least one minute: got " + minutes + ".");
    }
    if (minutes > LONGEST_MINUTES) {
      throw new Refusal(
          "A session lasts up to 16 hours: got " + minutes + " minutes. Log the work in parts.");
    }
    Checks.believable(date);
    if (new HashSet<>(controls).size() < controls.size()) {
      throw new Refusal("A control is named twice; name each once.");
    }
    if (amounts.stream().map(Amount::finish).distinct().count() < amounts.size()) {
      throw new Refusal("A finish is named twice; add the amounts and name it once.");
    }
    start = start.withSecond(0).withNano(0);
    if (start.getHour() * 60 + start.getMinute() + minutes > MINUTES_A_DAY) {
      throw new Refusal("The session would run past midnight; log it as two, one for each date.");
    }
  }

  /** Work at which no finish was used. */
  public Work(
      String person,
      String place,
      LocalDate date,
      LocalTime start,
      int minutes,
      String operation,
      Optional<String> material,
      List<String> controls,
      Optional<MaskUse> mask,
      String note) {
    this(person, place, date, start, minutes, operation, material, controls, mask, List.of(), note);
  }

  /** The same work with other amounts of finishes. */
  public Work using(List<Amount> others) {
    return new Work(
        person, place, date, start, minutes, operation, material, controls, mask, others, note);
  }

  /** The same work with other controls. */
  public Work with(List<String> others) {
    return new Work(
        person, place, date, start, minutes, operation, material, others, mask, amounts, note);
  }

  /** The same work in another place. */
  public Work in(String other) {
    return new Work(
        person, other, date, start, minutes, operation, material, controls, mask, amounts, note);
  }

  /** The same work at another time. */
  public Work at(LocalDate otherDate, LocalTime otherStart) {
    return new Work(
        person,
        place,
        otherDate,
        otherStart,
        minutes,
        operation,
        material,
        controls,
        mask,
        amounts,
        note);
  }

  /** The same work for another time. */
  public Work lasting(int other) {
    return new Work(
        person, place, date, start, other, operation, material, controls, mask, amounts, note);
  }

  /** The same work with another word on the respirator. */
  public Work withMask(MaskUse use) {
    return new Work(
        person,
        place,
        date,
        start,
        minutes,
        operation,
        material,
        controls,
        Optional.of(use),
        amounts,
        note);
  }

  /** First minute of the day, 0 to 1439. */
  public int startMinute() {
    return start.getHour() * 60 + start.getMinute();
  }

  /** The minute of the day after the last one worked, 1 to 1440. */
  public int endMinute() {
    return startMinute() + minutes;
  }

  /** Whether both stretches have a minute in common on the same date. */
  public boolean overlaps(Work other) {
    return date.equals(other.date)
        && startMinute() < other.endMinute()
        && other.startMinute() < endMinute();
  }
}
