package motebook.screen.state;

import java.time.LocalDateTime;
import motebook.screen.state.Notice.Tone;

/** What follows from a message; nothing outside is touched. */
public final class Update {
  private Update() {}

  /** The first step: read the day, and the line that was left over. */
  public static Step open(State state) {
    Task.ReadDay day = new Task.ReadDay(state.sheet().date(), state.sheet().person());
    return state.line().blank()
        ? Step.to(state, day)
        : Step.to(
            state.saying("A line was left unfinished: Enter goes on with it.", Tone.ASKED), day);
  }

  /** The state after a message, and what is to be done. */
  public static Step update(State state, Message message) {
    if (message instanceof Message.Pressed pressed) {
      return pressed(state.focus() == Focus.QUESTION ? state : state.quiet(), pressed.key());
    } else if (message instanceof Message.Pasted pasted) {
      return LineKeys.pasted(state.quiet(), pasted.text());
    } else if (message instanceof Message.Resized resized) {
      return Step.to(state.with(resized.size()));
    } else if (message instanceof Message.Ticked ticked) {
      return ticked(state, ticked.now());
    }
    return answered(state, message);
  }

  private static Step pressed(State state, Key key) {
    if (key.name() == Key.Name.CLOSED) {
      return DayKeys.leave(state);
    }
    return Bindings.of(state.focus(), key)
        .map(binding -> binding.act().by(state, key))
        .orElseGet(() -> typed(state, key));
  }

  private static Step typed(State state, Key key) {
    return state.focus() == Focus.LINE && key.types()
        ? LineKeys.typed(state, key.typed())
        : Step.to(state);
  }

  // Past midnight a day that was today's goes on to the new day.
  private static Step ticked(State state, LocalDateTime now) {
    boolean turned = state.sheet().date().equals(state.today()) && !onSameDay(state, now);
    State later = state.at(now);
    if (turned && later.focus() == Focus.DAY) {
      return DayKeys.read(later, later.sheet().on(later.today()));
    }
    Task look = new Task.LookAgain(state.sheet().date(), state.sheet().person());
    String text = state.line().text();
    return text.equals(state.kept())
        ? Step.to(later, look)
        : Step.to(later.keeping(text), look, new Task.KeepDraft(text));
  }

  private static boolean onSameDay(State state, LocalDateTime now) {
    return now.toLocalDate().equals(state.today());
  }

  private static Step answered(State state, Message message) {
    if (message instanceof Message.DayRead read) {
      return Step.to(state.with(state.sheet().with(read.page())));
    } else if (message instanceof Message.LineRead read) {
      return Step.to(state.with(state.line().read(read.reading())));
    } else if (message instanceof Message.Logged logged) {
      return Answers.logged(state, logged);
    } else if (message instanceof Message.NotLogged not) {
      return Answers.notLogged(state, not);
    } else if (message instanceof Message.UndoFound found) {
      return Answers.undoFound(state, found);
    } else if (message instanceof Message.Undone undone) {
      return Answers.undone(state, undone);
    } else if (message instanceof Message.LinesRead read) {
      return Answers.linesRead(state, read);
    } else if (message instanceof Message.LinesLogged logged) {
      return Answers.linesLogged(state, logged);
    }
    return Answers.failed(state, (Message.Failed) message);
  }
}
