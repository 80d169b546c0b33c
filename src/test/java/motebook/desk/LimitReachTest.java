package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import motebook.desk.LimitReach.Moment;
import motebook.desk.LimitReach.Moments;
import motebook.desk.LimitReach.State;
import motebook.model.Work;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** When work takes its day over the limit; the minutes are derived by src/test/python/limits.py. */
class LimitReachTest {

  private static Work work(String start, String what) {
    return new Shops().me(start, 1, what).sessions().get(0).work();
  }

  private static LimitReach reach(Work work, Shops others) {
    return LimitReach.of(work, 0, others.sessions(), others.shop());
  }

  @Test
  void even_chances_and_one_in_twenty_are_two_moments() {
    LimitReach reach = reach(work("09:00", "orbital-sanding of oak"), new Shops());
    assertThat(reach.state()).isEqualTo(State.JUDGED);
    assertThat(reach.limit().half()).contains(new Moment(24, 9 * 60 + 24));
    assertThat(reach.limit().oneInTwenty()).contains(new Moment(4, 9 * 60 + 4));
  }

  @Test
  void it_goes_around_later_work_of_the_same_person() {
    Shops saw = new Shops().me("09:20", 30, "circular-saw of oak");
    LimitReach reach = reach(work("09:00", "assembly of oak"), saw);
    int minutes = reach.limit().half().orElseThrow().minutes();
    assertThat(minutes).isEqualTo(122);
    // What lies behind the half hour of sawing is reached half an hour later by the clock.
    assertThat(reach.limit().half().orElseThrow().minuteOfDay()).isEqualTo(9 * 60 + 30 + minutes);
  }

  @Test
  void somebody_elses_work_is_no_obstacle() {
    Shops ana = new Shops().did("Ana", "barn", "09:10", 240, "assembly of oak");
    assertThat(reach(work("09:00", "orbital-sanding of oak"), ana).limit().half())
        .contains(new Moment(24, 9 * 60 + 24));
  }

  @Test
  void a_day_that_is_over_without_it_says_so_for_both() {
    Shops over = new Shops().me("07:00", 120, "orbital-sanding of oak");
    LimitReach reach = reach(work("10:00", "drilling of oak"), over);
    assertThat(reach.limit().half()).contains(new Moment(0, 600));
    assertThat(reach.limit().oneInTwenty()).contains(new Moment(0, 600));
  }

  @Test
  void later_work_may_have_used_the_day_up_already() {
    Shops over = new Shops().me("15:00", 120, "orbital-sanding of oak");
    assertThat(reach(work("10:00", "drilling of oak"), over).limit().half())
        .contains(new Moment(0, 600));
  }

  @Test
  void where_no_limit_applies_nothing_is_reached() {
    LimitReach reach = reach(work("09:00", "orbital-sanding of pine"), new Shops().limits("eu"));
    assertThat(reach.state()).isEqualTo(State.NO_LIMIT);
    assertThat(reach.limit()).isEqualTo(new Moments(Optional.empty(), Optional.empty()));
  }

  @Test
  void the_advisory_limit_is_passed_at_its_own_moments_beside_a_legal_one() {
    Work sanding = work("09:00", "orbital-sanding of oak");
    LimitReach osha = reach(sanding, new Shops().limits("osha"));
    assertThat(osha.limit().half().orElseThrow().minutes()).isGreaterThan(120);
    assertThat(osha.advisory().orElseThrow().half()).contains(new Moment(24, 9 * 60 + 24));
    assertThat(reach(sanding, new Shops()).advisory()).isEmpty();
    LimitReach pine = reach(work("09:00", "orbital-sanding of pine"), new Shops().limits("eu"));
    assertThat(pine.advisory().orElseThrow().half()).isPresent();
  }

  /** The minute before the moment the chance is lower, at the moment it is not. */
  @Property(tries = 60)
  void the_moment_is_the_first_minute_at_which_the_chance_is_passed(
      @ForAll @IntRange(min = 0, max = 900) int start,
      @ForAll @IntRange(min = 0, max = 600) int later,
      @ForAll @IntRange(min = 1, max = 120) int lasting) {
    int other = Math.min(start + later, 1439 - lasting);
    Shops day = new Shops();
    if (other > start) {
      day.me(clock(other), lasting, "assembly of oak");
    }
    LimitReach reach = reach(work(clock(start), "circular-saw of oak"), day);
    for (Optional<Moment> moment : List.of(reach.limit().half(), reach.limit().oneInTwenty())) {
      double wanted = moment.equals(reach.limit().half()) ? 0.5 : 0.05;
      moment
          .filter(at -> at.minutes() > 0)
          .ifPresent(
              at -> {
                assertThat(chance(day, start, other, lasting, at.minutes()))
                    .isGreaterThanOrEqualTo(wanted);
                assertThat(chance(day, start, other, lasting, at.minutes() - 1)).isLessThan(wanted);
              });
    }
  }

  private static String clock(int minute) {
    return "%02d:%02d".formatted(minute / 60, minute % 60);
  }

  /** The chance with the work put around the other by hand. */
  private static double chance(Shops day, int start, int other, int lasting, int minutes) {
    Shops all = new Shops();
    day.sessions().forEach(session -> all.did(session.work()));
    int before = other > start ? Math.min(minutes, other - start) : minutes;
    if (before > 0) {
      all.me(clock(start), before, "circular-saw of oak");
    }
    if (minutes > before) {
      all.me(clock(other + lasting), minutes - before, "circular-saw of oak");
    }
    return all.report().outside().chanceOverLimit().orElse(0);
  }
}
