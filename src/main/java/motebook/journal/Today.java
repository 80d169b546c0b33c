package motebook.journal;

import java.time.Clock;
import java.time.LocalDate;
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
  void requireCome(LocalDate day, String what) {
    LocalDate today = LocalDate.now(clock);
    if (day.isAfter(today)) {
      throw new Refusal(
          "Nothing can have been %s on %s: today is %s. Give today or an earlier day."
              .formatted(what, day, today));
    }
  }
}
