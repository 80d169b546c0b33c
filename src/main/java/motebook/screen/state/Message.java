package motebook.screen.state;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Work;

/** Something that happened: a key, the clock, or the answer of a task. */
public sealed interface Message {

  /** A key was pressed. */
  record Pressed(Key key) implements Message {}

  /** Text was pasted as a whole. */
  record Pasted(String text) implements Message {}

  /** The terminal has another size. */
  record Resized(Size size) implements Message {}

  /** Time went on. */
  record Ticked(LocalDateTime now) implements Message {}

  /** A day was read and reckoned. */
  record DayRead(DayPage page) implements Message {}

  /** The line was read; it may have been typed on since. */
  record LineRead(Reading reading) implements Message {}

  /** The line was logged. */
  record Logged(Work work, String said) implements Message {}

  /** The line was not logged. */
  record NotLogged(String text, Fault fault) implements Message {}

  /** What an undo would take back, or empty where there is nothing. */
  record UndoFound(Optional<Undoable> change) implements Message {}

  /** A change was taken back, or there was none, or another one was in its place. */
  record Undone(Optional<String> what) implements Message {}

  /** Several pasted lines were understood; nothing is written yet. */
  record LinesRead(List<String> lines, String person, List<String> said) implements Message {
    public LinesRead {
      lines = List.copyOf(lines);
      said = List.copyOf(said);
    }
  }

  /** Several lines were logged, the last of them being this work. */
  record LinesLogged(int count, Work last) implements Message {}

  /** A task could not be done; the sentence says why. */
  record Failed(String sentence) implements Message {}
}
