package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.desk.ShortTermLimit.Kind;
import motebook.desk.VapourReport.OfShortTerm;
import motebook.model.VapourLimits;
import motebook.model.Work;
import motebook.reference.Solvent.Authority;
import motebook.reference.Solvents;
import org.junit.jupiter.api.Test;

/** The worst 15 minutes of a day; the ppm are those of src/test/python/short_term.py. */
class ShortTermTest {
  private static List<OfShortTerm> acute(Shops shops, String person) {
    return Day.report(shops.reckoning(person)).vapour().orElseThrow().acute();
  }

  private static Map<String, Double> typical(Shops shops, String person) {
    return acute(shops, person).stream()
        .collect(
            Collectors.toMap(
                row -> row.solvent().key(), row -> row.outside().typical(), (one, same) -> one));
  }

  private static void is(Map<String, Double> ppm, String solvent, double stepped) {
    assertThat(ppm.get(solvent)).as(solvent).isCloseTo(stepped, within(2e-4 * stepped));
  }

  @Test
  void of_a_long_coat_they_are_its_last_quarter_of_an_hour() {
    Work closed =
        new Shops()
            .used("me", "shop", "09:00", 25, "250 lacquer", "50 lacquer-thinner")
            .sessions()
            .get(0)
            .work();
    Map<String, Double> ppm = typical(new Shops().did(closed.with(List.of("doors-open"))), "me");
    is(ppm, "toluene", 128.6721);
    is(ppm, "butanol", 21.3584);
    is(ppm, "methanol", 24.5247);
  }

  @Test
  void a_job_of_six_minutes_counts_six_fifteenths() {
    Map<String, Double> ppm =
        typical(new Shops().used("me", "shop", "09:00", 6, "60 lacquer-thinner"), "me");
    is(ppm, "toluene", 28.9878);
    is(ppm, "methanol", 27.7875);
  }

  @Test
  void a_window_reaches_over_a_short_gap_that_is_spent_in_the_room() {
    Map<String, Double> ppm =
        typical(
            new Shops()
                .used("me", "shop", "09:00", 10, "100 lacquer")
                .used("me", "shop", "09:18", 10, "40 lacquer-thinner"),
            "me");
    is(ppm, "toluene", 63.5014);
    is(ppm, "butanol", 12.5843);
    is(ppm, "methanol", 21.5557);
  }

  @Test
  void whoever_comes_later_has_a_worst_quarter_of_an_hour_of_their_own() {
    Shops shops =
        new Shops()
            .used("me", "shop", "09:00", 20, "200 lacquer")
            .did("Ana", "shop", "09:22", 60, "in-shop");
    Map<String, Double> ppm = typical(shops, "Ana");
    is(ppm, "toluene", 76.9845);
    is(ppm, "butanol", 15.9502);
  }

  @Test
  void the_ends_of_the_range_are_those_of_the_finish_and_the_model() {
    OfShortTerm toluene =
        acute(new Shops().used("me", "shop", "09:00", 20, "200 lacquer"), "me").get(0);
    // Derived: 550 to 780 g/L over 3.29, and a factor of two.
    double sigma = Math.hypot(Math.log(780 / 550.0) / 3.29, Math.log(2));
    assertThat(toluene.outside().central()).isCloseTo(toluene.outside().typical(), within(1e-9));
    assertThat(toluene.outside().high90())
        .isCloseTo(toluene.outside().central() * Math.exp(1.645 * sigma), within(1e-9));
  }

  @Test
  void each_authority_has_its_own_row_and_the_nearest_limit_comes_first() {
    List<OfShortTerm> rows =
        acute(new Shops().used("me", "shop", "09:00", 20, "200 lacquer"), "me");
    assertThat(rows.get(0).limit()).isEqualTo(new ShortTermLimit(Authority.NIOSH, Kind.STEL, 150));
    assertThat(rows)
        .extracting(OfShortTerm::limit)
        .contains(new ShortTermLimit(Authority.OSHA, Kind.CEILING, 300));
    assertThat(rows)
        .filteredOn(row -> row.solvent().key().equals("butanol"))
        .extracting(OfShortTerm::limit)
        .containsExactly(new ShortTermLimit(Authority.NIOSH, Kind.CEILING, 50));
    assertThat(rows)
        .isSortedAccordingTo((one, other) -> Double.compare(other.ratio(), one.ratio()))
        .allMatch(row -> row.outside().high90() > row.limit().ppm() / 10);
  }

