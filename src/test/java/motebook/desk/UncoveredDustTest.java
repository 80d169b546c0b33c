package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.LimitReach.State;
import motebook.journal.Logged;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Work;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lead paint and treated wood: no limit of wood dust says enough about their dust. */
class UncoveredDustTest {

  private static PlanReport plan(Shops day, String what) {
    Work work = new Shops().me("13:00", 30, what).sessions().get(0).work();
    return Plan.report(work, new Logged(day.sessions(), List.of()), day.shop(), date -> List.of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"old-paint", "treated"})
  void a_day_of_it_alone_is_held_against_no_limit(String material) {
    for (String set : List.of("acgih", "niosh", "osha", "california", "eu", "great-britain")) {
      DayReport day =
          new Shops().limits(set).me("09:00", 30, "block-sanding of " + material).report();
      assertThat(day.limit()).as(set).isEmpty();
      assertThat(day.limits().beside()).as(set).isEmpty();
      assertThat(day.limits().longDay()).isEmpty();
      assertThat(day.outside().chanceOverLimit()).isEqualTo(OptionalDouble.empty());
      assertThat(day.inside().chanceOverLimit()).isEqualTo(OptionalDouble.empty());
      assertThat(day.outside().estimate().central()).isPositive();
      assertThat(day.uncovered().orElseThrow().percent()).isEqualTo(100);
      assertThat(day.remarks()).noneMatch(remark -> remark.contains("No limit of the set"));
    }
  }

  @Test
  void on_a_mixed_day_all_dust_together_is_held_against_the_limit_and_its_part_is_told() {
    DayReport day =
        new Shops()
            .me("09:00", 60, "orbital-sanding of oak")
            .me("13:00", 30, "orbital-sanding of old-paint")
            .report();
    HeldLimit held = day.limit().orElseThrow();
    assertThat(held.limit().key()).isEqualTo("acgih-wood");
    assertThat(held.ratio()).isCloseTo(day.outside().estimate().central(), within(1e-9));
    assertThat(day.outside().chanceOverLimit())
        .hasValueCloseTo(day.outside().estimate().chanceOver(1), within(1e-9));
    assertThat(day.uncovered().orElseThrow().percent())
        .isCloseTo(day.sessions().get(1).sharePercent(), within(1e-9));
    assertThat(day.uncovered().orElseThrow().alone()).isFalse();
  }

  @Test
  void somebody_elses_old_paint_counts_where_it_is_breathed() {
    DayReport day =
        new Shops()
            .me("09:00", 60, "assembly of oak")
            .did("Ana", "shop", "09:00", 60, "orbital-sanding of old-paint")
            .report();
    assertThat(day.uncovered().orElseThrow().percent())
        .isCloseTo(day.others().get(0).sharePercent(), within(1e-9));
  }

  /** Whatever was done beside it, old paint never lowers the multiple or the chance. */
  @Property(tries = 150)
  void dust_that_no_limit_covers_never_lowers_a_day(
      @ForAll @IntRange(min = 1, max = 480) int oak,
      @ForAll @IntRange(min = 1, max = 120) int paint,
      @ForAll @IntRange(min = 0, max = 3) int set) {
    String limits = List.of("acgih", "niosh", "osha", "california").get(set);
    Shops without = new Shops().limits(limits).me("06:00", oak, "hand-carving of oak");
    HeldLimit alone = without.report().limit().orElseThrow();
    HeldLimit mixed =
        without.me("16:00", paint, "blow-down of old-paint").report().limit().orElseThrow();
    assertThat(mixed.ratio()).isGreaterThanOrEqualTo(alone.ratio());
    assertThat(mixed.chanceOutside()).isGreaterThanOrEqualTo(alone.chanceOutside());
    assertThat(mixed.chanceInside()).isGreaterThanOrEqualTo(alone.chanceInside());
  }

  @Test
  void a_plan_of_it_names_no_time_and_no_help() {
    PlanReport plan = plan(new Shops(), "orbital-sanding of old-paint");
    assertThat(plan.reach())
        .isEqualTo(
            new LimitReach(
                State.UNCOVERED,
                new LimitReach.Moments(Optional.empty(), Optional.empty()),
                Optional.empty()));
    assertThat(plan.helps()).isEmpty();
    assertThat(plan(new Shops(), "orbital-sanding of oak").helps()).isNotEmpty();
  }

  @Test
  void plans_with_it_are_not_ranked_by_how_little_dust_they_make() {
    PlanReport oak = plan(new Shops(), "orbital-sanding of oak");
    PlanReport paint = plan(new Shops(), "block-sanding of old-paint");
    assertThat(new Plans(List.of(oak, paint)).ranked()).isEmpty();
    assertThat(new Plans(List.of(oak, oak)).ranked()).hasSize(2);
  }

  @Test
  void a_stopwatch_on_it_has_no_minutes_left() {
    Work work = new Shops().me("09:30", 30, "orbital-sanding of treated").sessions().get(0).work();
    Stopwatch watch =
        new Stopwatch(
            1,
            "me",
            "any",
            List.of(
                new Stopwatch.Stretch(Instant.parse("2026-03-02T09:30:00Z"), Optional.empty())));
    Timing timing =
        Timing.of(
            watch,
            Optional.empty(),
            List.of(work),
            Shops.DAY.atTime(10, 0),
            List.of(),
            new Shops().shop());
    assertThat(timing.minutesLeft()).isEmpty();
    assertThat(timing.reach().orElseThrow().state()).isEqualTo(State.UNCOVERED);
  }

  @Test
  void the_change_that_would_help_most_is_looked_for_in_other_work() {
    Shops shops =
        new Shops()
            .me("09:00", 120, "orbital-sanding of old-paint")
            .me("13:00", 30, "orbital-sanding of oak");
    DayReckoning day = shops.reckoning("me");
    WeekReport week = Week.report(Shops.DAY, "me", List.of(day), date -> List.of());
    assertThat(week.contributions().get(0).job().material().key()).isEqualTo("old-paint");
    assertThat(BestChange.of(week, List.of(day)).map(best -> best.job().material().key()))
        .isNotEqualTo(Optional.of("old-paint"));
    DayReckoning paintOnly =
        new Shops().me("09:00", 120, "orbital-sanding of old-paint").reckoning("me");
    WeekReport lead = Week.report(Shops.DAY, "me", List.of(paintOnly), date -> List.of());
    assertThat(BestChange.of(lead, List.of(paintOnly))).isEmpty();
    assertThat(lead.daysOverLimit()).isZero();
  }

  @Test
  void a_night_of_it_has_no_limit_either() {
    Session before =
        new Session(
            7,
            new Shops()
                .me("23:00", 60, "block-sanding of old-paint")
                .sessions()
                .get(0)
                .work()
                .at(Shops.DAY.minusDays(1), LocalTime.of(23, 0)));
    Shops shops = new Shops().me("00:00", 60, "block-sanding of old-paint");
    DayReport day = Day.report(shops.reckoning("me"), date -> List.of(before));
    assertThat(day.limits().nights().get(0).limit()).isEmpty();
    assertThat(day.limits().nights().get(0).uncovered().orElseThrow().alone()).isTrue();
  }
}
