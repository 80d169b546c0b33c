package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.OptionalDouble;
import motebook.desk.CareClock.Kind;
import motebook.desk.DueItem.State;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Training;
import motebook.model.OwnFigure;
import motebook.model.Scheme;
import motebook.model.Session;
import motebook.model.Upkeep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each choice of the owner changes what it is a choice of. */
class CareChoicesTest {
  private static final LocalDate DAY = Workshop.DAY;
  private static final OptionalDouble NO = OptionalDouble.empty();

  private static CareClock clock(Workshop shop, Kind kind) {
    return shop.standing(0, DAY).clocks().stream()
        .filter(clock -> clock.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static DueItem due(Workshop shop, DueItem.Kind kind) {
    return shop.care(DAY).ahead().items().stream()
        .filter(item -> item.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** Twenty minutes in 200 ppm of toluene a day, five days running. */
  private static Workshop lacquering() {
    Workshop shop = new Workshop().halfMask();
    shop.element("half mask", "organic-vapour", DAY.minusDays(4), true, NO, NO);
    for (int day = 4; day >= 0; day--) {
      Session session = shop.wore(DAY.minusDays(day), "09:00", 20, "half mask", "finishing");
      shop.vapour(session, "toluene", 200, 200);
    }
    return shop;
  }

  @Test
  void a_lower_share_of_a_vapour_life_uses_it_up_sooner() {
    CareClock usual = clock(lacquering(), Kind.VAPOUR);
    CareClock careful =
        clock(lacquering().chose(OwnFigure.CARTRIDGE_SAFETY_FRACTION, 0.5), Kind.VAPOUR);
    // the same minutes of the same life, of which half counts instead of three quarters
    assertThat(careful.used()).isCloseTo(usual.used() * 0.75 / 0.5, within(1e-9));
    assertThat(careful.workingDaysLeft().orElseThrow())
        .isLessThan(usual.workingDaysLeft().orElseThrow());
    assertThat(
            due(lacquering().chose(OwnFigure.CARTRIDGE_SAFETY_FRACTION, 0.5), DueItem.Kind.ELEMENT)
                .when())
        .isBefore(due(lacquering(), DueItem.Kind.ELEMENT).when());
  }

  @Test
  void damp_air_halves_a_vapour_life() {
    double dry = clock(lacquering(), Kind.VAPOUR).used();
    double damp = clock(lacquering().chose(OwnFigure.CARTRIDGE_HUMIDITY, 90), Kind.VAPOUR).used();
    assertThat(damp).isCloseTo(2 * dry, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"6,2026-04-20", "1,2025-11-20", "12,2026-10-20"})
  void an_opened_gas_element_holds_as_many_months(int months, LocalDate last) {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "organic-vapour", LocalDate.of(2025, 10, 20));
    assertThat(clock(shop.chose(OwnFigure.OPENED_GAS_MONTHS, months), Kind.OPENED).ends())
        .contains(last);
  }

  @ParameterizedTest
  @CsvSource({"UK,24,2027-01-10", "UK,12,2026-01-10", "OSHA,24,2026-01-10"})
  void the_uk_interval_is_the_owners_and_oshas_stays(Scheme scheme, int months, LocalDate last) {
    Workshop shop = new Workshop().mask("mask", scheme, "air-purifying", "half mask");
    shop.tasted("mask", "me", LocalDate.of(2025, 1, 10));
    shop.wore(DAY, "09:00", 10, "mask", "drilling of oak");
    shop.chose(OwnFigure.FIT_MONTHS_UK, months);
    assertThat(due(shop, DueItem.Kind.FIT_TEST).when()).isEqualTo(last);
  }

  @Test
  void a_longer_uk_interval_keeps_the_credit() {
    Workshop shop = new Workshop().mask("mask", Scheme.UK, "air-purifying", "half mask");
    shop.element("mask", "p3", DAY).tasted("mask", "me", DAY.minusMonths(18));
    Session session = shop.wore(DAY, "09:00", 10, "mask", "drilling of oak");
    assertThat(shop.credit(session).apf()).isEqualTo(1);
    shop.chose(OwnFigure.FIT_MONTHS_UK, 24);
    assertThat(shop.credit(session).apf()).isEqualTo(20);
  }

  @Test
  void a_shop_may_fit_and_train_more_often_than_the_rule_asks() {
    Workshop shop = new Workshop().halfMask().tasted("half mask", "me", LocalDate.of(2026, 1, 10));
    shop.fit(new Training(7, "me", LocalDate.of(2026, 1, 12)));
    shop.fit(new Medical(8, "me", LocalDate.of(2026, 1, 12)));
    shop.wore(DAY, "09:00", 10, "half mask", "drilling of oak");
    shop.chose(OwnFigure.FIT_MONTHS_OSHA, 6).chose(OwnFigure.TRAINING_MONTHS, 3);
    assertThat(due(shop, DueItem.Kind.FIT_TEST).when()).isEqualTo("2026-07-10");
    assertThat(due(shop, DueItem.Kind.FIT_TEST).why())
        .isEqualTo("A fit test holds for 6 months; the last one ends on 2026-07-10");
    assertThat(due(shop, DueItem.Kind.TRAINING).when()).isEqualTo("2026-04-12");
  }

  @Test
  void exhaust_may_be_examined_more_often() {
    Workshop shop = new Workshop().limits("great-britain");
    shop.filter("bag", "collector", LocalDate.of(2025, 3, 1), NO, NO);
    shop.did(Upkeep.What.INSPECTED, "bag", LocalDate.of(2026, 1, 5));
    shop.chose(OwnFigure.EXAMINATION_MONTHS, 6);
    assertThat(due(shop, DueItem.Kind.EXAMINATION).when()).isEqualTo("2026-07-05");
  }

  @ParameterizedTest
  @CsvSource({"14,SOON", "13,LATER", "0,LATER"})
  void what_has_a_date_is_soon_so_many_days_ahead(int days, State state) {
    Workshop shop =
        new Workshop().halfMask().tasted("half mask", "me", DAY.minusYears(1).plusDays(14));
    shop.wore(DAY, "09:00", 10, "half mask", "drilling of oak");
    shop.chose(OwnFigure.SOON_DAYS, days);
    assertThat(due(shop, DueItem.Kind.FIT_TEST).state()).isEqualTo(state);
  }

  @ParameterizedTest
  @CsvSource({"9,SOON", "3,LATER"})
  void what_the_work_uses_up_is_soon_so_many_working_days_ahead(int days, State state) {
    Workshop shop = new Workshop().filter("bag", "collector", DAY, OptionalDouble.of(5), NO);
    shop.session(
        "me", DAY, "09:00", 60, "table-saw of oak", java.util.Optional.empty(), "collector");
    // one hour of the five in one working day: four are left
    shop.chose(OwnFigure.SOON_WORKING_DAYS, days);
    assertThat(due(shop, DueItem.Kind.CLEANING).state()).isEqualTo(state);
  }
}
