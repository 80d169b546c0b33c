package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.Attribution.Share;
import motebook.model.Session;
import motebook.science.Dose;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What is said of a week: where its dust came from, its limit, its trend, what would have helped.
 */
class WeekReviewTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static Attribution parts(Shops shops) {
    return Attribution.of(List.of(shops.reckoning("me")));
  }

  private static WeekReview review(Shops shops) {
    DayReckoning day = shops.reckoning("me");
    List<DayReckoning> days = new ArrayList<>(List.of(day));
    for (int i = 1; i < 7; i++) {
      days.add(new DayReckoning(Shops.DAY.plusDays(i), "me", List.of(), shops.shop()));
    }
    WeekReport week = Week.report(Shops.DAY, "me", days, date -> List.of());
    Trend none = Trend.of(Shops.DAY, Trend.QUARTER, any -> OptionalDouble.empty());
    return new WeekReview(
        week,
        Attribution.of(days),
        none,
        none,
        Optional.empty(),
        BestChange.of(week, days),
        WeekWear.NONE);
  }

  @Test
  void what_the_air_still_held_in_a_gap_and_a_later_session_is_left_over() {
    Shops alone = new Shops().me("09:00", 60, "orbital-sanding of oak");
    double whileMade = alone.reckoning("me").expectedTotal();
    DayReckoning day =
        new Shops()
            .me("09:00", 60, "orbital-sanding of oak")
            .me("10:20", 10, "drilling of oak")
            .reckoning("me");
    double sanding = day.expected(day.sources().get(0));
    assertThat(Attribution.of(List.of(day)).leftOverPercent())
        .isCloseTo(100 * (sanding - whileMade) / day.expectedTotal(), EXACT)
        .isGreaterThan(5);
  }

  @Test
  void dust_that_somebody_is_still_making_is_not_left_over_even_in_a_gap() {
    Shops shops =
        new Shops()
            .me("09:00", 30, "in-shop")
            .me("09:50", 30, "in-shop")
            .did("Ana", "shop", "09:00", 80, "orbital-sanding of oak");
    assertThat(parts(shops).leftOverPercent()).isZero();
    assertThat(parts(shops).byPerson()).singleElement().extracting(Share::of).isEqualTo("Ana");
  }

  @Test
  void all_of_it_is_left_over_where_somebody_comes_in_when_the_tool_has_stopped() {
    Shops shops =
        new Shops()
            .did("Ana", "shop", "09:00", 60, "orbital-sanding of oak")
            .me("10:00", 30, "in-shop");
    assertThat(parts(shops).leftOverPercent()).isCloseTo(100, EXACT);
  }

  @Test
  void a_single_session_leaves_nothing_over_and_outdoors_nothing_is() {
    assertThat(parts(new Shops().me("09:00", 60, "table-saw of oak")).leftOverPercent()).isZero();
    Shops outdoors =
        new Shops()
            .did("me", "yard", "09:00", 60, "table-saw of oak")
            .did("me", "yard", "10:10", 60, "assembly of oak");
    assertThat(parts(outdoors).leftOverPercent()).isZero();
  }

  @Test
  void each_cut_adds_to_100() {
    Shops shops =
        new Shops()
            .me("09:00", 40, "orbital-sanding of mdf", "tool-vacuum")
            .me("10:00", 20, "sweeping")
            .did("me", "barn", "13:00", 50, "table-saw of pine", "collector")
            .did("Ana", "shop", "09:30", 60, "hand-router of plywood")
            .did("Bo", "barn", "12:00", 70, "block-sanding of oak");
    Attribution parts = parts(shops);
    assertThat(total(parts.byOperation())).isCloseTo(100, EXACT);
    assertThat(total(parts.byMaterial())).isCloseTo(100, EXACT);
    assertThat(total(parts.byPlace())).isCloseTo(100, EXACT);
    assertThat(total(parts.byPerson())).isCloseTo(100, EXACT);
    assertThat(parts.byPlace()).extracting(Share::of).containsExactlyInAnyOrder("shop", "barn");
    assertThat(parts.leftOverPercent()).isBetween(1.0, 99.0);
  }

  private static double total(List<? extends Share<?>> shares) {
    return shares.stream().mapToDouble(Share::percent).sum();
  }

  @Test
  void a_twelve_hour_day_is_held_against_three_quarters_of_its_limit_and_no_less() {
    // Against an 8-h TWA only (24 − 12)/16 is left to apply.
    WeekReview review =
        review(new Shops().me("06:00", 360, "assembly of oak").me("12:00", 360, "assembly of oak"));
    LongDay day = review.week().longDays().get(0);
    assertThat(day.hours()).isEqualTo(12);
    assertThat(day.adjustedMgPerM3()).isCloseTo(0.75, EXACT);
    assertThat(day.over()).isTrue();
    assertThat(review.week().days().get(0).limit().orElseThrow().limit().mgPerM3()).isEqualTo(1);
  }

  @Test
  void eight_hours_are_no_long_day() {
    assertThat(review(new Shops().me("08:00", 480, "assembly of oak")).week().longDays()).isEmpty();
  }

  @Test
  void the_mean_of_the_days_is_the_sum_of_their_best_estimates_over_forty_hours() {
    // Two days that share the operation and the model but not the day's own part: by Lo's formula
    // the median of both together lies above the sum of their medians.
    Shops shops = new Shops().me("06:00", 120, "assembly of oak");
    List<DayReckoning> days = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      LocalDate date = Shops.DAY.plusDays(i);
      List<Session> work =
          i < 2
              ? List.of(new Session(i, shops.sessions().get(0).work().at(date, LocalTime.of(6, 0))))
              : List.of();
      days.add(new DayReckoning(date, "me", work, shops.shop()));
    }
    WeekReport week = Week.report(Shops.DAY, "me", days, date -> List.of());
    double day = shops.report().outside().estimate().central();
    assertThat(week.meanOfDays()).isCloseTo(2 * day * 8 / 40, EXACT);
    assertThat(week.outsideMean().central()).isGreaterThan(week.meanOfDays());
  }

  @Test
  void the_best_change_is_what_the_model_reckons_with_that_control() {
    Shops bare =
        new Shops().me("09:00", 60, "orbital-sanding of oak").me("10:00", 60, "assembly of oak");
    BestChange best = review(bare).best().orElseThrow();
    assertThat(best.job().operation().key()).isEqualTo("orbital-sanding");
    // The lowest pass factor of the table's rows for it, 0.15.
    assertThat(best.control().key()).isEqualTo("tool-vacuum");
    Shops extracted =
        new Shops()
            .me("09:00", 60, "orbital-sanding of oak", "tool-vacuum")
            .me("10:00", 60, "assembly of oak");
    assertThat(best.would())
        .isCloseTo(
            extracted.report().outside().estimate().central() * Dose.EIGHT_HOURS / Dose.FORTY_HOURS,
            EXACT);
    assertThat(best.was()).isEqualTo(review(bare).week().meanOfDays());
  }

  @Test
  void a_control_that_was_used_is_not_advised_again() {
    Shops extracted = new Shops().me("09:00", 60, "orbital-sanding of oak", "tool-vacuum");
    assertThat(review(extracted).best().map(best -> best.control().key()).orElse(""))
        .isNotEqualTo("tool-vacuum");
  }

  @Test
  void a_cleaner_of_unknown_flow_and_an_open_door_outdoors_are_not_advised() {
    Shops outdoors = new Shops().did("me", "yard", "09:00", 60, "assembly of oak");
    assertThat(review(outdoors).best()).isEmpty();
  }
}
