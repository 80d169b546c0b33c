package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import motebook.model.Action;

/**
 * One thing that is due.
 *
 * @param what in a few words
 * @param kind what sort of thing
 * @param whose a person or a place; empty where it is nobody's own
 * @param when the last day to do it, or the day it ran out or is foreseen to
 * @param state how it stands to today
 * @param why the reason
 * @param settle what settles it
 * @param workingDaysLeft until then at the shop's own pace, where the work moves it
 */
public record DueItem(
    String what,
    Kind kind,
    String whose,
    LocalDate when,
    State state,
    String why,
    Action settle,
    OptionalDouble workingDaysLeft) {

  /** Most urgent first, then by day. */
  static final Comparator<DueItem> BY_URGENCY =
      Comparator.comparing(DueItem::state)
          .thenComparing(DueItem::when)
          .thenComparing(DueItem::what)
          .thenComparing(DueItem::whose);

  /** The sorts of things that come due. */
  public enum Kind {
    FIT_TEST,
    MEDICAL,
    TRAINING,
    ELEMENT,
    SPARE,
    CLEANING,
    REPLACING,
    EMPTYING,
    GAUGE,
    EXAMINATION;

    /** The word for it, as JSON has it. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** How a thing stands to today. */
  public enum State {
    OVERDUE,
    DUE,
    SOON,
    /** Has a date, and that is far off: for a calendar, not for the list. */
    LATER;

    /** The word for it, as JSON has it. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Whether it is due or overdue. */
  public boolean pressing() {
    return state == State.OVERDUE || state == State.DUE;
  }
}
