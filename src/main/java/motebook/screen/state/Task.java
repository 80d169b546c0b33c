package motebook.screen.state;

import java.time.LocalDate;
import java.util.List;

/** Something to be done with the book; its answer comes back as a message. */
public sealed interface Task {

  /**
   * Read and reckon a day.
   *
   * @param person whose; empty for the book's own person
   */
  record ReadDay(LocalDate date, String person) implements Task {}

  /** The same, but only if another program has written to the book since. */
  record LookAgain(LocalDate date, String person) implements Task {}

  /** Read a line and reckon what it would make of its day; nothing is written. */
  record ReadLine(String text, String person) implements Task {}

  /** Log a line. */
  record LogLine(String text, String person) implements Task {}

  /** Read several lines, so that they can be logged after a yes. */
  record ReadLines(List<String> lines, String person) implements Task {
    public ReadLines {
      lines = List.copyOf(lines);
    }
  }

  /** Log several lines as one change: all, or none. */
  record LogLines(List<String> lines, String person) implements Task {
    public LogLines {
      lines = List.copyOf(lines);
    }
  }

  /** Find what an undo would take back. */
  record FindUndo() implements Task {}

  /** Take back a change, provided that it is still the last one. */
  record Undo(Undoable change) implements Task {}

  /** Keep the line that is being typed, lest it be lost; an empty one is forgotten. */
  record KeepDraft(String text) implements Task {}
}
