package motebook.report;

import java.nio.file.Path;
import java.util.Optional;
import motebook.model.ShellWord;

/**
 * How a shell calls the program for a book, so that a command that is read here works on it.
 *
 * @param program the program, and the book where it is not the one that is opened by itself
 */
public record Invocation(String program) {
  private static final String BARE = "motebook";

  /** That of the book which is opened where none is named. */
  public static final Invocation USUAL = new Invocation(BARE);

  /** That of a book, where another may be the usual one. */
  public static Invocation of(Path book, Optional<Path> usual) {
    return usual.map(Invocation::whole).equals(Optional.of(whole(book)))
        ? USUAL
        : new Invocation(BARE + " --book " + ShellWord.quoted(whole(book).toString()));
  }

  private static Path whole(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** A command line: the program and what stands behind it. */
  public String command(String words) {
    return program + " " + words;
  }
}
