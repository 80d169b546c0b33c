package motebook;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/**
 * The clock and the zone of this machine. The zone is looked up when somebody asks for it, and not
 * before: its rules cost more to read than most of a start.
 */
final class LocalClock extends Clock {
  /** Looks the zone up on a thread of its own, for those who will soon ask. */
  LocalClock lookingAhead() {
    Thread ahead = new Thread(this::getZone, "zone");
    ahead.setDaemon(true);
    ahead.start();
    return this;
  }

  @Override
  public ZoneId getZone() {
    return ZoneId.systemDefault();
  }

  @Override
  public Clock withZone(ZoneId other) {
    return Clock.system(other);
  }

  @Override
  public Instant instant() {
    return Instant.now();
  }
}
