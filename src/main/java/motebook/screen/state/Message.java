package motebook.screen.state;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.desk.Evidence;
import motebook.desk.Plans;
import motebook.model.Session;
import motebook.model.Work;
import motebook.report.WordPart;

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

  /** The lines that somebody said last were read, newest first. */
  record HabitsRead(String person, List<String> recent) implements Message {}

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
  record LinesLogged(Work last, String said) implements Message {}

  /** A task could not be done; the sentence says why. */
  record Failed(String sentence) implements Message {}

  /** A week was read and reckoned. */
  record WeekRead(WeekPage page) implements Message {}

  /** A line that was not typed was not logged. */
  record NotLoggedAtOnce(String text, Fault fault) implements Message {}

  /** Something was written that is no new session; the day may look otherwise now. */
  record Changed(String said) implements Message {}

  /** A session was changed to this work. */
  record Amended(Work work, String said) implements Message {}

  /** A form was opened. */
  record FormOpened(Form form) implements Message {}

  /** A form was read; it may have been filled in further since. */
  record FormRead(Reading reading, List<String> controls, List<String> starts) implements Message {}

  /** A form was not written; the fault may point into its line. */
  record FormRefused(Fault fault) implements Message {}

  /** A form was not written because of one of its fields. */
  record FieldRefused(String key, String sentence) implements Message {}

  /** What is typed in answer to a short question was read. */
  record PromptRead(Reading reading) implements Message {}

  /** What some work would bring was reckoned. */
  record Planned(List<PlanSheet.PlanLine> lines, Plans plans) implements Message {
    public Planned {
      lines = List.copyOf(lines);
    }
  }

  /** What was typed in answer to a short question cannot be done. */
  record PromptRefused(String text, Fault fault) implements Message {}

  /** The stopwatch was started, or paused, or goes on. */
  record Timed(String said) implements Message {}

  /**
   * The work that is timed may have ended earlier than now; the person is asked.
   *
   * @param kind whether the stopwatch is to be stopped or paused
   * @param about why, and what to say
   */
  record EndAsked(Prompt.Kind kind, String about) implements Message {}

  /** A day that was asked for by words. */
  record WentTo(LocalDate date) implements Message {}

  /** Sessions that were found, in answer to the task. */
  record SessionsFound(Task.Find task, List<Session> hits) implements Message {
    public SessionsFound {
      hits = List.copyOf(hits);
    }
  }

  /** How masks and filters stand was read. */
  record CareRead(CarePage page) implements Message {}

  /** What measurements taught was read. */
  record EvidenceRead(Evidence evidence) implements Message {}

  /** The words that a line understands were read. */
  record WordsRead(List<WordPart> parts) implements Message {
    public WordsRead {
      parts = List.copyOf(parts);
    }
  }

  /** Something was settled or retired. */
  record Settled(String said) implements Message {}

  /** A form of masks was written into the book. */
  record GearSaved(String said) implements Message {}
}
