package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.CareClock.Kind;
import motebook.model.Upkeep;
import motebook.model.Upkeep.What;
import org.junit.jupiter.api.Test;

class FilterCareTest {
  private static final LocalDate DAY = Workshop.DAY;
  private static final OptionalDouble NO = OptionalDouble.empty();

  private static FilterStanding standing(Workshop shop) {
    return shop.care(DAY).standing(shop.filters.get(0));
  }

  private static Optional<CareClock> clock(Workshop shop, Kind kind) {
    return standing(shop).clocks().stream().filter(c -> c.kind() == kind).findFirst();
  }

  private static void ran(Workshop shop, String person, LocalDate day, String at, int minutes) {
    shop.session(person, day, at, minutes, "table-saw of oak", Optional.empty(), "collector");
  }

  @Test
  void it_runs_while_its_control_is_used_and_once_for_two() {
    Workshop shop = new Workshop().filter("bag", "collector", DAY, OptionalDouble.of(10), NO);
    ran(shop, "me", DAY, "09:00", 60);
    ran(shop, "Ana", DAY, "09:30", 60);
    ran(shop, "me", DAY, "12:00", 30);
    shop.session("me", DAY, "14:00", 60, "table-saw of oak", Optional.empty());
    ran(shop, "me", DAY.minusDays(1), "09:00", 60);
    assertThat(standing(shop).runHours()).isCloseTo(2, within(1e-9));
    assertThat(clock(shop, Kind.CLEANING).orElseThrow().used()).isCloseTo(2, within(1e-9));
  }

  @Test
  void a_vacuum_runs_with_the_vacuum_on_the_tool_and_a_cleaner_runs_on() {
    Workshop shop = new Workshop().cleanerRunsOn(30);
    shop.filter("hose", "vacuum", DAY, NO, NO).filter("ceiling", "air-cleaner", DAY, NO, NO);
    shop.session(
        "me",
        DAY,
        "09:00",
        60,
        "orbital-sanding of oak",
        Optional.empty(),
        "tool-vacuum",
        "air-cleaner");
    assertThat(standing(shop).runHours()).isEqualTo(1);
    assertThat(shop.care(DAY).standing(shop.filters.get(1)).runHours()).isEqualTo(1.5);
  }

