package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;

/** Many spoken lines at once: a file, a paste, the sample shop. */
public final class Intake {
  private static final String REMARK = "#";

  private Intake() {}

  /**
   * Logs every line as one change; blank lines and those that begin with # are passed over.
   *
   * @throws Refusal with the number of the first line that is not understood; nothing is written
   */
  public static List<Session> log(Book book, Scene scene, List<String> lines) {
    return log(book, scene, lines, done -> {});
  }

  /**
   * The same, telling how far it has come.
   *
   * @param done told how many lines are read, then how many lines and sessions: twice the lines at
   *     the end, where every one is a session
   */
  public static List<Session> log(Book book, Scene scene, List<String> lines, IntConsumer done) {
    List<Work> works = read(scene, lines, done);
    return works.isEmpty()
        ? List.of()
        : book.logAll(
            works,
            "logged " + works.size() + " lines at once",
            written -> done.accept(lines.size() + written));
  }

  /** Reads every line; the refusal of one names its number. */
  public static List<Work> read(Scene scene, List<String> lines) {
    return read(scene, lines, done -> {});
  }

  private static List<Work> read(Scene scene, List<String> lines, IntConsumer done) {
    List<Work> works = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith(REMARK)) {
        works.add(read(scene, i + 1, line));
      }
      done.accept(i + 1);
    }
    return works;
  }

  private static Work read(Scene scene, int number, String line) {
    try {
      return SpokenLine.read(line, scene);
    } catch (Refusal refusal) {
      throw refusal.within("Line " + number + ": ");
    }
  }
}
