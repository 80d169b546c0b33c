package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import motebook.desk.VapourReport.OfSession;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.Amount;
import motebook.model.MaskUse;
import motebook.model.OwnFinish;
import motebook.model.Session;
import motebook.model.VapourLimits;
import motebook.model.Work;
import motebook.reference.Caution;
import motebook.reference.Finishes;
import motebook.reference.Solvents;
import motebook.science.Estimate;
import org.junit.jupiter.api.Test;

class FumesTest {
  private static VapourReport vapour(Shops shops, String person) {
    return Day.report(shops.reckoning(person)).vapour().orElseThrow();
  }

  private static Map<String, Double> outside(VapourReport vapour) {
    return vapour.solvents().stream()
        .collect(Collectors.toMap(line -> line.solvent().key(), OfSolvent::outsidePpm));
  }

  private static Work lacquering(String... controls) {
    return new Work(
        "me",
        "shop",
        Shops.DAY,
        LocalTime.of(9, 0),
        25,
        "finishing",
        Optional.empty(),
        List.of(controls),
        Optional.empty(),
        List.of(new Amount("lacquer", 250), new Amount("lacquer-thinner", 50)),
        "");
  }

  @Test
  void lacquer_and_thinner_with_doors_open_as_derived_by_stepping() {
    // Derived on the model's equations in small steps: src/test/python/vapour.py.
    VapourReport vapour = vapour(new Shops().did(lacquering("doors-open")), "me");
    assertThat(outside(vapour))
        .hasSize(11)
        .hasEntrySatisfying("toluene", x -> assertThat(x).isCloseTo(5.72403, within(1e-4)))
        .hasEntrySatisfying("acetone", x -> assertThat(x).isCloseTo(3.01809, within(1e-4)))
        .hasEntrySatisfying("methanol", x -> assertThat(x).isCloseTo(1.09099, within(1e-4)))
        .hasEntrySatisfying("mineral-spirits", x -> assertThat(x).isCloseTo(0.81651, within(1e-4)));
    assertThat(vapour.indexOutside().typical()).isCloseTo(0.155469, within(1e-6));
    assertThat(vapour.indexInside()).isEqualTo(vapour.indexOutside());
    assertThat(vapour.notJudged()).isEmpty();
  }

  @Test
  void the_range_holds_the_doubt_about_the_sheet_and_about_the_model() {
    // ln(low/high)/3.29 of 350 to 500 g/L and a factor of two, added as squares: derived.
    Estimate index =
        vapour(new Shops().used("me", "shop", "09:00", 30, "200 oil-varnish"), "me").indexOutside();
    double sigma = Math.hypot(Math.log(500 / 350.0) / 3.29, Math.log(2));
    assertThat(index.typical()).isCloseTo(0.0699829, within(1e-6));
    assertThat(index.central()).isCloseTo(index.typical(), within(1e-12));
    assertThat(index.high90()).isCloseTo(index.central() * Math.exp(1.645 * sigma), within(1e-9));
    assertThat(index.low90()).isCloseTo(index.central() * Math.exp(-1.645 * sigma), within(1e-9));
  }

  @Test
  void what_dries_slowly_is_breathed_by_whoever_comes_later() {
    // Derived by an independent calculation in small steps: an hour in the room, an hour after.
    Shops shops =
        new Shops()
            .used("me", "shop", "09:00", 30, "200 oil-varnish")
            .did("Ana", "shop", "10:30", 60, "in-shop");
    VapourReport ana = vapour(shops, "Ana");
    assertThat(outside(ana).get("mineral-spirits")).isCloseTo(3.49911, within(1e-4));
    assertThat(ana.indexOutside().typical()).isCloseTo(0.0573654, within(1e-6));
    assertThat(ana.sessions()).extracting(s -> s.source().session().id()).containsExactly(2L);
  }

  @Test
  void in_another_place_or_outdoors_beside_it_nobody_else_breathes_it() {
    Shops shops =
        new Shops()
            .used("me", "yard", "09:00", 30, "200 oil-varnish")
            .did("Ana", "yard", "09:00", 60, "in-shop")
            .did("Ben", "barn", "09:00", 60, "in-shop");
    assertThat(Day.report(shops.reckoning("Ana")).vapour()).isEmpty();
    assertThat(Day.report(shops.reckoning("Ben")).vapour()).isEmpty();
    // Derived, outdoors the near field alone: 70 % of 200 mL at 400 g/L in 30 min.
    double nearField = 200 * 400 * 0.7 / 30 / (Math.PI * 0.64 * 15);
    assertThat(outside(vapour(shops, "me")).get("mineral-spirits"))
        .isCloseTo(nearField * 0.98 * 24.45 / 138 * 30 / 480, within(1e-9));
  }

