package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AirTest {
  private static final int DAY = 24 * 60;

  private static Shops morning() {
    return new Shops()
        .did("Ana", "shop", "08:30", 60, "orbital-sanding of oak")
        .me("09:00", 60, "orbital-sanding of oak")
        .did("me", "yard", "11:00", 30, "sweeping");
  }

  @Test
  void the_persons_own_places_come_first() {
    List<Air> air = Air.of(morning().did("Ana", "barn", "07:00", 10, "drilling").reckoning("me"));
    assertThat(air).extracting(Air::place).containsExactly("shop", "yard", "barn");
    assertThat(air).extracting(Air::outdoors).containsExactly(false, true, false);
  }

  @Test
  void minute_by_minute_it_adds_up_to_the_mean_of_the_session() {
    DayReport report = Day.report(morning().reckoning("me"));
    Air shop = Air.of(morning().reckoning("me")).get(0);
    double mean =
        IntStream.range(9 * 60, 10 * 60)
            .mapToDouble(m -> shop.breathed(m, m + 1))
            .average()
            .orElse(0);
    assertThat(mean).isCloseTo(report.sessions().get(0).meanOutsideMgPerM3(), within(0.01));
  }

  @Test
  void nothing_is_breathed_while_away_and_the_dust_lingers_all_the_same() {
    Air shop = Air.of(morning().reckoning("me")).get(0);
    assertThat(shop.breathed(8 * 60 + 30, 9 * 60)).isZero();
    assertThat(shop.breathed(10 * 60, DAY)).isZero();
    assertThat(shop.fine(10 * 60, 10 * 60 + 30)).isPositive();
    assertThat(shop.fine(10 * 60 + 30, 11 * 60)).isGreaterThan(shop.coarse(10 * 60 + 30, 11 * 60));
  }

  @Test
  void outdoors_only_the_near_field_is_breathed() {
    Air yard = Air.of(morning().reckoning("me")).get(1);
    assertThat(yard.coarse(0, DAY) + yard.fine(0, DAY)).isZero();
    assertThat(yard.breathed(11 * 60, 11 * 60 + 30)).isPositive();
  }

  @Test
  void a_day_without_sessions_has_no_air_to_show() {
    assertThat(Air.of(new Shops().reckoning("me"))).isEmpty();
  }
}
