package motebook.model;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
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
  /** The longest stretch without a pause that is taken for work without asking. */
  public static final Duration LONGEST_UNASKED = Duration.ofHours(4);

  /** Why the stretch that runs cannot be logged as it stands. */
  public enum Doubt {
    /** It began later than the clock shows now, or before the pause before it: a clock was set. */
    CLOCK_SET,
    /** It has run for longer than {@link #LONGEST_UNASKED}: it may have been forgotten. */
    RAN_LONG
  }

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

  /** The stretch that runs, or the last one before the pause. */
  public Stretch last() {
    return stretches.get(stretches.size() - 1);
  }

  /** Whether it runs and is not paused. */
  public boolean running() {
    return last().ended().isEmpty();
  }

  /** Why the person must be asked when the work of the stretch that runs really was. */
  public Optional<Doubt> doubt(Instant now) {
    if (!running()) {
      return Optional.empty();
    }
    if (last().began().isAfter(now) || last().began().isBefore(free())) {
      return Optional.of(Doubt.CLOCK_SET);
    }
    return last().until(now).compareTo(LONGEST_UNASKED) > 0
        ? Optional.of(Doubt.RAN_LONG)
        : Optional.empty();
  }

  /** The moment from which the last stretch can lie: the end of the one before it. */
  public Instant free() {
    return stretches.size() < 2
        ? Instant.MIN
        : stretches.get(stretches.size() - 2).ended().orElseThrow();
  }

  /** The same with another stretch in the place of the last. */
  public Stopwatch ending(Stretch corrected) {
    List<Stretch> all = new ArrayList<>(stretches.subList(0, stretches.size() - 1));
    all.add(corrected);
    return new Stopwatch(id, person, line, all);
  }

  /** The time worked until a moment, pauses left out. */
  public Duration worked(Instant now) {
    return stretches.stream().map(s -> s.until(now)).reduce(Duration.ZERO, Duration::plus);
  }
}