  @Test
  void a_day_without_an_amount_has_no_vapour_and_says_that_none_is_reckoned() {
    DayReport day = new Shops().me("09:00", 30, "finishing").report();
    assertThat(day.vapour()).isEmpty();
    assertThat(day.cautions()).extracting(Caution::key).contains("finish-vapour");
  }

  @Test
  void the_cautions_of_a_finish_join_those_of_the_day() {
    DayReport day = new Shops().used("me", "shop", "09:00", 30, "200 oil-varnish").report();
    assertThat(day.cautions())
        .extracting(Caution::key)
        .contains("fire", "oily-rags")
        .doesNotContain("finish-vapour");
  }

  @Test
  void isocyanates_are_warned_of_and_never_estimated() {
    Shops shops = new Shops().used("me", "shop", "09:00", 30, "200 two-part-polyurethane");
    assertThat(vapour(shops, "me").notEstimated()).containsExactly("isocyanates");
    assertThat(outside(vapour(shops, "me"))).doesNotContainKey("isocyanates");
    assertThat(shops.report().cautions())
        .filteredOn(caution -> caution.key().equals("isocyanates"))
        .singleElement()
        .satisfies(caution -> assertThat(caution.sentence()).contains("never estimated"));
  }

  @Test
  void a_low_share_of_the_flammable_limit_is_not_shown() {
    Shops little = new Shops().used("me", "shop", "09:00", 30, "20 lacquer");
    assertThat(vapour(little, "me").fire()).isEmpty();
  }

  @Test
  void a_high_share_of_the_flammable_limit_is_shown_at_its_upper_end() {
    Shops much =
        new Shops()
            .in(Shops.room(30, 0.3, 3, 3))
            .used("me", "shop", "09:00", 30, "2000 contact-cement");
    // Derived: near field and room at the end of the session, Le Chatelier, range of one finish.
    double mgPerMin = 2000 * 650 * 0.95 / 30;
    double lambda = 0.3 / 60;
    double room = mgPerMin / 30 / lambda * (1 - Math.exp(-30 * lambda));
    double peak = mgPerMin / (Math.PI * 0.64 * 3) + room;
    double share =
        peak
            * 24.45
            * (0.47 / 92.14 / 1.0 + 0.34 / 138 / 0.6 + 0.14 / 72.11 / 1.5 + 0.05 / 58.08 / 2.5)
            / 1e4;
    double sigma = Math.hypot(Math.log(700 / 550.0) / 3.29, Math.log(2));
    Fire fire = vapour(much, "me").fire().orElseThrow();
    assertThat(fire.share()).isCloseTo(share * Math.exp(1.645 * sigma), within(1e-9));
    assertThat(fire.saturated()).isFalse();
    assertThat(fire.stop()).isTrue();
  }

  @Test
  void no_air_holds_more_than_saturation_so_mineral_spirits_stay_below_a_fifth() {
    Shops flood =
        new Shops().in(Shops.room(30, 0.3, 3, 3)).used("me", "shop", "09:00", 60, "3000 spirits");
    // Derived: 0.11 kPa of 101.325 at 25 degrees are 1085.6 ppm, 18.09 % of 0.6 % by volume.
    Fire fire = vapour(flood, "me").fire().orElseThrow();
    assertThat(fire.share()).isCloseTo(0.11 / 101.325 / 0.006, within(1e-12));
    assertThat(fire.share()).isCloseTo(0.1809, within(1e-4));
    assertThat(fire.saturated()).isTrue();
    assertThat(fire.stop()).isFalse();
  }

  @Test
  void a_mixture_is_full_by_the_mole_fractions_of_its_solvents() {
    Shops flood =
        new Shops()
            .in(Shops.room(30, 0.3, 3, 3))
            .used("me", "shop", "09:00", 60, "3000 oil-varnish");
    // Derived: 98 and 2 % by weight at 138 and 106.17 g/mol are 97.416 and 2.584 % by mole;
    // 0.97416 x 0.11 kPa over 0.6 %, 0.02584 x 1.11 kPa over 0.9 %, of 101.325 kPa.
    Fire fire = vapour(flood, "me").fire().orElseThrow();
    assertThat(fire.share()).isCloseTo(0.17626 + 0.03145, within(1e-4));
    assertThat(fire.saturated()).isTrue();
  }

