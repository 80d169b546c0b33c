package motebook.journal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoField;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;

/** Sees to it that what is told as done has been done. */
final class Today {
  private final Clock clock;

  Today(Clock clock) {
    this.clock = clock;
  }

  /**
   * @param what what happened on the day, for the message: "opened", "tested"
   * @throws Refusal if the day is still to come
   */
  void requireCome(LocalDate day, int minute, String what) {
    requireCome(day, what);
    LocalDateTime now = LocalDateTime.now(clock);
    if (day.atStartOfDay().plusMinutes(minute).isAfter(now)) {
      throw new Refusal(
          "Nothing can have been %s at %s on %s: it is %s. Give now or an earlier time."
              .formatted(
                  what,
                  MinuteOfDay.told(minute),
                  day,
                  MinuteOfDay.told(now.get(ChronoField.MINUTE_OF_DAY))));
    }
  }

  /** The same of a whole day. */
  void requireCome(LocalDate day, String what) {
    LocalDate today = LocalDate.now(clock);
    if (day.isAfter(today)) {
      throw new Refusal(
          "Nothing can have been %s on %s: today is %s. Give today or an earlier day."
              .formatted(what, day, today));
    }
  }
}