  @Test
  void a_stripper_is_held_against_osha_and_against_the_rule_of_epa() {
    List<OfShortTerm> rows =
        acute(new Shops().used("me", "shop", "09:00", 20, "50 stripper"), "me");
    assertThat(rows)
        .filteredOn(row -> row.solvent().key().equals("methylene-chloride"))
        .extracting(OfShortTerm::limit)
        .containsExactly(
            new ShortTermLimit(Authority.EPA, Kind.STEL, 16),
            new ShortTermLimit(Authority.OSHA, Kind.STEL, 125));
  }

  @Test
  void a_ceiling_is_no_limit_over_eight_hours() {
    var butanol = Solvents.shipped().withKey("butanol").orElseThrow();
    assertThat(VapourLimit.of(butanol, VapourLimits.STRICTER))
        .contains(new VapourLimit("OSHA PEL", 100));
    assertThat(VapourLimit.of(butanol, VapourLimits.NIOSH)).isEmpty();
  }

  @Test
  void what_stays_below_a_tenth_of_a_limit_at_its_upper_end_has_no_row() {
    assertThat(acute(new Shops().used("me", "shop", "09:00", 20, "1 lacquer"), "me")).isEmpty();
  }

  @Test
  void inside_a_credited_mask_the_worst_quarter_is_the_outside_one_over_its_factor() {
    CreditRule tenfold =
        session ->
            new Credit(1, Verdict.of(10), Optional.of(Verdict.of(10)), List.of(), Optional::empty);
    OfShortTerm row =
        acute(new Shops().crediting(tenfold).used("me", "shop", "09:00", 20, "200 lacquer"), "me")
            .get(0);
    assertThat(row.inside().central()).isCloseTo(row.outside().central() / 10, within(1e-9));
  }

  @Test
  void no_quarter_of_an_hour_holds_more_than_air_of_25_degrees() {
    // Derived: 0.11 kPa of 101.325 are 1085.6 ppm; 3 L in a closed room of 30 m3 would be far more.
    List<OfShortTerm> rows =
        acute(
            new Shops()
                .in(Shops.room(30, 0.3, 3, 3))
                .used("me", "shop", "09:00", 60, "3000 spirits"),
            "me");
    double full = 0.11 / 101.325 * 1e6;
    assertThat(rows).isNotEmpty();
    for (OfShortTerm row : rows) {
      assertThat(row.outside().low90()).isCloseTo(full, within(1e-6));
      assertThat(row.outside().central()).isCloseTo(full, within(1e-6));
      assertThat(row.outside().high90()).isCloseTo(full, within(1e-6));
      assertThat(row.inside()).isEqualTo(row.outside());
      assertThat(row.ratio()).isCloseTo(full / row.limit().ppm(), within(1e-9));
      assertThat(row.saturated()).isTrue();
    }
  }

  @Test
  void
      a_solvent_of_a_mixture_is_capped_by_its_own_pressure_since_a_drying_film_becomes_the_heavy_part() {
    // Derived: 0.11 kPa of 101.325, though the can holds 98 % by weight of it.
    List<OfShortTerm> rows =
        acute(
            new Shops()
                .in(Shops.room(30, 0.3, 3, 3))
                .used("me", "shop", "09:00", 60, "3000 oil-varnish"),
            "me");
    assertThat(rows)
        .filteredOn(row -> row.solvent().key().equals("mineral-spirits"))
        .isNotEmpty()
        .allSatisfy(
            row ->
                assertThat(row.outside().central()).isCloseTo(0.11 / 101.325 * 1e6, within(1e-6)));
  }

  @Test
  void a_mask_lets_its_part_of_full_air_through() {
    CreditRule tenfold =
        session ->
            new Credit(1, Verdict.of(10), Optional.of(Verdict.of(10)), List.of(), Optional::empty);
    OfShortTerm row =
        acute(
                new Shops()
                    .in(Shops.room(30, 0.3, 3, 3))
                    .crediting(tenfold)
                    .used("me", "shop", "09:00", 60, "3000 spirits"),
                "me")
            .get(0);
    assertThat(row.outside().central()).isCloseTo(0.11 / 101.325 * 1e6, within(1e-6));
    assertThat(row.inside().central()).isCloseTo(row.outside().central() / 10, within(1e-6));
  }

  @Test
  void air_that_is_not_full_is_not_capped() {
    assertThat(acute(new Shops().used("me", "shop", "09:00", 20, "200 lacquer"), "me"))
        .filteredOn(row -> row.solvent().key().equals("toluene"))
        .isNotEmpty()
        .noneMatch(OfShortTerm::saturated);
  }
}
