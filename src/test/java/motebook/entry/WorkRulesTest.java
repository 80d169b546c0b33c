package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Action;
import motebook.model.MaskUse;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

class WorkRulesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

  private static Work work(String operation, String place, String... controls) {
    return new Work(
        "me",
        place,
        DAY,
        LocalTime.of(9, 0),
        30,
        operation,
        Optional.of("oak"),
        List.of(controls),
        Optional.empty(),
        "");
  }

  private static void assertRefused(Work work, Scene scene, String... parts) {
    assertThatThrownBy(() -> WorkRules.check(work, scene))
        .isInstanceOf(Refusal.class)
        .message()
        .contains(parts);
  }

  @Test
  void work_that_keeps_the_rules_passes() {
    WorkRules.check(
        work("table-saw", "Big Garage", "collector", "air-cleaner", "window-fan", "doors-open"),
        Scenes.usual());
    assertThat(WorkRules.breach(work("sweeping", "yard", "damp-sweeping"), Scenes.usual()))
        .isEmpty();
  }

  @Test
  void work_may_end_in_this_minute_but_not_later() {
    Work ends = SpokenLine.read("30m table saw", Scenes.usual());
    WorkRules.check(ends, Scenes.usual());
    assertRefused(
        ends,
        Scenes.at(Scenes.NOW.minusMinutes(1)),
        "would end at 14:30 on 2026-03-04, which is still to come: it is 14:29 on 2026-03-04");
  }

  @Test
  void a_control_that_does_not_serve_is_refused_with_what_it_serves_and_what_would() {
    assertRefused(
        work("sweeping", "shop", "overhead-hood"),
        Scenes.usual(),
        "Overhead hood does not help with dry sweeping. It works with table saw.",
        "For dry sweeping there are damp sweeping, air cleaner, doors open and window fan.");
    assertRefused(
        work("sweeping", "yard", "overhead-hood"),
        Scenes.usual(),
        "For dry sweeping there are damp sweeping.");
  }

  @Test
  void a_control_of_the_room_does_nothing_outdoors() {
    for (String control : List.of("air-cleaner", "doors-open", "window-fan")) {
      assertRefused(
          work("table-saw", "yard", control), Scenes.usual(), "yard is outdoors. Leave it out.");
    }
  }

  @Test
  void a_flow_that_the_book_does_not_know_is_asked_for() {
    assertRefused(
        work("table-saw", "shop", "air-cleaner"),
        Scenes.usual(),
        "The book does not know the clean-air flow of the air cleaner in shop: give it to the place once");
    assertThatThrownBy(
            () -> WorkRules.check(work("table-saw", "shop", "air-cleaner"), Scenes.usual()))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal ->
                assertThat(refusal.next())
                    .contains(new Action.GiveFlow("shop", Action.Flow.AIR_CLEANER)));
  }

  @Test
  void a_respirator_must_be_in_the_book() {
    Work masked =
        new Work(
            "me",
            "shop",
            DAY,
            LocalTime.NOON,
            30,
            "assembly",
            Optional.empty(),
            List.of(),
            Optional.of(new MaskUse("half mask", true, 100)),
            "");
    assertRefused(
        masked,
        Scenes.usual(),
        "holds no respirator \"half mask\" yet",
        "Leave \"wearing half mask\" out");
    assertRefused(masked, Scenes.masks("hood"), "It holds hood.");
    WorkRules.check(masked, Scenes.masks("Half-Mask"));
  }

  @Test
  void what_a_form_or_an_import_names_must_be_known() {
    assertRefused(
        work("orbitel", "shop"), Scenes.usual(), "\"orbitel\" is no operation", "table-saw");
    assertRefused(work("assembly", "shop", "x"), Scenes.usual(), "\"x\" is no control", "tool-bag");
    assertRefused(work("assembly", "attic"), Scenes.usual(), "no place \"attic\" on 2026-03-04");
    Work other = work("assembly", "shop");
    Work byStranger =
        new Work(
            "Zoë",
            "shop",
            DAY,
            other.start(),
            30,
            "assembly",
            Optional.of("jade"),
            List.of(),
            Optional.empty(),
            "");
    assertRefused(byStranger, Scenes.usual(), "\"jade\" is no material");
    Work noMaterial =
        new Work(
            "Zoë",
            "shop",
            DAY,
            other.start(),
            30,
            "assembly",
            Optional.empty(),
            List.of(),
            Optional.empty(),
            "");
    assertRefused(noMaterial, Scenes.usual(), "no person \"Zoë\". It has me and Ana Lee.");
  }

  @Test
  void a_place_is_taken_as_it_was_on_the_day() {
    Place before = new Place(1, "shop", Scenes.GARAGE.surroundings());
    Scene scene =
        new Scene(
            Scenes.NOW,
            "me",
            "shop",
            Scenes.usual().people(),
            date -> List.of(date.isBefore(DAY) ? before : Scenes.SHOP),
            List.of(),
            Scenes.usual().reference());
    Refusals.of("30m table saw with air cleaner", scene).at("air cleaner");
    assertThat(
            SpokenLine.read("30m table saw with air cleaner on yesterday at 9:00", scene)
                .controls())
        .containsExactly("air-cleaner");
  }
}
