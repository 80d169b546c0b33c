package motebook.screen.state;

/**
 * A key that was pressed.
 *
 * @param name which kind of key
 * @param character the code point for {@link Name#CHARACTER} and {@link Name#CONTROL}, else 0
 */
public record Key(Name name, int character) {

  /** The kinds of keys that the screens tell apart. */
  public enum Name {
    CHARACTER,
    CONTROL,
    ENTER,
    ESCAPE,
    BACKSPACE,
    DELETE,
    TAB,
    BACK_TAB,
    UP,
    DOWN,
    LEFT,
    RIGHT,
    HOME,
    END,
    PAGE_UP,
    PAGE_DOWN,
    F1,
    F2,
    F3,
    F4,
    F5,
    F6,
    F7,
    F8,
    F9,
    CLOSED,
    OTHER
  }

  /** The key that types a character. */
  public static Key of(int character) {
    return new Key(Name.CHARACTER, character);
  }

  /** A key without a character. */
  public static Key of(Name name) {
    return new Key(name, 0);
  }

  /** A lower-case letter pressed together with the control key. */
  public static Key control(char letter) {
    return new Key(Name.CONTROL, letter);
  }

  /** Whether it types something. */
  public boolean types() {
    return name == Name.CHARACTER;
  }

  /** What it types; empty unless it types. */
  public String typed() {
    return types() ? Character.toString(character) : "";
  }
}
