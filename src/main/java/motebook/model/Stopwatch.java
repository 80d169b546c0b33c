package motebook.model;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Work that is being timed: it stands in the book from its start until it is stopped.
 *
 * @param id the book's number
 * @param person who works
 * @param line what is done, as a spoken line without its duration
 * @param stretches from each start or going on to the pause after it, in order; at least one
 */
public record Stopwatch(long id, String person, String line, List<Stretch> stretches) {
  public Stopwatch {
    stretches = List.copyOf(stretches);
    if (stretches.isEmpty()) {
      throw new IllegalArgumentException("a stopwatch without a stretch was never started");
    }
  }

  /**
   * Time without a pause.
   *
   * @param began when it began
   * @param ended when it ended; empty while it runs
   */
  public record Stretch(Instant began, Optional<Instant> ended) {
    /** The stretch as it stands at a moment. */
    public Duration until(Instant now) {
      Duration length = Duration.between(began, ended.orElse(now));
      return length.isNegative() ? Duration.ZERO : length;
    }
  }

  /** Whether it runs and is not paused. */
  public boolean running() {
    return stretches.get(stretches.size() - 1).ended().isEmpty();
  }

  /** The time worked until a moment, pauses left out. */
  public Duration worked(Instant now) {
    return stretches.stream().map(s -> s.until(now)).reduce(Duration.ZERO, Duration::plus);
  }
}
