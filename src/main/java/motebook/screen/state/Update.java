package motebook.screen.state;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.screen.state.Notice.Tone;

/** What follows from a message; nothing outside is touched. */
public final class Update {
  private Update() {}

  /** The first step: read the day, and the line that was left over. */
  public static Step open(State state) {
    Task.ReadDay day = new Task.ReadDay(state.sheet().date(), state.sheet().person());
    return state.line().blank()
        ? Step.to(state, day, new Task.OpenFirst(), new Task.ReadCare())
        : Step.to(
            state.saying(
                "A line was left unfinished: Enter logs it, Ctrl-U clears it.", Tone.ASKED),
            day,
            new Task.ReadLine(state.line().text(), state.sheet().person()),
            new Task.ReadCare());
  }

  /** The state after a message, and what is to be done. */
  public static Step update(State state, Message message) {
    if (message instanceof Message.Pressed pressed) {
      return pressed(state.quiet(), pressed.key());
    } else if (message instanceof Message.Pasted pasted) {
      return pasted(state.quiet().asked(Optional.empty()), pasted.text());
    } else if (message instanceof Message.Resized resized) {
      return Step.to(state.with(resized.size()));
    } else if (message instanceof Message.Ticked ticked) {
      return ticked(state, ticked.now());
    }
    return Answers.follow(state, message);
  }

  private static Step pressed(State state, Key key) {
    if (key.name() == Key.Name.CLOSED) {
      return BaseKeys.leave(state);
    }
    if (!state.size().holds(Size.SMALLEST)) {
      return key.equals(Key.control('c')) ? BaseKeys.leave(state) : Step.to(state);
    }
    return acted(state, key);
  }

  /** What a key does; one that the question does not know leaves it for what it always does. */
  static Step acted(State state, Key key) {
    Optional<Binding> binding = Bindings.of(state, key);
    if (binding.isEmpty() && state.asked().isPresent()) {
      return acted(state.asked(Optional.empty()), key);
    }
    return binding
        .map(found -> found.act().by(state, key))
        .orElseGet(() -> key.types() ? typed(state, key.typed()) : Step.to(state));
  }

  /** What a key of the page does that is called by its name, whether the line is open or not. */
  public static Step named(State state, Binding binding, Key key) {
    return binding.act().by(state.quiet(), key);
  }

  private static Step typed(State state, String text) {
    return switch (state.focus()) {
      case PROMPT -> PromptKeys.typed(state, text);
      case FORM -> FormKeys.typed(state, text);
      default -> state.where().open() ? LineKeys.typed(state, text) : Step.to(state);
    };
  }

  // Below the smallest size nothing is seen of what would be typed. What is pasted goes where
  // something is being typed, else into the line.
  private static Step pasted(State state, String text) {
    if (!state.size().holds(Size.SMALLEST)) {
      return Step.to(state);
    }
    return switch (state.focus()) {
      case PROMPT, FORM -> typed(state, text);
      default -> LineKeys.pasted(state, text);
    };
  }

  // Past midnight a day that was today's goes on to the new day.
  private static Step ticked(State state, LocalDateTime now) {
    boolean turned =
        state.sheet().date().equals(state.today()) && !now.toLocalDate().equals(state.today());
    State later = state.at(now);
    if (turned && later.focus() == Focus.DAY) {
      return DayKeys.read(later, later.sheet().on(later.today()));
    }
    List<Task> tasks = new ArrayList<>(List.of(look(later, timed(state, now))));
    Optional<String> unkept =
        Optional.of(state.line().text()).filter(text -> !text.equals(state.kept()));
    unkept.ifPresent(text -> tasks.add(new Task.KeepDraft(text)));
    return new Step(unkept.map(later::keeping).orElse(later), tasks);
  }

  // A stopwatch that is under way moves the day's figures each minute.
  private static boolean timed(State state, LocalDateTime now) {
    boolean watched = state.sheet().current().flatMap(DayPage::timing).isPresent();
    return watched && !now.equals(state.now());
  }

  private static Task look(State state, boolean again) {
    Sheet sheet = state.sheet();
    return again
        ? new Task.ReadDay(sheet.date(), sheet.person())
        : new Task.LookAgain(sheet.date(), sheet.person());
  }
}
