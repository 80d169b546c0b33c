package motebook.screen.state;

import java.util.List;
import motebook.model.Action;
import motebook.model.Session;
import motebook.report.ActionText;

/** Something that is done only after a yes. */
public sealed interface Question {
  /** The question, with what it is about. */
  String text();

  /** What a yes asks for. */
  Task task();

  /** What is said after a no. */
  String left();

  /**
   * Whether a change is to be taken back.
   *
   * @param change the last change of the book
   */
  record TakeBack(Undoable change) implements Question {
    @Override
    public String text() {
      return "Take this back? " + change.what();
    }

    @Override
    public Task task() {
      return new Task.Undo(change);
    }

    @Override
    public String left() {
      return "Nothing was taken back.";
    }
  }

  /**
   * Whether several pasted lines are to be logged.
   *
   * @param lines the lines
   * @param person who is meant where nobody is named
   * @param said what they say, each said back in full
   */
  record LogLines(List<String> lines, String person, List<String> said) implements Question {
    public LogLines {
      lines = List.copyOf(lines);
      said = List.copyOf(said);
    }

    @Override
    public String text() {
      return "Log these " + said.size() + " sessions? " + String.join("; ", said);
    }

    @Override
    public Task task() {
      return new Task.LogLines(lines, person);
    }

    @Override
    public String left() {
      return "Nothing was logged.";
    }
  }

  /**
   * Whether a session is to be deleted.
   *
   * @param session which
   * @param said when and what it was
   */
  record Delete(Session session, String said) implements Question {
    @Override
    public String text() {
      return "Delete this? " + said;
    }

    @Override
    public Task task() {
      return new Task.Delete(session);
    }

    @Override
    public String left() {
      return "Nothing was deleted.";
    }
  }

  /**
   * Whether a favourite is to be forgotten.
   *
   * @param name its name
   */
  record Forget(String name) implements Question {
    @Override
    public String text() {
      return "Forget the favourite \"" + name + "\"? What was logged with it stays.";
    }

    @Override
    public Task task() {
      return new Task.RemoveFavourite(name);
    }

    @Override
    public String left() {
      return "Nothing was forgotten.";
    }
  }

  /**
   * Whether an element is to be taken off its mask at once.
   *
   * @param element its name
   */
  record Damaged(String element) implements Question {
    @Override
    public String text() {
      return "Take \"" + element + "\" off for good? It is damaged, soiled or hard to breathe.";
    }

    @Override
    public Task task() {
      return new Task.Damaged(element);
    }

    @Override
    public String left() {
      return "It stays on its mask.";
    }
  }

  /**
   * Whether what was asked for is done.
   *
   * @param action what would be done
   */
  record Settle(Action action) implements Question {
    @Override
    public String text() {
      return ActionText.asked(action);
    }

    @Override
    public Task task() {
      return new Task.Settle(action);
    }

    @Override
    public String left() {
      return "Nothing was written down.";
    }
  }
}
