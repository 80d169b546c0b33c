package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.entry.Quantities;
import motebook.journal.Settings;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * One thing that the owner may choose, as it is listed and set.
 *
 * @param key the word that it is set by
 * @param unit the unit of its value, empty where it has none
 * @param what it is, in a few words
 * @param basis why it is as shipped, and what bounds it; empty where nothing does
 * @param allowed what may be said
 * @param offered the words to choose among; none where it is not a matter of choosing
 * @param shipped the value that counts unless the owner chooses; empty for names of the book
 * @param form what its value is
 * @param access how it is read and written
 */
public record Choice(
    String key,
    String unit,
    String what,
    String basis,
    String allowed,
    List<String> offered,
    Optional<String> shipped,
    Form form,
    Access access) {

  /** What a value is. */
  enum Form {
    WORD,
    WORDS,
    NUMBER
  }

  /** What is said for none of several words. */
  public static final String NONE = "none";

  /** How a choice is read from the settings and written into them. */
  interface Access {
    /** The value in words, as {@link #write} takes it. */
    String read(Settings settings);

    /**
     * The settings with another value.
     *
     * @throws Refusal if it is not allowed; whether the book knows a name only the book can tell
     */
    Settings write(Settings settings, String value);
  }

  /** Whether its value is a number. */
  public boolean number() {
    return form == Form.NUMBER;
  }

  /** Whether its value is any number of words, with commas between them. */
  public boolean several() {
    return form == Form.WORDS;
  }

  /** The value that counts, without its unit. */
  public String value(Settings settings) {
    return access.read(settings);
  }

  /** The value that counts, with its unit. */
  public String told(Settings settings) {
    return withUnit(value(settings));
  }

  /** A value of it with its unit. */
  public String withUnit(String value) {
    return unit.isEmpty() ? value : value + " " + unit;
  }

  /** Whether the owner chose otherwise than is shipped; a name of the book is nothing else. */
  public boolean changed(Settings settings) {
    return shipped.filter(value -> !value.equals(value(settings))).isPresent();
  }

  /**
   * The settings with another value for this.
   *
   * @param said with or without the unit
   * @throws Refusal if it is not allowed
   */
  public Settings set(Settings settings, String said) {
    String clean = Text.clean(said);
    String bare =
        !unit.isEmpty() && Text.folded(clean).endsWith(unit)
            ? clean.substring(0, clean.length() - unit.length()).strip()
            : clean;
    return access.write(settings, bare);
  }

  /** A number that was said for it; refuses what is none. */
  static double number(String key, String said) {
    return Quantities.plain("The " + key, said);
  }

  /** A whole number that was said for it; refuses what is none. */
  static int whole(String key, String said) {
    double value = number(key, said);
    if (value != Math.rint(value) || value > Integer.MAX_VALUE) {
      throw new Refusal("The " + key + " is a whole number: got " + said + ".");
    }
    return (int) value;
  }
}
