package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.concurrent.CountDownLatch;
import motebook.journal.Book;
import motebook.report.Invocation;
import motebook.screen.state.Key;
import motebook.screen.state.Look;
import motebook.screen.state.Message;
import motebook.screen.state.Size;
import motebook.screen.state.State;
import motebook.screen.terminal.Palette;
import motebook.screen.terminal.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(30)
class LoopTest {
  private final DefaultVirtualTerminal terminal =
      new DefaultVirtualTerminal(new TerminalSize(100, 30));
  private final Clock clock = Clock.fixed(Pilot.NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

  @TempDir Path folder;
  private Book book;
  private Loop loop;
  private Worker worker;
  private Window window;

  @BeforeEach
  void open() throws IOException {
    LocalDate today = Pilot.NOON.toLocalDate();
    book = Book.open(folder.resolve("book.db"), clock);
    loop = new Loop(clock, State.opening(Size.USUAL, Look.UNICODE, Pilot.NOON, today, ""));
    Clerk clerk = new Clerk(book, clock, Draft.beside(book.file()), Invocation.USUAL);
    worker = new Worker(() -> clerk, loop::tell, loop::done, loop::crash);
    window = Window.on(terminal, Palette.NONE);
  }

  @AfterEach
  void close() {
    window.close();
    worker.close();
    book.close();
  }

  @Test
  void it_runs_at_the_size_of_the_window_until_the_person_leaves() throws InterruptedException {
    loop.start(window, worker);
    loop.tell(new Message.Pressed(Key.control('c')));
    loop.run(window, worker);
    assertThat(loop.state().size()).isEqualTo(new Size(100, 30));
    assertThat(loop.state().over()).isTrue();
  }

  @Test
  @Timeout(60)
  void what_is_asked_for_with_the_first_frame_is_shown_when_it_has_been_read() throws Exception {
    loop.start(window, worker);
    Thread screens = new Thread(this::run);
    screens.start();
    while (!Pilot.shown(terminal).contains("your name")) {
      Thread.onSpinWait();
    }
    loop.tell(new Message.Pressed(Key.control('c')));
    screens.join();
    assertThat(loop.state().sheet().current()).isPresent();
  }

  @Test
  void the_first_frame_stands_there_before_the_book_is_open() {
    CountDownLatch opened = new CountDownLatch(1);
    try (Worker waiting = new Worker(() -> after(opened), loop::tell, loop::done, loop::crash)) {
      loop.start(window, waiting);
      assertThat(Pilot.shown(terminal))
          .contains("Wednesday 4 March 2026, today", "Reading the book", "help")
          .doesNotContain("your name");
      opened.countDown();
    }
  }

  private Clerk after(CountDownLatch opened) {
    try {
      opened.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return new Clerk(book, clock, Draft.beside(book.file()), Invocation.USUAL);
  }

  private void run() {
    try {
      loop.run(window, worker);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void what_a_thread_fails_with_ends_it_and_is_handed_on() {
    IllegalStateException fault = new IllegalStateException("a fault");
    loop.crash(fault);
    assertThatThrownBy(() -> loop.run(window, worker))
        .isInstanceOf(Loop.Crash.class)
        .hasCause(fault);
  }

  @Test
  @Timeout(60)
  void keys_typed_ahead_of_an_answer_act_as_they_would_have_after_it() throws Exception {
    loop.start(window, worker);
    loop.tell(new Message.Pressed(Key.of(Key.Name.ESCAPE)));
    String typed = "20m drilling of oak at 8:00\n30m assembly at 9:00\nundo\ny\nhalf a line";
    typed
        .codePoints()
        .mapToObj(c -> c == '\n' ? Key.of(Key.Name.ENTER) : Key.of(c))
        .forEach(key -> loop.tell(new Message.Pressed(key)));
    Thread screens = new Thread(this::run);
    screens.start();
    while (!loop.state().line().text().equals("half a line")) {
      Thread.onSpinWait();
    }
    loop.tell(new Message.Pressed(Key.control('c')));
    screens.join();
    assertThat(book.sessionsOn(Pilot.NOON.toLocalDate()))
        .extracting(session -> session.work().operation())
        .containsExactly("drilling");
  }
}
