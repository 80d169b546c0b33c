package motebook.screen.state;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.model.Action;
import motebook.model.Session;

/** Something to be done with the book; its answer comes back as a message. */
public sealed interface Task {
  /**
   * One that keys need not wait for. All others decide what the keys pressed after them act on:
   * they are taken only when the answer has come, however fast somebody types.
   */
  sealed interface Background extends Task {}

  /**
   * Read and reckon a day.
   *
   * @param person whose; empty for the book's own person
   */
  record ReadDay(LocalDate date, String person) implements Background {}

  /** Read what somebody said last. */
  record ReadHabits(String person) implements Background {}

  /** The day, but only if another program has written to the book since. */
  record LookAgain(LocalDate date, String person) implements Background {}

  /** Read a line and reckon what it would make of its day; nothing is written. */
  record ReadLine(String text, String person) implements Background {}

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
  record KeepDraft(String text) implements Background {}

  /** Read and reckon a week and those before it. */
  record ReadWeek(LocalDate monday, String person) implements Background {}

  /** Log the work of a session again, ending now. */
  record LogAgain(long session, String person) implements Task {}

  /** Log a line that was not typed, such as a favourite. */
  record LogAtOnce(String text, String person) implements Task {}

  /** Delete a session. */
  record Delete(Session session) implements Task {}

  /** Open a form on a session, or on a new one of a day where there is none. */
  record OpenForm(Optional<Session> session, LocalDate date, String person) implements Task {}

  /** Open the form of the settings. */
  record OpenSettings(Form.Kind kind) implements Task {}

  /** Open the form of the settings if nothing was ever written into the book. */
  record OpenFirst() implements Background {}

  /** Read what a form says and reckon what it would make of its day; nothing is written. */
  record ReadForm(Form form, String person) implements Background {}

  /** Write what a form says into the book. */
  record SaveForm(Form form, String person) implements Task {}

  /** Set cautions aside for a day. */
  record SetAside(LocalDate date, String person, List<String> cautions) implements Task {
    public SetAside {
      cautions = List.copyOf(cautions);
    }
  }

  /** Bring back all cautions of a day. */
  record BringBack(LocalDate date, String person) implements Task {}

  /** Read what the stopwatch is to be started for; nothing is written. */
  record ReadStart(String text, String person) implements Background {}

  /** Read what may come to be done; nothing is written. */
  record ReadPlan(String text, String person) implements Background {}

  /** Reckon what some work would bring, each line for itself; nothing is written. */
  record Plan(List<String> lines, String person) implements Task {
    public Plan {
      lines = List.copyOf(lines);
    }
  }

  /** Start the stopwatch. */
  record Start(String text, String person) implements Task {}

  /** Pause the stopwatch, or go on with it where it is paused. */
  record PauseOrGoOn(String person) implements Task {}

  /** Stop the stopwatch and log what it timed. */
  record Stop(String person) implements Task {}

  /**
   * End the stretch that the stopwatch is timing as the person says it really was.
   *
   * @param text when it ended, how long it took, or from when to when
   * @param stops whether the stopwatch is stopped there, and not only paused
   */
  record EndStretch(String text, String person, boolean stops) implements Task {}

  /** Find the day that is meant by some words. */
  record GoTo(String text) implements Task {}

  /** Find sessions; further ones where some were found before. */
  record Find(String words, Optional<Session> before) implements Task {}

  /** Keep the work of a session as a favourite. */
  record AddFavourite(String name, Session session) implements Task {}

  /** Forget a favourite. */
  record RemoveFavourite(String name) implements Task {}

  /** Read how masks and filters stand. */
  record ReadCare() implements Background {}

  /** Read what measurements taught. */
  record ReadEvidence() implements Background {}

  /** Read the words that a line understands. */
  record ReadWords(String person) implements Background {}

  /** Do what was asked about. */
  record Settle(Action action) implements Task {}

  /** Take an element off its mask at once: damaged, soiled or hard to breathe. */
  record Damaged(String element) implements Task {}

  /**
   * Checks one answer of a form of settings; nothing is written.
   *
   * @param form the form
   * @param field key of the field
   */
  record CheckField(Form form, String field) implements Background {}

  /**
   * Opens a form of masks.
   *
   * @param kind what is to be added
   * @param mask name of the respirator that is meant; empty for the first one
   * @param person who is meant; empty for the book's own
   * @param wanted what the fields are filled with, if something is asked for
   */
  record OpenGear(Form.Kind kind, String mask, String person, Optional<Action> wanted)
      implements Task {}
}
