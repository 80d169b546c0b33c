package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.MaskUse;
import motebook.model.Upkeep;
import org.junit.jupiter.api.Test;

/** What a week used up of masks and filters. */
class WeekWearTest {
  private static final LocalDate MONDAY = Workshop.DAY;
  private static final OptionalDouble NO = OptionalDouble.empty();

  private static WeekWear week(Workshop shop) {
    return shop.care(MONDAY.plusDays(6)).week(MONDAY, "me");
  }

  // 25 mg/m³ for an hour at 40 L/min puts 60 mg on it (ElementCareTest).
  @Test
  void hours_and_load_are_those_of_the_week_alone() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "p100", MONDAY.minusDays(20), true, OptionalDouble.of(40), NO);
    shop.wore(MONDAY.minusDays(3), "09:00", 120, "half mask", "orbital-sanding of oak");
    shop.wore(MONDAY.plusDays(2), "09:00", 60, "half mask", "orbital-sanding of oak");
    WeekWear.OfElement used = week(shop).elements().get(0);
    assertThat(used.hours()).isEqualTo(1);
    assertThat(used.loadMg().typical()).isCloseTo(60, within(1e-9));
    assertThat(used.hoursLimit()).hasValue(40);
    assertThat(used.spent()).isEmpty();
    assertThat(used.putOn()).isEmpty();
  }

  @Test
  void hours_are_told_person_by_person() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "p100", MONDAY);
    shop.wore(MONDAY, "09:00", 60, "half mask", "orbital-sanding of oak");
    shop.session(
        "Ana", MONDAY, "11:00", 30, "assembly", Optional.of(new MaskUse("half mask", true, 100)));
    assertThat(week(shop).elements().get(0).hoursByPerson())
        .containsEntry("me", 1.0)
        .containsEntry("Ana", 0.5);
  }

  @Test
  void a_change_shows_the_one_taken_off_and_the_one_put_on() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "p100", MONDAY.minusDays(30)).change(0, MONDAY.plusDays(1));
    WeekWear week = week(shop);
    assertThat(week.elements()).hasSize(2);
    assertThat(week.elements().get(0).takenOff().orElseThrow().on()).isEqualTo(MONDAY.plusDays(1));
    assertThat(week.elements().get(1).putOn()).contains(MONDAY.plusDays(1));
  }

  @Test
  void an_element_that_ran_out_in_the_week_is_spent_and_not_in_the_next() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "p100", MONDAY.minusDays(9), true, OptionalDouble.of(2), NO);
    shop.wore(MONDAY.minusDays(7), "09:00", 90, "half mask", "assembly");
    shop.wore(MONDAY.plusDays(3), "09:00", 60, "half mask", "assembly");
    assertThat(week(shop).elements().get(0).spent())
        .singleElement()
        .satisfies(
            clock -> assertThat(clock.ranOut().orElseThrow().date()).isEqualTo(MONDAY.plusDays(3)));
    LocalDate next = MONDAY.plusDays(7);
    assertThat(shop.care(next.plusDays(6)).week(next, "me").isEmpty()).isTrue();
  }

  @Test
  void one_changed_long_ago_and_a_spare_are_not_told() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "p100", MONDAY.minusDays(60)).change(0, MONDAY.minusDays(30));
    assertThat(week(shop).isEmpty()).isTrue();
  }

  @Test
  void a_filter_tells_its_run_hours_and_upkeep_of_the_week_and_that_it_came_due() {
    Workshop shop = new Workshop();
    shop.filter("bag", "collector", MONDAY.minusDays(14), OptionalDouble.of(3), NO);
    shop.session(
        "me", MONDAY.minusDays(6), "09:00", 120, "table-saw of oak", Optional.empty(), "collector");
    shop.session("me", MONDAY, "09:00", 90, "table-saw of oak", Optional.empty(), "collector");
    WeekWear.OfFilter due = week(shop).filters().get(0);
    assertThat(due.runHours()).isEqualTo(1.5);
    assertThat(due.spent()).hasSize(1);
    shop.did(Upkeep.What.CLEANED, "bag", MONDAY.plusDays(4));
    assertThat(week(shop).filters().get(0).upkeep()).hasSize(1);
  }

  @Test
  void nothing_used_is_nothing_told() {
    assertThat(week(new Workshop().halfMask()).isEmpty()).isTrue();
  }
}
