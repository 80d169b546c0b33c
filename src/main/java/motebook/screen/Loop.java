package motebook.screen;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import motebook.screen.draw.View;
import motebook.screen.state.Message;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Update;
import motebook.screen.terminal.Window;

/** Takes messages one at a time, follows them, and draws what has changed. */
final class Loop {
  private static final long TICK_NS = TimeUnit.SECONDS.toNanos(1);

  /** A thread has failed. */
  private record Event(Message message, Throwable crash) {}

  private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
  private final AtomicReference<State> state;
  private final Window window;
  private final Clock clock;

  Loop(Window window, Clock clock, State opening) {
    this.window = window;
    this.clock = clock;
    this.state = new AtomicReference<>(opening);
  }

  /** The state as it stands; other threads may ask. */
  State state() {
    return state.get();
  }

  void tell(Message message) {
    events.add(new Event(message, null));
  }

  void crash(Throwable cause) {
    events.add(new Event(null, cause));
  }

  /**
   * Runs until the person leaves.
   *
   * @throws InterruptedException if the thread is interrupted
   * @throws Crash if any thread has failed
   */
  void run(Worker worker) throws InterruptedException {
    follow(Update.open(state.get()), worker);
    draw();
    long tick = System.nanoTime() + TICK_NS;
    while (!state.get().over()) {
      Event event = events.poll(tick - System.nanoTime(), TimeUnit.NANOSECONDS);
      State before = state.get();
      if (event == null) {
        tick = System.nanoTime() + TICK_NS;
        take(new Message.Ticked(now()), worker);
      } else {
        take(message(event), worker);
      }
      if (events.isEmpty() && !before.equals(state.get())) {
        draw();
      }
    }
  }

  private LocalDateTime now() {
    return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
  }

  private static Message message(Event event) {
    if (event.crash() != null) {
      throw new Crash(event.crash());
    }
    return event.message();
  }

  private void take(Message message, Worker worker) {
    follow(Update.update(state.get(), message), worker);
  }

  private void follow(Step step, Worker worker) {
    state.set(step.state());
    step.tasks().forEach(worker::submit);
  }

  private void draw() {
    State now = state.get();
    window.draw(View.view(now, now.size()));
  }

  /** A thread of the screens has failed. */
  static final class Crash extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Crash(Throwable cause) {
      super(cause);
    }
  }
}
