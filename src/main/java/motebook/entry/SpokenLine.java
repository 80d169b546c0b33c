package motebook.entry;

import java.util.List;
import motebook.model.Refusal;
import motebook.model.Work;

/** The spoken line: a session in one line of plain words, read and said back. */
public final class SpokenLine {
  private SpokenLine() {}

  /**
   * Reads a line.
   *
   * @return what it says, with what it left unsaid filled in from the scene; it keeps {@link
   *     WorkRules}
   * @throws Refusal where it cannot be read or breaks a rule; its offsets point into the line as
   *     given where a word is at fault
   */
  public static Work read(String line, Scene scene) {
    return new LineReader(Line.of(line), scene).work();
  }

  /**
   * Says a session in full: every name, the start and the date.
   *
   * @return a line that reads as an equal session in a scene that knows its names
   */
  public static String say(Work work, Scene scene) {
    return Saying.line(work, scene);
  }

  /**
   * What could follow a line that is being typed.
   *
   * @return lines that each begin with the given one, the best first, at most 8; none inside a note
   *     or after a word that cannot be read
   */
  public static List<String> complete(String line, Scene scene) {
    return Completion.of(line, scene);
  }
}
