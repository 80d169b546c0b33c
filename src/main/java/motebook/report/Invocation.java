package motebook.report;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.ShellWord;

/**
 * How a shell calls the program for a book, so that a command that is read here works on it.
 *
 * @param program the program, and the book where it is not the one that is opened by itself
 */
public record Invocation(String program) {
  private static final String BARE = "motebook";
  private static final String BOOK = "--book ";
  private static final Pattern COMMAND = Pattern.compile("\\b" + BARE + " (?=[a-z])");

  /** That of the book which is opened where none is named. */
  public static final Invocation USUAL = new Invocation(BARE);

  /** That of a book, where another may be the usual one. */
  public static Invocation of(Path book, Path usual) {
    return whole(usual).equals(whole(book))
        ? USUAL
        : new Invocation(BARE + " " + BOOK + ShellWord.quoted(whole(book).toString()));
  }

  private static Path whole(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** A text whose commands are given whole; one that names a book already stays as it is. */
  public String in(String text) {
    return text.contains(BOOK)
        ? text
        : COMMAND.matcher(text).replaceAll(Matcher.quoteReplacement(program + " "));
  }

  /** Whether a text tells of a command. */
  public static boolean isIn(String text) {
    return COMMAND.matcher(text).find();
  }
}
