package motebook.command;

/** Turns how far something has come into the steps that a bar counts; never backwards. */
final class Upward {
  private final Progress progress;
  private long reached;

  Upward(Progress progress) {
    this.progress = progress;
  }

  void to(long now) {
    if (now > reached) {
      progress.step(now - reached);
      reached = now;
    }
  }
}