  @Test
  void cleaning_and_replacing_begin_their_clocks_anew() {
    Workshop shop =
        new Workshop()
            .filter(
                "bag", "collector", DAY.minusDays(9), OptionalDouble.of(3), OptionalDouble.of(9));
    ran(shop, "me", DAY.minusDays(9), "09:00", 120);
    ran(shop, "me", DAY.minusDays(8), "09:00", 120);
    assertThat(clock(shop, Kind.CLEANING).orElseThrow().ranOut().orElseThrow().date())
        .isEqualTo(DAY.minusDays(8));
    shop.did(What.CLEANED, "bag", DAY.minusDays(8));
    ran(shop, "me", DAY.minusDays(7), "09:00", 60);
    assertThat(clock(shop, Kind.CLEANING).orElseThrow().used()).isCloseTo(1, within(1e-9));
    assertThat(clock(shop, Kind.CHANGE).orElseThrow().used()).isCloseTo(5, within(1e-9));
    shop.did(What.REPLACED, "bag", DAY.minusDays(6));
    ran(shop, "me", DAY.minusDays(5), "09:00", 30);
    assertThat(clock(shop, Kind.CHANGE).orElseThrow().used()).isCloseTo(0.5, within(1e-9));
    assertThat(clock(shop, Kind.CLEANING).orElseThrow().used()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void emptied_a_bag_begins_its_hours_again_unless_its_clock_is_for_cleaning() {
    for (OptionalDouble cleanEvery : List.of(NO, OptionalDouble.of(40))) {
      Workshop shop =
          new Workshop()
              .filter("bag", "collector", DAY.minusDays(9), cleanEvery, OptionalDouble.of(60));
      ran(shop, "me", DAY.minusDays(9), "09:00", 120);
      shop.did(What.EMPTIED, "bag", DAY.minusDays(8));
      ran(shop, "me", DAY.minusDays(7), "09:00", 60);
      assertThat(standing(shop).runHours()).isEqualTo(cleanEvery.isPresent() ? 3 : 1);
      assertThat(clock(shop, Kind.CHANGE).orElseThrow().used()).isCloseTo(3, within(1e-9));
    }
  }

  @Test
  void upkeep_at_a_time_of_the_day_divides_that_day() {
    Workshop shop = new Workshop().filter("bag", "collector", DAY, OptionalDouble.of(10), NO);
    ran(shop, "me", DAY, "09:00", 120);
    shop.upkeep.add(new Upkeep(1, "bag", DAY, Optional.of(LocalTime.of(10, 15)), What.CLEANED, NO));
    assertThat(clock(shop, Kind.CLEANING).orElseThrow().used()).isCloseTo(0.75, within(1e-9));
  }

  // Emptied after 2, 4 and 3 run hours: the middle is 3.
  @Test
  void the_next_emptying_follows_the_owners_own_habit() {
    Workshop shop = new Workshop().filter("bag", "collector", DAY.minusDays(20), NO, NO);
    assertThat(clock(shop, Kind.EMPTYING)).isEmpty();
    shop.did(What.EMPTIED, "bag", DAY.minusDays(20));
    int[] hours = {2, 4, 3};
    LocalDate day = DAY.minusDays(20);
    for (int stretch : hours) {
      day = day.plusDays(3);
      ran(shop, "me", day, "09:00", 60 * stretch);
      shop.did(What.EMPTIED, "bag", day);
    }
    ran(shop, "me", DAY, "09:00", 90);
    CareClock emptying = clock(shop, Kind.EMPTYING).orElseThrow();
    assertThat(emptying.limit()).isCloseTo(3, within(1e-9));
    assertThat(emptying.used()).isCloseTo(1.5, within(1e-9));
    // 10.5 h in 4 working days; 1.5 h are left
    assertThat(emptying.workingDaysLeft()).hasValueCloseTo(1.5 / (10.5 / 4), within(1e-9));
  }

  @Test
  void the_middle_of_an_even_count_lies_between_the_two() {
    assertThat(FilterCare.median(List.of(4.0, 1.0, 3.0, 10.0))).isEqualTo(3.5);
    assertThat(FilterCare.median(List.of())).isZero();
  }

  // Clean 0.5, change at 2.5; 1.5 after 4 run hours is half of it, so 4 h more are left.
  @Test
  void the_gauge_is_followed_straight_on_from_its_clean_reading() {
    Workshop shop = new Workshop().gauged("drum", "collector", DAY.minusDays(9), 0.5, 2.5);
    ran(shop, "me", DAY.minusDays(8), "09:00", 240);
    shop.read("drum", DAY.minusDays(8), 1.5);
    ran(shop, "me", DAY.minusDays(7), "09:00", 60);
    CareClock gauge = clock(shop, Kind.GAUGE).orElseThrow();
    assertThat(gauge.used()).isCloseTo(0.5, within(1e-9));
    // 3 h left at 5 h in 2 working days
    assertThat(gauge.workingDaysLeft()).hasValueCloseTo(3 / 2.5, within(1e-9));
    shop.read("drum", DAY.minusDays(1), 2.6);
    assertThat(clock(shop, Kind.GAUGE).orElseThrow().ranOut().orElseThrow().date())
        .isEqualTo(DAY.minusDays(1));
    shop.did(What.REPLACED, "drum", DAY);
    assertThat(clock(shop, Kind.GAUGE)).isEmpty();
  }

  @Test
  void a_gauge_that_falls_as_the_filter_clogs_is_read_the_other_way() {
    Workshop shop = new Workshop().gauged("flow", "collector", DAY.minusDays(9), 10, 6);
    shop.read("flow", DAY.minusDays(1), 7);
    assertThat(clock(shop, Kind.GAUGE).orElseThrow().used()).isCloseTo(0.75, within(1e-9));
  }

  @Test
  void in_the_uk_the_exhaust_is_examined_every_fourteen_months() {
    Workshop shop = new Workshop().filter("bag", "collector", DAY.minusMonths(15), NO, NO);
    assertThat(clock(shop, Kind.EXAMINATION)).isEmpty();
    shop.limits("great-britain");
    assertThat(clock(shop, Kind.EXAMINATION).orElseThrow().ends()).contains(DAY.minusMonths(1));
    shop.did(What.INSPECTED, "bag", DAY.minusMonths(2));
    assertThat(clock(shop, Kind.EXAMINATION).orElseThrow().ends()).contains(DAY.plusMonths(12));
  }
}
