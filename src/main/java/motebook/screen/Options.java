package motebook.screen;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import motebook.report.Invocation;
import motebook.screen.state.Look;
import motebook.screen.terminal.Palette;

/**
 * How the screens are drawn and where they open.
 *
 * @param palette the colours that are used
 * @param look the characters that are used
 * @param day the day that is shown first; today where none is given
 * @param plain whether changes are told in lines instead of drawn
 * @param terminal whether a terminal is read from and written to
 * @param usualBook the book that commands open where they name none, as far as it is known
 */
public record Options(
    Palette palette,
    Look look,
    Optional<LocalDate> day,
    boolean plain,
    boolean terminal,
    Optional<Path> usualBook) {

  /** When colours are used. */
  public enum Colour {
    AUTO,
    ALWAYS,
    NEVER
  }

  /** What the surroundings of the program call for. */
  public static Options from(Map<String, String> environment, Colour colour) {
    return new Options(
        palette(environment, colour),
        look(environment),
        Optional.empty(),
        isDumb(environment),
        !value(environment, "MOTEBOOK_SCREEN").isEmpty(),
        Optional.empty());
  }

  /** The same, opening at a day. */
  public Options openingAt(Optional<LocalDate> other) {
    return new Options(palette, look, other, plain, terminal, usualBook);
  }

  /** The same, told in lines where that is asked for; a terminal that only prints always is. */
  public Options plainly(boolean asked) {
    return new Options(palette, look, day, plain || asked, terminal, usualBook);
  }

  /** The same, with the book that commands open where they name none. */
  public Options knowing(Path usual) {
    return new Options(palette, look, day, plain, terminal, Optional.of(usual));
  }

  /** How a shell calls the program for a book. */
  Invocation program(Path book) {
    return Invocation.of(book, Optional.of(usualBook.orElse(book)));
  }

  private static Palette palette(Map<String, String> environment, Colour colour) {
    boolean wanted =
        switch (colour) {
          case ALWAYS -> true;
          case NEVER -> false;
          case AUTO -> value(environment, "NO_COLOR").isEmpty() && !isDumb(environment);
        };
    if (!wanted) {
      return Palette.NONE;
    }
    boolean many =
        value(environment, "TERM").contains("256color")
            || !value(environment, "COLORTERM").isEmpty();
    return many ? Palette.MANY : Palette.SIXTEEN;
  }

  private static Look look(Map<String, String> environment) {
    boolean asked = value(environment, "MOTEBOOK_ASCII").equals("1");
    boolean poor = isDumb(environment) || value(environment, "TERM").equals("linux");
    return asked || poor || !isUnicode(environment) ? Look.ASCII : Look.UNICODE;
  }

  private static boolean isDumb(Map<String, String> environment) {
    return value(environment, "TERM").equals("dumb");
  }

  // As in POSIX: the first of the three that is set decides.
  private static boolean isUnicode(Map<String, String> environment) {
    for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
      String locale = value(environment, name);
      if (!locale.isEmpty()) {
        return locale.toLowerCase(Locale.ROOT).replace("-", "").contains("utf8");
      }
    }
    return false;
  }

  private static String value(Map<String, String> environment, String name) {
    return environment.getOrDefault(name, "");
  }
}
