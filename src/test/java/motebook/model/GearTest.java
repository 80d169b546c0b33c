package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GearTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Element element(Optional<LocalDate> opened, LocalDate from) {
    return new Element(
        1,
        "filters",
        "half mask",
        "Organic Vapour/P100",
        true,
        from,
        opened,
        Optional.empty(),
        NONE,
        OptionalDouble.of(200),
        NONE,
        Optional.empty());
  }

  private static Element worn() {
    return element(Optional.of(MONDAY), MONDAY);
  }

  private static ShopFilter filter(OptionalDouble every, OptionalDouble clean, OptionalDouble top) {
    return new ShopFilter(
        1, "bag", "collector", "shop", MONDAY, every, NONE, clean, top, Optional.empty());
  }

  private static Respirator mask(String... people) {
    return new Respirator(
        1,
        "half mask",
        Scheme.OSHA,
        "air-purifying",
        "half mask",
        Optional.of("M"),
        Optional.empty(),
        List.of(people),
        Optional.of(new Retirement(MONDAY, "damaged")));
  }

  @Test
  void the_class_of_an_element_is_kept_as_a_key() {
    assertThat(worn().elementClass()).isEqualTo("organic-vapour-p100");
  }

  @Test
  void an_element_counts_from_its_first_day_to_the_day_before_it_was_taken_off() {
    Element gone = worn().retired(new Retirement(MONDAY.plusDays(3), Retirement.CHANGED));
    assertThat(gone.wornOn(MONDAY.minusDays(1))).isFalse();
    assertThat(gone.wornOn(MONDAY)).isTrue();
    assertThat(gone.wornOn(MONDAY.plusDays(2))).isTrue();
    assertThat(gone.wornOn(MONDAY.plusDays(3))).isFalse();
    assertThat(gone.successor(MONDAY.plusDays(3)).wornOn(MONDAY.plusDays(3))).isTrue();
  }

  @Test
  void a_sealed_element_is_on_no_mask_until_it_is_opened() {
    Element sealed = element(Optional.empty(), MONDAY);
    assertThat(sealed.wornOn(MONDAY.plusDays(1))).isFalse();
    assertThat(sealed.sealedOn(MONDAY.plusDays(1))).isTrue();
    Element open = sealed.opened(MONDAY.plusDays(4));
    assertThat(open.wornOn(MONDAY.plusDays(3))).isFalse();
    assertThat(open.sealedOn(MONDAY.plusDays(3))).isTrue();
    assertThat(open.wornOn(MONDAY.plusDays(4))).isTrue();
    assertThat(open.sealedOn(MONDAY.plusDays(4))).isFalse();
  }

  @Test
  void a_successor_keeps_kind_and_limits_and_forgets_the_rest() {
    Element next = worn().successor(MONDAY.plusDays(9));
    assertThat(next)
        .isEqualTo(
            new Element(
                0,
                "filters",
                "half mask",
                "organic-vapour-p100",
                true,
                MONDAY.plusDays(9),
                Optional.of(MONDAY.plusDays(9)),
                Optional.empty(),
                NONE,
                OptionalDouble.of(200),
                NONE,
                Optional.empty()));
  }

  @Test
  void a_change_before_the_opening_is_refused() {
    assertThatThrownBy(() -> worn().retired(new Retirement(MONDAY.minusDays(1), "changed")))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "\"filters\" was opened on 2026-03-02, so it cannot be retired on 2026-03-01. Give"
                + " that day or a later one.");
    assertThatThrownBy(() -> element(Optional.of(MONDAY), MONDAY.minusDays(1)))
        .hasMessageContaining("cannot have been on the mask from 2026-03-01");
  }

  @Test
  void a_limit_of_zero_is_refused() {
    assertThatThrownBy(() -> filter(OptionalDouble.of(0), NONE, NONE))
        .isInstanceOf(Refusal.class)
        .hasMessage("The time between cleanings must be above 0 and at most 100000 h: got 0.");
  }

  @Test
  void a_gauge_needs_two_readings_that_differ() {
    OptionalDouble one = OptionalDouble.of(1);
    assertThatThrownBy(() -> filter(NONE, one, NONE)).hasMessageContaining("both readings");
    assertThatThrownBy(() -> filter(NONE, one, one)).hasMessageContaining("must differ");
    assertThat(filter(NONE, one, OptionalDouble.of(0.4)).gaugeChange()).hasValue(0.4);
  }

  @Test
  void only_the_gauge_has_a_reading() {
    OptionalDouble one = OptionalDouble.of(1);
    assertThatThrownBy(
            () -> new Upkeep(0, "bag", MONDAY, Optional.empty(), Upkeep.What.GAUGE, NONE))
        .hasMessageContaining("Say what the gauge shows");
    assertThatThrownBy(
            () -> new Upkeep(0, "bag", MONDAY, Optional.empty(), Upkeep.What.EMPTIED, one))
        .hasMessageContaining("\"emptied\" stands alone");
    Optional<LocalTime> late = Optional.of(LocalTime.of(17, 5, 59));
    assertThat(new Upkeep(0, "bag", MONDAY, late, Upkeep.What.GAUGE, one).time())
        .contains(LocalTime.of(17, 5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void a_fit_factor_that_is_not_above_zero_is_refused(double factor) {
    assertThatThrownBy(() -> new Quantitative(List.of(200.0, factor)))
        .isInstanceOf(Refusal.class)
        .hasMessageStartingWith("The fit factor must be above 0");
  }

  @Test
  void a_fit_test_needs_something_to_go_by() {
    assertThatThrownBy(() -> new Quantitative(List.of())).hasMessageContaining("1 to 50");
    assertThatThrownBy(() -> new Qualitative("  ", true)).hasMessageContaining("agent");
  }

  @Test
  void hair_is_there_from_its_first_day_to_its_last() {
    Hair hair = new Hair(1, "Ana", MONDAY, Optional.of(MONDAY.plusDays(2)));
    assertThat(hair.on(MONDAY.minusDays(1))).isFalse();
    assertThat(hair.on(MONDAY)).isTrue();
    assertThat(hair.on(MONDAY.plusDays(2))).isTrue();
    assertThat(hair.on(MONDAY.plusDays(3))).isFalse();
    assertThat(new Hair(1, "Ana", MONDAY, Optional.empty()).on(MONDAY.plusYears(1))).isTrue();
    assertThatThrownBy(() -> new Hair(1, "Ana", MONDAY, Optional.of(MONDAY.minusDays(1))))
        .hasMessageContaining("cannot have gone on 2026-03-01");
  }

  @Test
  void a_respirator_is_anybodys_or_that_of_the_people_named() {
    assertThat(mask().isFor("Ana")).isTrue();
    assertThat(mask("Ana").isFor("ANA")).isTrue();
    assertThat(mask("Ana").isFor("me")).isFalse();
    assertThatThrownBy(() -> mask("Ana", "ana")).hasMessageContaining("named twice");
    assertThat(mask().inUseOn(MONDAY)).isTrue();
    assertThat(mask().inUseOn(MONDAY.plusDays(1))).isFalse();
  }

  @Test
  void dates_beyond_belief_are_refused() {
    assertThatThrownBy(() -> element(Optional.empty(), LocalDate.of(3026, 3, 2)))
        .hasMessage("The date 3026-03-02 is outside 1900 to 2199.");
  }

  @Test
  void gear_is_found_by_name_whatever_the_case() {
    Element old = worn().retired(new Retirement(MONDAY.plusDays(3), Retirement.CHANGED));
    Element now = old.successor(MONDAY.plusDays(3));
    FitTest test = new FitTest(1, "half mask", "Ana", MONDAY, new Qualitative("saccharin", true));
    Hair hair = new Hair(2, "Ana", MONDAY, Optional.empty());
    Gear gear =
        new Gear(
            List.of(mask()),
            List.of(old, now),
            List.of(filter(NONE, NONE, NONE)),
            List.of(),
            List.of(test, hair));
    assertThat(gear.respirator("HALF mask")).contains(mask());
    assertThat(gear.respiratorsOn(MONDAY)).containsExactly("half mask");
    assertThat(gear.respiratorsOn(MONDAY.plusDays(1))).isEmpty();
    assertThat(gear.element("Filters")).contains(now);
    assertThat(gear.elementsOn("half mask", MONDAY)).containsExactly(old);
    assertThat(gear.elementsOn("half mask", MONDAY.plusDays(3))).containsExactly(now);
    assertThat(gear.filter("BAG")).isPresent();
    assertThat(gear.fitTests("ana", "half mask")).containsExactly(test);
    assertThat(gear.fit(Hair.class, "ana")).containsExactly(hair);
    assertThat(gear.hairOn("ana", MONDAY)).isTrue();
    assertThat(gear.hairOn("me", MONDAY)).isFalse();
  }
}
