package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.function.Function;
import motebook.model.Session;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

/** Work over midnight, held against 8 hours as one shift. */
class NightShiftTest {
  private static final LocalDate NEXT = Shops.DAY.plusDays(1);

  /** Work on the evening and, with its numbers from 100 on, in the morning after it. */
  private record Night(Shops evening, Shops morning) {
    List<Session> on(LocalDate date) {
      Function<Session, Session> later =
          session -> {
            Work work = session.work();
            return new Session(100 + session.id(), work.at(NEXT, work.start()));
          };
      return date.equals(NEXT)
          ? morning.sessions().stream().map(later).toList()
          : date.equals(Shops.DAY) ? evening.sessions() : List.of();
    }

    DayReport report(LocalDate date) {
      return Day.report(new DayReckoning(date, "me", on(date), evening.shop()), this::on);
    }

    List<NightShift> shifts(LocalDate date) {
      return report(date).limits().nights();
    }
  }

  private static final Night TWO_HOURS =
      new Night(
          new Shops().me("23:00", 60, "orbital-sanding of oak"),
          new Shops().me("00:00", 60, "orbital-sanding of oak"));

  @Test
  void two_hours_around_midnight_are_one_shift_whose_air_goes_on() {
    // Derived by src/test/python/limits.py: two hours in one air are more than twice the first.
    NightShift shift = TWO_HOURS.shifts(Shops.DAY).get(0);
    assertThat(shift.evening()).isEqualTo(Shops.DAY);
    assertThat(shift.startMinute()).isEqualTo(23 * 60);
    assertThat(shift.endMinute()).isEqualTo(60);
    assertThat(shift.outside().typical()).isCloseTo(6.83926, within(1e-5));
    assertThat(shift.outside().central()).isCloseTo(6.83926, within(1e-5));
    assertThat(shift.limit().orElseThrow().ratio()).isCloseTo(6.83926, within(1e-5));
    assertThat(TWO_HOURS.report(Shops.DAY).outside().estimate().central())
        .isCloseTo(3.125, within(1e-9));
  }

  @Test
  void both_of_its_dates_tell_of_it_alike_and_the_week_tells_it_once() {
    assertThat(TWO_HOURS.shifts(NEXT)).isEqualTo(TWO_HOURS.shifts(Shops.DAY)).hasSize(1);
    WeekReport week =
        Week.report(
            Shops.DAY,
            "me",
            date -> new DayReckoning(date, "me", TWO_HOURS.on(date), TWO_HOURS.evening.shop()),
            TWO_HOURS::on);
    assertThat(week.nights()).hasSize(1);
  }

  @Test
  void earlier_work_of_the_day_is_no_part_of_it_but_its_dust_hangs_in_the_room() {
    Night late =
        new Night(
            new Shops()
                .me("19:00", 60, "orbital-sanding of oak")
                .me("23:00", 60, "assembly of oak"),
            new Shops().me("00:00", 60, "assembly of oak"));
    Night alone =
        new Night(
            new Shops().me("23:00", 60, "assembly of oak"),
            new Shops().me("00:00", 60, "assembly of oak"));
    double with = late.shifts(Shops.DAY).get(0).outside().typical();
    double without = alone.shifts(Shops.DAY).get(0).outside().typical();
    // Three hours after it the fine dust of the sanding is there still; the sanding is not.
    assertThat(with).isGreaterThan(without).isLessThan(3.125);
  }

  @Test
  void a_break_of_an_hour_goes_on_with_the_shift_and_one_of_two_ends_it() {
    Night pause =
        new Night(
            new Shops().me("22:00", 90, "assembly of oak"),
            new Shops().me("00:30", 60, "assembly of oak"));
    assertThat(pause.shifts(Shops.DAY)).hasSize(1);
    Night rest =
        new Night(
            new Shops().me("22:00", 60, "assembly of oak"),
            new Shops().me("01:00", 60, "assembly of oak"));
    assertThat(rest.shifts(Shops.DAY)).isEmpty();
    assertThat(rest.shifts(NEXT)).isEmpty();
  }

  @Test
  void work_that_ends_at_midnight_and_is_not_gone_on_with_is_no_night_shift() {
    Night evening = new Night(new Shops().me("23:00", 60, "assembly of oak"), new Shops());
    assertThat(evening.shifts(Shops.DAY)).isEmpty();
  }

  @Test
  void somebody_elses_work_after_midnight_does_not_make_it_longer() {
    Night two =
        new Night(
            new Shops().me("23:00", 60, "assembly of oak"),
            new Shops().did("Ana", "shop", "00:00", 60, "assembly of oak"));
    assertThat(two.shifts(Shops.DAY)).isEmpty();
  }

  @Test
  void a_night_longer_than_a_day_counts_its_last_24_hours() {
    Night endless =
        new Night(
            new Shops().me("06:00", 900, "assembly of oak").me("22:00", 120, "assembly of oak"),
            new Shops().me("00:00", 480, "assembly of oak"));
    NightShift shift = endless.shifts(Shops.DAY).get(0);
    assertThat(shift.startMinute()).isEqualTo(LocalTime.of(8, 0).toSecondOfDay() / 60);
    assertThat(shift.endMinute()).isEqualTo(480);
  }

  @Test
  void dates_beside_the_day_are_asked_for_only_where_work_lies_near_midnight() {
    Shops noon = new Shops().me("12:00", 60, "assembly of oak");
    DayReport day =
        Day.report(
            noon.reckoning("me"),
            date -> {
              throw new AssertionError("asked for " + date);
            });
    assertThat(day.limits().nights()).isEmpty();
  }
}
