package motebook.screen;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import motebook.screen.draw.View;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Task;
import motebook.screen.state.Update;
import motebook.screen.terminal.Window;

/**
 * Takes messages one at a time, follows them, and draws what has changed. Keys wait for the answers
 * of what the keys before them asked for, so that it is the same how fast they come.
 */
final class Loop {
  private static final long TICK_NS = TimeUnit.SECONDS.toNanos(1);

  /** Something that happened, a task that is done, or the fault of a thread. */
  private record Event(Message message, Task done, Throwable crash) {}

  private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
  private final AtomicReference<State> state;
  private final Clock clock;
  private final Deque<Message> held = new ArrayDeque<>();
  private int awaited;
  private boolean stale = true;

  Loop(Clock clock, State opening) {
    this.clock = clock;
    this.state = new AtomicReference<>(opening);
  }

  /** The state as it stands; other threads may ask. */
  State state() {
    return state.get();
  }

  void tell(Message message) {
    events.add(new Event(message, null, null));
  }

  /** A task is done; its answer was told before. */
  void done(Task task) {
    events.add(new Event(null, task, null));
  }

  void crash(Throwable cause) {
    events.add(new Event(null, null, cause));
  }

  /** Asks for what is shown first, and draws what is known before it has been read. */
  void start(Window window, Worker worker) {
    follow(Update.open(state.get()), worker);
    take(new Message.Resized(window.size()), worker);
    draw(window);
  }

  /**
   * Runs in a window, once it was started, until the person leaves.
   *
   * @throws InterruptedException if the thread is interrupted
   * @throws Crash if any thread has failed
   */
  void run(Window window, Worker worker) throws InterruptedException {
    long tick = System.nanoTime() + TICK_NS;
    while (!state.get().over()) {
      if (events.isEmpty()) {
        draw(window);
      }
      Event event = events.poll(tick - System.nanoTime(), TimeUnit.NANOSECONDS);
      if (event == null) {
        tick = System.nanoTime() + TICK_NS;
        tick(worker);
      } else {
        happened(event, worker);
      }
    }
  }

  // Most ticks change nothing that would have to be drawn.
  private void tick(Worker worker) {
    State before = state.get();
    boolean wasStale = stale;
    take(new Message.Ticked(now()), worker);
    stale = wasStale || !before.equals(state.get());
  }

  private LocalDateTime now() {
    return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
  }

  private void happened(Event event, Worker worker) {
    if (event.crash() != null) {
      throw new Crash(event.crash());
    } else if (event.done() != null) {
      awaited -= isAwaited(event.done()) ? 1 : 0;
    } else if (isTyped(event.message())) {
      held.add(event.message());
    } else {
      take(event.message(), worker);
    }
    while (awaited == 0 && !held.isEmpty()) {
      take(held.remove(), worker);
    }
  }

  // Whoever leaves need not wait.
  private static boolean isTyped(Message message) {
    boolean leaves =
        message instanceof Message.Pressed pressed
            && (pressed.key().name() == Key.Name.CLOSED || pressed.key().equals(Key.control('c')));
    return !leaves && (message instanceof Message.Pressed || message instanceof Message.Pasted);
  }

  private static boolean isAwaited(Task task) {
    return !(task instanceof Task.Background);
  }

  private void take(Message message, Worker worker) {
    follow(Update.update(state.get(), message), worker);
  }

  private void follow(Step step, Worker worker) {
    state.set(step.state());
    stale = true;
    awaited += (int) step.tasks().stream().filter(Loop::isAwaited).count();
    step.tasks().forEach(worker::submit);
  }

  private void draw(Window window) {
    if (stale) {
      State now = state.get();
      window.draw(View.view(now, now.size()));
      stale = false;
    }
  }

  /** A thread of the screens has failed. */
  static final class Crash extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Crash(Throwable cause) {
      super(cause);
    }
  }
}
