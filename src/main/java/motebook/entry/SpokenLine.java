package motebook.entry;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.model.Amount;
import motebook.model.Refusal;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Finish;
import motebook.reference.Named;
import motebook.reference.Reference;

/** The spoken line: a session in one line of plain words, read and said back. */
public final class SpokenLine {
  private static final Set<String> SPRAYED = Set.of("spray", "sprayed", "spraying");

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

  /** Why a line cannot be read; empty where it can. */
  public static Optional<Refusal> refusal(String line, Scene scene) {
    try {
      read(line, scene);
      return Optional.empty();
    } catch (Refusal refusal) {
      return Optional.of(refusal);
    }
  }

  /**
   * Says a session in full: every name, the start and the date.
   *
   * @return a line that reads as an equal session in a scene that knows its names
   */
  public static String say(Work work, Scene scene) {
    return Saying.line(work, scene);
  }

  /** What to heed of a word that the session does not keep: a finish that was sprayed. */
  public static Optional<String> advice(String line, Work work) {
    Line words = Line.of(line);
    boolean sprayed =
        IntStream.range(0, words.size())
            .takeWhile(index -> !words.is(index, "note"))
            .anyMatch(index -> SPRAYED.contains(words.words(index, index + 1)));
    return sprayed && Reference.shipped().operation(work.operation()).finishes()
        ? Optional.of(
            "Overspray mist is not estimated; a particulate filter (R or P) is needed besides the"
                + " cartridge.")
        : Optional.empty();
  }

  /**
   * Says what was done without when and by whom: the operation, the material, the controls, a place
   * that is not the usual one, the respirator. A seal check is left out: it belongs to one donning.
   */
  public static String body(Work work, Scene scene) {
    return Saying.body(work, scene, false);
  }

  /** Says what is being done: as {@link #body}, but with the seal check and the note. */
  public static String untimed(Work work, Scene scene) {
    String body = Saying.body(work, scene, true);
    return work.note().isEmpty() ? body : body + " note " + work.note();
  }

  /** Says the same with its duration: a line that logs such work again, ending now. */
  public static String again(Work work, Scene scene) {
    return Durations.written(work.minutes()) + " " + body(work, scene);
  }

  /**
   * The amounts of finishes as the line says them, such as {@code 250ml lacquer and 50ml spirits}.
   */
  public static String amounts(Work work, Scene scene) {
    return work.amounts().isEmpty() ? "" : Saying.amounts(work.amounts(), scene.finishes().get());
  }

  /** One amount as the line says it, such as {@code 250ml} or {@code 8 fl oz}. */
  public static String amount(Amount amount) {
    return Amounts.written(amount.millilitres());
  }

  /** A row of the tables by the name that {@link #say} gives it. */
  public static String name(Named row) {
    if (row instanceof Finish finish) {
      return Saying.finish(finish);
    }
    return row instanceof Control ? row.spoken() : Saying.name(row);
  }

  /** Every finish with an amount before it, as an example of each. */
  public static List<String> exampleAmounts(Scene scene) {
    return scene.finishes().get().inUseOn(scene.today()).stream()
        .map(finish -> Amounts.EXAMPLE + " " + Saying.finish(finish))
        .toList();
  }

  /**
   * A line that says another start in the place of the one it says, or before its note.
   *
   * @return empty where the line cannot be read
   */
  public static Optional<String> startingAt(String line, LocalTime start, Scene scene) {
    return new Retimed(line, start).in(scene);
  }

  /**
   * A line that names a wood without figures of its own, with what stands for it in its place.
   *
   * @return empty where there is no such wood in it, or more is wrong with it
   */
  public static Optional<String> withKnownWood(String line, Scene scene) {
    return KnownWood.in(line, scene);
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

  /**
   * The same, with what somebody usually does before everything else.
   *
   * @param habits those of the person
   */
  public static List<String> complete(String line, Scene scene, Habits habits) {
    return Stream.concat(habits.complete(line).stream(), complete(line, scene).stream())
        .distinct()
        .limit(Completion.MOST)
        .toList();
  }
}
