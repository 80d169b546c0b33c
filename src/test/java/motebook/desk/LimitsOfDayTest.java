package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import motebook.reference.Limit;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Which limit judges a day, what is shown beside it, and what a long day makes of it. */
class LimitsOfDayTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final Offset<Double> DERIVED = within(1e-5);

  private static DayReport cedarAndOak(String set) {
    return new Shops()
        .limits(set)
        .me("09:00", 60, "circular-saw of red-cedar")
        .me("11:00", 60, "circular-saw of oak")
        .report();
  }

  @Test
  void red_cedar_beside_other_wood_is_held_by_the_sum_of_the_shares() {
    // Derived by src/test/python/limits.py from the tables; 29 CFR 1910.1000(d)(2) for the sum.
    HeldLimit held = cedarAndOak("acgih").limit().orElseThrow();
    assertThat(held.limit().key()).isEqualTo("acgih-red-cedar");
    assertThat(held.other().orElseThrow().key()).isEqualTo("acgih-wood");
    assertThat(held.index()).hasValueCloseTo(3.83784, DERIVED);
    assertThat(cedarAndOak("acgih").outside().chanceOverLimit()).hasValueCloseTo(0.886950, DERIVED);
  }

  @Test
  void the_row_with_the_larger_share_is_named() {
    DayReport day =
        new Shops()
            .me("09:00", 10, "circular-saw of red-cedar")
            .me("11:00", 120, "circular-saw of oak")
            .report();
    assertThat(day.limit().orElseThrow().limit().key()).isEqualTo("acgih-wood");
    assertThat(day.limit().orElseThrow().index()).isPresent();
  }

  @Test
  void shares_are_taken_each_in_the_fraction_of_its_own_limit() {
    // California limits total dust, 2 and 0.5 mg/m³; inhalable is 1.5 times total.
    double acgih = cedarAndOak("acgih").limit().orElseThrow().outside().typical();
    double california = cedarAndOak("california").limit().orElseThrow().outside().typical();
    DayReport oak = new Shops().me("09:00", 60, "circular-saw of oak").report();
    assertThat(oak.limit().orElseThrow().index()).isEmpty();
    assertThat(california).isLessThan(acgih).isGreaterThan(acgih / 1.5 / 2);
  }

  @Test
  void red_cedar_alone_has_its_own_limit_and_no_sum() {
    DayReport day = new Shops().me("09:00", 60, "circular-saw of red-cedar").report();
    HeldLimit held = day.limit().orElseThrow();
    assertThat(held.limit().mgPerM3()).isEqualTo(0.5);
    assertThat(held.index()).isEmpty();
    assertThat(held.ratio()).isCloseTo(day.outside().estimate().central() / 0.5, EXACT);
  }

  @Test
  void where_one_row_holds_for_all_wood_red_cedar_is_no_mixture() {
    assertThat(cedarAndOak("niosh").limit().orElseThrow().index()).isEmpty();
    assertThat(cedarAndOak("great-britain").limit().orElseThrow().index()).isEmpty();
  }

  @Test
  void the_respirable_limit_of_nuisance_dust_is_shown_and_judges_nothing() {
    // Long after the sanding only fine dust is left: total/15 falls below respirable/5.
    DayReport day =
        new Shops()
            .limits("osha")
            .did("Ana", "shop", "06:00", 60, "orbital-sanding of oak")
            .me("09:00", 120, "in-shop")
            .report();
    HeldLimit judged = day.limit().orElseThrow();
    HeldLimit shown = day.limits().shown().get(0);
    assertThat(judged.limit().key()).isEqualTo("osha-pnor-total");
    assertThat(shown.limit().key()).isEqualTo("osha-pnor-respirable");
    assertThat(shown.ratio()).isGreaterThan(judged.ratio());
    assertThat(day.outside().chanceOverLimit()).hasValue(judged.chanceOutside());
  }

  @Test
  void the_advisory_limit_stands_beside_a_legal_one_and_an_advisory_one_stands_alone() {
    DayReport legal = new Shops().limits("eu").me("09:00", 60, "circular-saw of oak").report();
    assertThat(legal.limit().orElseThrow().limit().key()).isEqualTo("eu-hardwood");
    assertThat(legal.limits().beside())
        .extracting(held -> held.limit().key())
        .containsExactly("acgih-wood");
    HeldLimit advisory = legal.limits().beside().get(0);
    assertThat(advisory.ratio()).isCloseTo(legal.outside().estimate().central(), EXACT);
    assertThat(advisory.chanceOutside()).isCloseTo(legal.outside().estimate().chanceOver(1), EXACT);
    DayReport alone = new Shops().me("09:00", 60, "circular-saw of oak").report();
    assertThat(alone.limits().beside()).isEmpty();
  }

  @Test
  void the_advisory_limit_stands_alone_where_no_legal_one_applies() {
    DayReport pine = new Shops().limits("eu").me("09:00", 60, "circular-saw of pine").report();
    assertThat(pine.limit()).isEmpty();
    assertThat(pine.limits().beside()).extracting(HeldLimit::limit).allMatch(Limit::advisory);
    assertThat(pine.limits().beside()).hasSize(1);
  }

  @Test
  void the_limit_of_a_long_day_is_the_same_on_the_day_and_in_its_week() {
    // Brief and Scala against an 8-hour TWA: (24 − 12)/16 = 0.75 of the limit.
    Shops shops =
        new Shops().me("06:00", 360, "assembly of oak").me("12:00", 360, "assembly of oak");
    LongDay day = shops.report().limits().longDay().orElseThrow();
    assertThat(day.adjustedMgPerM3()).isCloseTo(0.75, EXACT);
    assertThat(day.ratio()).isCloseTo(day.held().ratio() / 0.75, EXACT);
    WeekReport week =
        Week.report(
            Shops.DAY,
            "me",
            date ->
                date.equals(Shops.DAY)
                    ? shops.reckoning("me")
                    : new DayReckoning(date, "me", List.of(), shops.shop()),
            date -> List.of());
    assertThat(week.longDays()).containsExactly(day);
  }
}
