package motebook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import motebook.model.Refusal;
import motebook.model.Work;

/** Keeps a session within its date. */
final class Midnight {
  private static final int MINUTES_A_DAY = 24 * 60;

  private Midnight() {}

  /** Makes the work of a stretch that lies within one date. */
  @FunctionalInterface
  interface Maker {
    Work make(LocalDate date, LocalTime start, int minutes);
  }

  /**
   * The work of a stretch.
   *
   * @throws Refusal if it runs past midnight; it offers the two lines that would be right
   */
  static Work within(LocalDateTime begins, int minutes, Scene scene, Maker maker) {
    int start = 60 * begins.getHour() + begins.getMinute();
    int before = MINUTES_A_DAY - start;
    if (minutes <= before) {
      return maker.make(begins.toLocalDate(), begins.toLocalTime(), minutes);
    }
    Work first = maker.make(begins.toLocalDate(), begins.toLocalTime(), before);
    Work second =
        maker.make(begins.toLocalDate().plusDays(1), LocalTime.MIDNIGHT, minutes - before);
    throw new Refusal(
        "The session runs past midnight; a session belongs to one date. Say it as two lines: "
            + Saying.line(first, scene.reference())
            + " // "
            + Saying.line(second, scene.reference()));
  }

  /** The date that is meant by a start alone: last night's where the stretch has just run over. */
  static LocalDate dayOf(LocalTime start, Stretch stretch, Scene scene) {
    LocalDate today = scene.now().toLocalDate();
    LocalDateTime lastNight = start.atDate(today.minusDays(1));
    boolean overMidnight = lastNight.plusMinutes(stretch.minutes()).isAfter(today.atStartOfDay());
    boolean done = !lastNight.plusMinutes(stretch.minutes()).isAfter(scene.now());
    return overMidnight && done ? today.minusDays(1) : today;
  }
}
