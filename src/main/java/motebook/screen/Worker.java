package motebook.screen;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/** Does tasks one after another on a thread of its own. */
final class Worker implements AutoCloseable {
  private static final int PATIENCE_S = 10;

  private static final Set<Class<? extends Task>> READINGS =
      Set.of(
          Task.ReadLine.class,
          Task.ReadDay.class,
          Task.ReadHabits.class,
          Task.ReadWeek.class,
          Task.ReadForm.class,
          Task.ReadCare.class,
          Task.ReadStart.class);

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(work -> new Thread(work, "book"));
  private final Map<Class<?>, AtomicReference<Task>> newest = new ConcurrentHashMap<>();
  private final Supplier<Clerk> engaged;
  private final Consumer<Message> listener;
  private final Consumer<Task> done;
  private final Consumer<Throwable> crash;
  private Optional<Clerk> clerk = Optional.empty();

  /**
   * A worker.
   *
   * @param engaged finds the clerk, on the worker's own thread, when the first task comes
   * @param listener is told the answer of a task, if it has one
   * @param done is told that a task is done, after its answer
   */
  Worker(
      Supplier<Clerk> engaged,
      Consumer<Message> listener,
      Consumer<Task> done,
      Consumer<Throwable> crash) {
    this.engaged = engaged;
    this.listener = listener;
    this.done = done;
    this.crash = crash;
  }

  /** Does a task when its turn comes; a reading that a later one has overtaken is left out. */
  void submit(Task task) {
    newest(task).set(task);
    thread.execute(() -> run(task));
  }

  /** The newest task of a kind that only reads; each of the others stands alone. */
  private AtomicReference<Task> newest(Task task) {
    return READINGS.contains(task.getClass())
        ? newest.computeIfAbsent(task.getClass(), kind -> new AtomicReference<>())
        : new AtomicReference<>(task);
  }

  private boolean overtaken(Task task) {
    return newest(task).get() != task;
  }

  private void run(Task task) {
    try {
      if (!overtaken(task)) {
        clerk().perform(task).ifPresent(listener);
      }
      done.accept(task);
    } catch (RuntimeException | Error e) {
      crash.accept(e);
    }
  }

  // Only the worker's own thread asks.
  private Clerk clerk() {
    Clerk own = clerk.orElseGet(engaged);
    clerk = Optional.of(own);
    return own;
  }

  /** Waits until everything asked for is done. */
  @Override
  public void close() {
    thread.shutdown();
    try {
      if (!thread.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
        thread.shutdownNow();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
