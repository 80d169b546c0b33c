package motebook.screen;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/** Does tasks one after another on a thread of its own. */
final class Worker implements AutoCloseable {
  private static final int PATIENCE_S = 10;

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(work -> new Thread(work, "book"));
  private final AtomicReference<Task> line = new AtomicReference<>();
  private final AtomicReference<Task> day = new AtomicReference<>();
  private final Clerk clerk;
  private final Consumer<Message> listener;
  private final Consumer<Throwable> crash;

  Worker(Clerk clerk, Consumer<Message> listener, Consumer<Throwable> crash) {
    this.clerk = clerk;
    this.listener = listener;
    this.crash = crash;
  }

  /** Does a task when its turn comes; a reading that a later one has overtaken is left out. */
  void submit(Task task) {
    newest(task).set(task);
    thread.execute(() -> run(task));
  }

  private AtomicReference<Task> newest(Task task) {
    if (task instanceof Task.ReadLine) {
      return line;
    }
    return task instanceof Task.ReadDay ? day : new AtomicReference<>();
  }

  private boolean overtaken(Task task) {
    boolean reads = task instanceof Task.ReadLine || task instanceof Task.ReadDay;
    return reads && newest(task).get() != task;
  }

  private void run(Task task) {
    try {
      if (!overtaken(task)) {
        clerk.perform(task).ifPresent(listener);
      }
    } catch (RuntimeException | Error e) {
      crash.accept(e);
    }
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
