package motebook.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import motebook.journal.Book;
import motebook.report.Invocation;
import motebook.screen.draw.Cells;
import motebook.screen.draw.View;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Look;
import motebook.screen.state.Message;
import motebook.screen.state.Size;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Task;
import motebook.screen.state.Update;
import motebook.screen.terminal.Palette;
import motebook.screen.terminal.Window;

/**
 * Flies the screens on a real book: what a person would press and see, without a terminal. Tasks
 * are done at once, in order; the clock stands until it is moved.
 */
final class Pilot implements AutoCloseable {
  /** A Wednesday. */
  static final LocalDateTime NOON = LocalDateTime.of(2026, 3, 4, 12, 0);

  private static final Key UNUSED = Key.of(Key.Name.OTHER);

  private final HandClock clock;
  private final Book book;
  private final Draft draft;
  private final Clerk clerk;
  private State state;

  Pilot(Path file) {
    this(file, Size.USUAL, Look.UNICODE);
  }

  Pilot(Path file, Size size, Look look) {
    this(file, size, look, Invocation.USUAL);
  }

  Pilot(Path file, Size size, Look look, Invocation invocation) {
    clock = new HandClock(NOON);
    book = Book.open(file, clock);
    draft = Draft.beside(book.file());
    clerk = new Clerk(book, clock, draft, invocation);
    state = State.opening(size, look, NOON, NOON.toLocalDate(), draft.read()).calledBy(invocation);
  }

  /** Opens the screens; the questions of the first run are left for later. */
  Pilot open() {
    openFresh();
    return state.focus() == Focus.FORM ? press("Escape").tell(new Message.Pressed(UNUSED)) : this;
  }

  /** Opens the screens, with the questions of the first run where they are asked. */
  Pilot openFresh() {
    follow(Update.open(state));
    return this;
  }

  Book book() {
    return book;
  }

  Draft draft() {
    return draft;
  }

  State state() {
    return state;
  }

  /** Presses keys one after another: {@code "Enter"}, {@code "Ctrl-Z"}, {@code "q"}. */
  Pilot press(String... names) {
    for (String name : names) {
      tell(new Message.Pressed(Keys.named(name)));
    }
    return this;
  }

  /** Types text, one character at a time. */
  Pilot type(String text) {
    text.codePoints().forEach(c -> tell(new Message.Pressed(Key.of(c))));
    return this;
  }

  /** Goes back to a state in which it was before; the book stays as it is. */
  Pilot back(State before) {
    state = before;
    return this;
  }

  /** Types into the line and presses Enter. */
  Pilot say(String words) {
    return type(words).press("Enter");
  }

  Pilot paste(String text) {
    return tell(new Message.Pasted(text));
  }

  Pilot resize(int columns, int rows) {
    return tell(new Message.Resized(new Size(columns, rows)));
  }

  /** Lets time go on. */
  Pilot pass(int minutes) {
    clock.now = clock.now.plusSeconds(60L * minutes);
    return tell(new Message.Ticked(LocalDateTime.now(clock)));
  }

  Pilot tell(Message message) {
    follow(Update.update(state, message));
    return this;
  }

  private void follow(Step step) {
    Deque<Message> answers = new ArrayDeque<>();
    take(step, answers);
    while (!answers.isEmpty()) {
      take(Update.update(state, answers.poll()), answers);
    }
  }

  private void take(Step step, Deque<Message> answers) {
    state = step.state();
    for (Task task : step.tasks()) {
      clerk.perform(task).ifPresent(answers::add);
    }
  }

  Cells cells() {
    return View.view(state, state.size());
  }

  /** What a terminal shows, drawn through the real adapter. */
  String screen() {
    Cells cells = cells();
    DefaultVirtualTerminal terminal =
        new DefaultVirtualTerminal(new TerminalSize(cells.columns(), cells.rows()));
    try (Window window = Window.on(terminal, Palette.NONE)) {
      window.draw(cells);
      return shown(terminal);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String shown(DefaultVirtualTerminal terminal) {
    StringBuilder screen = new StringBuilder();
    for (int row = 0; row < terminal.getTerminalSize().getRows(); row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < terminal.getTerminalSize().getColumns(); column++) {
        line.append(terminal.getCharacter(column, row).getCharacterString());
      }
      screen.append(line.toString().stripTrailing()).append('\n');
    }
    return screen.toString();
  }

  @Override
  public void close() {
    book.close();
  }

  /** A clock that is set by hand. */
  private static final class HandClock extends Clock {
    private Instant now;

    HandClock(LocalDateTime start) {
      now = start.toInstant(ZoneOffset.UTC);
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      throw new UnsupportedOperationException("the hand clock stays in its zone " + zone);
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  /** Names of keys. */
  static final class Keys {
    private Keys() {}

    static Key named(String name) {
      if (name.length() == 1) {
        return Key.of(name.codePointAt(0));
      }
      if (name.startsWith("Ctrl-")) {
        return Key.control(name.toLowerCase(Locale.ROOT).charAt(5));
      }
      return Key.of(Key.Name.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_')));
    }
  }
}
