package motebook.journal;

import java.util.Locale;

/**
 * What a change did, to what, and in words.
 *
 * @param act what was done
 * @param subject to what sort of thing
 * @param target which one: its number, or its name where it goes by that; empty where it has none
 *     yet, as what is being logged, where the act is about several, or where there is only one
 * @param words a sentence without its full stop
 */
public record Deed(Act act, Subject subject, String target, String words) {
  /** What was done. */
  public enum Act {
    ADDED,
    CHANGED,
    REMOVED;

    /** The word it is stored with. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** To what sort of thing. */
  public enum Subject {
    SESSION,
    STOPWATCH,
    FAVOURITE,
    RESPIRATOR,
    ELEMENT,
    SHOP_FILTER,
    UPKEEP,
    FIT_RECORD,
    FINISH,
    SAMPLE,
    PERSON,
    PLACE,
    SETTING,
    CAUTION,
    /** All of the book at once. */
    BOOK,
    /** Masks or filters whose sort the record does not tell. */
    GEAR;

    /** The word it is stored with. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  static Deed added(Subject subject, Object target, String words) {
    return new Deed(Act.ADDED, subject, target.toString(), words);
  }

  static Deed changed(Subject subject, Object target, String words) {
    return new Deed(Act.CHANGED, subject, target.toString(), words);
  }

  static Deed removed(Subject subject, Object target, String words) {
    return new Deed(Act.REMOVED, subject, target.toString(), words);
  }
}