  @Test
  void an_air_cleaner_takes_no_vapour_out_and_says_so_while_a_fan_does() {
    Shops cleaned = new Shops().in(Shops.withCleaner(Shops.DEFAULT_SHOP, 10, 30));
    VapourReport cleaner = vapour(cleaned.did(lacquering("air-cleaner")), "me");
    Shops fanned = new Shops().in(Shops.withCleaner(Shops.DEFAULT_SHOP, 10, 30));
    VapourReport fan = vapour(fanned.did(lacquering("window-fan")), "me");
    VapourReport plain = vapour(new Shops().did(lacquering()), "me");
    assertThat(cleaner.indexOutside()).isEqualTo(plain.indexOutside());
    assertThat(cleaner.remarks()).anyMatch(remark -> remark.contains("vapour goes through"));
    assertThat(fan.indexOutside().typical()).isLessThan(plain.indexOutside().typical());
  }

  @Test
  void the_owner_chooses_whose_figures_count() {
    Shops shops = new Shops().used("me", "shop", "09:00", 30, "200 stripper");
    VapourReport stricter = vapour(shops, "me");
    VapourReport osha = vapour(shops.heldAgainst(VapourLimits.OSHA), "me");
    VapourReport niosh = vapour(shops.heldAgainst(VapourLimits.NIOSH), "me");
    assertThat(osha.notJudged()).isEmpty();
    // NIOSH names no figure for methylene chloride: it is told as not judged.
    assertThat(niosh.notJudged()).extracting(s -> s.key()).containsExactly("methylene-chloride");
    assertThat(stricter.indexOutside().typical())
        .isGreaterThanOrEqualTo(osha.indexOutside().typical())
        .isGreaterThanOrEqualTo(niosh.indexOutside().typical());
    var toluene = Solvents.shipped().withKey("toluene").orElseThrow();
    assertThat(VapourLimit.of(toluene, VapourLimits.OSHA).orElseThrow().ppm()).isEqualTo(200);
    assertThat(VapourLimit.of(toluene, VapourLimits.STRICTER))
        .contains(new VapourLimit("NIOSH REL", 100));
  }

  @Test
  void a_credit_against_vapour_counts_for_vapour_alone() {
    Work work = lacquering();
    Work masked =
        new Work(
            work.person(),
            work.place(),
            work.date(),
            work.start(),
            work.minutes(),
            work.operation(),
            work.material(),
            work.controls(),
            Optional.of(new MaskUse("half mask", true, 100)),
            work.amounts(),
            "");
    Objection noDustFilter = Objection.lasting("no element", "No dust filter");
    CreditRule gasOnly =
        session ->
            new Credit(
                1,
                new Verdict(OptionalDouble.empty(), List.of(noDustFilter)),
                Optional.of(Verdict.of(10)),
                List.of(),
                Optional::empty);
    DayReport day = new Shops().crediting(gasOnly).did(masked).report();
    VapourReport vapour = day.vapour().orElseThrow();
    assertThat(vapour.indexInside().typical())
        .isCloseTo(vapour.indexOutside().typical() / 10, within(1e-12));
    assertThat(day.inside()).isEqualTo(day.outside());
    assertThat(vapour.credit(day.sessions().get(0).source()).orElseThrow().vapourApf())
        .isEqualTo(10);
  }

  @Test
  void a_session_knows_its_upper_end_and_what_has_no_figure() {
    OfSession session =
        vapour(new Shops().used("me", "shop", "09:00", 30, "200 two-part-polyurethane"), "me")
            .sessions()
            .get(0);
    assertThat(session.upper()).isGreaterThan(Math.exp(1.645 * Math.log(2)));
    assertThat(session.unmeasured()).extracting(s -> s.key()).containsExactly("isocyanates");
  }

  @Test
  void an_own_finish_is_reckoned_by_its_data_sheet() {
    OwnFinish sheet = new OwnFinish("lacquer", "lacquer", 345, Map.of("toluene", 1.0));
    DayReckoning shipped =
        new Shops().used("me", "shop", "09:00", 30, "100 lacquer").reckoning("me");
    Shop shop = shipped.shop();
    Shop own =
        new Shop(
            shop.reference(),
            shop.settings(),
            shop.places(),
            shop.credits(),
            () -> Finishes.shipped().with(List.of(sheet)),
            Learned.NOTHING);
    List<Session> sessions = shipped.sources().stream().map(Source::session).toList();
    double before = outside(Day.report(shipped).vapour().orElseThrow()).get("toluene");
    double after =
        outside(Day.report(Shops.DAY, "me", sessions, own).vapour().orElseThrow()).get("toluene");
    assertThat(after).isCloseTo(before / 0.30 / 2, within(1e-9));
  }
}
