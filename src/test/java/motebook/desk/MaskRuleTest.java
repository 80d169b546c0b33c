package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Action.RecordFitTest;
import motebook.model.Action.RecordSealCheck;
import motebook.model.Action.WearInSession;
import motebook.model.Element;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Qualitative;
import motebook.model.MaskUse;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.Scheme;
import motebook.model.Session;
import motebook.report.CreditText;
import motebook.report.Invocation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaskRuleTest {
  private static final LocalDate DAY = Workshop.DAY;
  private static final LocalDate LAST_MONTH = DAY.minusMonths(1);

  private static Workshop inOrder() {
    return new Workshop()
        .halfMask()
        .element("half mask", "p100", LAST_MONTH)
        .tasted("half mask", "me", LAST_MONTH)
        .fit(new Medical(9, "me", LAST_MONTH));
  }

  private static Session sanding(Workshop shop) {
    return shop.wore(DAY, "09:00", 60, "half mask", "orbital-sanding of oak");
  }

  private static void refused(Workshop shop, Session session, String... said) {
    Credit credit = shop.credit(session);
    assertThat(credit.apf()).isEqualTo(1);
    assertThat(Workshop.refused(credit)).contains(said);
  }

  @Test
  void a_mask_with_everything_in_order_is_credited_its_factor() {
    Workshop shop = inOrder();
    Credit credit = shop.credit(sanding(shop));
    assertThat(credit.apf()).isEqualTo(10);
    assertThat(credit.objections()).isEmpty();
    assertThat(credit.vapour()).isEmpty();
    assertThat(credit.notes()).isEmpty();
  }

  @Test
  void a_mask_that_the_book_does_not_hold_counts_for_nothing() {
    Workshop shop = new Workshop();
    refused(
        shop,
        sanding(shop),
        "There is no respirator \"half mask\" in this book",
        "motebook gear add respirator \"half mask\"");
  }

  @Test
  void without_a_fit_test_it_is_refused_and_the_figure_with_one_is_told() {
    Workshop shop = new Workshop().halfMask().element("half mask", "p100", LAST_MONTH);
    refused(
        shop,
        sanding(shop),
        "No fit test of me with half mask is on record",
        "motebook fit record --respirator \"half mask\" --person me --on 2026-03-02",
        "If passed, it would count as 10.");
  }

  @Test
  void a_fit_test_is_good_for_a_year_to_the_day() {
    Workshop good = new Workshop().halfMask().element("half mask", "p100", LAST_MONTH);
    good.tasted("half mask", "me", DAY.minusYears(1));
    assertThat(good.credit(sanding(good)).apf()).isEqualTo(10);
    Workshop old = new Workshop().halfMask().element("half mask", "p100", LAST_MONTH);
    old.tasted("half mask", "me", DAY.minusYears(1).minusDays(1));
    refused(old, sanding(old), "The fit test of me with half mask ended on 2026-03-01");
  }

  @Test
  void the_test_of_another_person_or_another_mask_is_none() {
    Workshop shop = new Workshop().halfMask().element("half mask", "p100", LAST_MONTH);
    shop.tasted("half mask", "Ana", LAST_MONTH).tasted("other mask", "me", LAST_MONTH);
    refused(shop, sanding(shop), "No fit test of me");
  }

  @Test
  void a_test_made_after_the_session_does_not_count_for_it() {
    Workshop shop = new Workshop().halfMask().element("half mask", "p100", LAST_MONTH);
    shop.tasted("half mask", "me", DAY.plusDays(1));
    refused(shop, sanding(shop), "No fit test of me");
  }

  @Test
  void the_latest_test_counts_even_where_it_failed() {
    Workshop shop =
        inOrder()
            .fit(
                new FitTest(
                    20, "half mask", "me", DAY.minusDays(3), new Qualitative("saccharin", false)));
    refused(shop, sanding(shop), "on 2026-02-27 was not passed");
  }

  // 29 CFR 1910.134(f)(7): 100 half, 500 full, by the harmonic mean; 138.56 and 218.75 derived.
  // UK practice: every exercise 100 half, 2000 full.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "OSHA | half mask | 200,180,150,120,90,110,210 | true",
        "UK | half mask | 200,180,150,120,90,110,210 | false",
        "UK | half mask | 200,180,150,120,100,110,210 | true",
        "OSHA | full facepiece | 200,180,150,120,90,110,210 | false",
        "OSHA | full facepiece | 500,500,500,500,500,500,50 | false",
        "OSHA | full facepiece | 500,500,500 | true",
        "UK | full facepiece | 2000,2000,1999 | false",
        "UK | full facepiece | 2000,2000,2000 | true",
        "OSHA | half mask | 99.9,99.9 | false",
      })
  void a_measured_test_passes_by_the_rules_of_its_scheme(
      Scheme scheme, String facepiece, String factors, boolean passes) {
    Workshop shop = new Workshop().mask("mask", scheme, "air-purifying", facepiece);
    shop.element("mask", scheme == Scheme.UK ? "p3" : "p100", LAST_MONTH);
    List<Double> measured = List.of(factors.split(",", -1)).stream().map(Double::valueOf).toList();
    shop.measured("mask", "me", LAST_MONTH, measured.toArray(Double[]::new));
    Session session = shop.wore(DAY, "09:00", 60, "mask", "orbital-sanding of oak");
    assertThat(shop.credit(session).objections().isEmpty()).isEqualTo(passes);
  }

  // 29 CFR 1910.134(f)(6): a fit factor of 100 at most by taste, so 10 and not 50.
  @Test
  void a_full_facepiece_tested_by_taste_counts_as_ten() {
    Workshop shop = new Workshop().mask("face", Scheme.OSHA, "air-purifying", "full facepiece");
    shop.element("face", "p100", LAST_MONTH).tasted("face", "me", LAST_MONTH);
    Session session = shop.wore(DAY, "09:00", 60, "face", "orbital-sanding of oak");
    assertThat(shop.credit(session).apf()).isEqualTo(10);
    shop.measured("face", "me", LAST_MONTH.plusDays(1), 600.0, 600.0);
    assertThat(shop.credit(session).apf()).isEqualTo(50);
  }

  @Test
  void hair_under_the_seal_and_a_changed_face_refuse() {
    Workshop bearded = inOrder().fit(new Hair(30, "me", LAST_MONTH, Optional.empty()));
    refused(
        bearded,
        sanding(bearded),
        "Hair under the seal of me is on record from 2026-02-02",
        "motebook fit hair --person me --to 2026-03-01");
    Workshop changed = inOrder().fit(new FaceChange(30, "me", DAY, FaceChange.What.DENTAL));
    refused(changed, sanding(changed), "face changed on 2026-03-02 (dental), after the fit test");
    Workshop shaved = inOrder().fit(new Hair(30, "me", LAST_MONTH, Optional.of(DAY.minusDays(1))));
    assertThat(shaved.credit(sanding(shaved)).apf()).isEqualTo(10);
  }

  @Test
  void without_a_seal_check_it_is_refused() {
    Workshop shop = inOrder();
    Session session =
        shop.session(
            "me",
            DAY,
            "09:00",
            60,
            "orbital-sanding of oak",
            Optional.of(new MaskUse("half mask", false, 100)));
    refused(shop, session, "No seal check is recorded", "motebook fit checked " + session.id());
  }

  @Test
  void a_hood_asks_neither_fit_test_nor_seal_check_nor_a_shaven_face() {
    Workshop shop =
        new Workshop()
            .mask("hood", Scheme.OSHA, "powered air-purifying", "hood")
            .element("hood", "he", LAST_MONTH)
            .fit(new Hair(1, "me", LAST_MONTH, Optional.empty()));
    Session session =
        shop.session(
            "me",
            DAY,
            "09:00",
            60,
            "orbital-sanding of oak",
            Optional.of(new MaskUse("hood", false, 90)));
    assertThat(shop.credit(session).apf()).isEqualTo(25);
    assertThat(shop.credit(session).wornShare()).isEqualTo(0.9);
  }

  @Test
  void what_the_table_does_not_have_is_not_allowed() {
    Workshop shop = new Workshop().mask("odd", Scheme.OSHA, "air-purifying", "hood");
    Session session = shop.wore(DAY, "09:00", 60, "odd", "orbital-sanding of oak");
    refused(shop, session, "have none for air-purifying with hood: it is not allowed");
  }

  @Test
  void a_retired_respirator_counts_to_its_last_day() {
    Workshop shop = inOrder();
    Respirator mask = shop.respirators.get(0);
    shop.respirators.set(
        0,
        new Respirator(
            1,
            mask.name(),
            mask.scheme(),
            mask.kind(),
            mask.facepiece(),
            mask.size(),
            mask.make(),
            mask.people(),
            Optional.of(new Retirement(DAY.minusDays(1), "worn out"))));
    refused(shop, sanding(shop), "half mask was retired on 2026-03-01");
  }

  @Test
  void without_an_element_it_is_refused_and_the_element_to_add_is_named() {
    Workshop shop = new Workshop().halfMask().tasted("half mask", "me", LAST_MONTH);
    refused(
        shop,
        sanding(shop),
        "No element is on record on half mask on 2026-03-02",
        "--for \"half mask\" --class P100 --opened 2026-03-02",
        "Then it would count as 10.");
  }

  @Test
  void dust_and_vapour_are_judged_apart() {
    Workshop dust = inOrder();
    Credit finishing = dust.credit(dust.wore(DAY, "09:00", 30, "half mask", "finishing of oak"));
    assertThat(finishing.apf()).isEqualTo(10);
    assertThat(finishing.vapour().orElseThrow().apf()).isEqualTo(1);
    assertThat(Workshop.refused(finishing))
        .contains("Against vapour: Solvent vapour wants an organic-vapour element")
        .contains("--class \"organic vapour\"");

    Workshop both = inOrder().element("half mask", "organic-vapour", LAST_MONTH);
    Credit two = both.credit(both.wore(DAY, "09:00", 30, "half mask", "finishing of oak"));
    assertThat(two.apf()).isEqualTo(10);
    assertThat(two.vapour().orElseThrow().apf()).isEqualTo(10);
    assertThat(two.objections()).isEmpty();
  }

  @Test
  void the_formaldehyde_of_a_board_is_told_and_leaves_the_credit_for_dust() {
    Workshop shop = inOrder();
    Credit credit = shop.credit(shop.wore(DAY, "09:00", 30, "half mask", "orbital-sanding of mdf"));
    assertThat(credit.apf()).isEqualTo(10);
    assertThat(credit.notes())
        .singleElement()
        .satisfies(note -> assertThat(note).contains("Formaldehyde wants an element approved"));
  }

  @Test
  void lead_is_told_of_where_the_filter_is_too_coarse_for_it() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "n95", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH)
            .fit(new Medical(9, "me", LAST_MONTH));
    Session session = shop.wore(DAY, "09:00", 30, "half mask", "orbital-sanding of old-paint");
    assertThat(shop.credit(session).apf()).isEqualTo(10);
    assertThat(shop.credit(session).notes()).anySatisfy(n -> assertThat(n).contains("lead"));
    Workshop fine = inOrder();
    Session better = fine.wore(DAY, "09:00", 30, "half mask", "orbital-sanding of old-paint");
    assertThat(fine.credit(better).notes()).isEmpty();
  }

  @Test
  void isocyanates_methylene_chloride_and_methanol_want_supplied_air() {
    for (String solvent : List.of("isocyanates", "methylene chloride", "methanol")) {
      Workshop shop = inOrder().element("half mask", "organic-vapour", LAST_MONTH);
      Session session = shop.wore(DAY, "09:00", 30, "half mask", "finishing of oak");
      shop.vapour(session, solvent, 0, 0).vapour(session, "toluene", 20, 60);
      Credit credit = shop.credit(session);
      assertThat(credit.apf()).isEqualTo(10);
      assertThat(credit.vapour().orElseThrow().apf()).isEqualTo(1);
      assertThat(Workshop.refused(credit)).contains("supplied air, continuous flow");
    }
  }

  @Test
  void supplied_air_counts_against_everything_without_an_element() {
    Workshop shop =
        new Workshop()
            .mask("air line", Scheme.OSHA, "supplied air, continuous flow", "full facepiece")
            .measured("air line", "me", LAST_MONTH, 900.0, 800.0);
    Session session = shop.wore(DAY, "09:00", 30, "air line", "finishing of oak");
    shop.vapour(session, "isocyanates", 0, 0);
    Credit credit = shop.credit(session);
    assertThat(credit.apf()).isEqualTo(1000);
    assertThat(credit.vapour().orElseThrow().apf()).isEqualTo(1000);
  }

  // HSG53/EN 529: half mask P3 20, gas and P3 10.
  @Test
  void in_the_uk_the_element_decides_and_adding_gas_lowers_the_factor() {
    Workshop shop =
        new Workshop()
            .mask("mask", Scheme.UK, "air-purifying", "half mask")
            .element("mask", "p3", LAST_MONTH)
            .measured("mask", "me", LAST_MONTH, 150.0, 150.0);
    Session session = shop.wore(DAY, "09:00", 60, "mask", "orbital-sanding of oak");
    assertThat(shop.credit(session).apf()).isEqualTo(20);
    shop.element("mask", "organic-vapour", LAST_MONTH);
    assertThat(shop.credit(session).apf()).isEqualTo(10);
  }

  @Test
  void a_rating_without_a_row_is_not_allowed_and_the_right_one_is_named() {
    Workshop shop =
        new Workshop()
            .mask("hood", Scheme.UK, "powered air-purifying", "hood")
            .element("hood", "p3", LAST_MONTH);
    Session session = shop.wore(DAY, "09:00", 60, "hood", "orbital-sanding of oak");
    refused(
        shop, session, "have none for P3, only for TH1, TH2, TH3", "--class TH3", "count as 40");
    shop.element("hood", "th3", DAY);
    assertThat(shop.credit(session).apf()).isEqualTo(40);
  }

  @Test
  void an_element_of_the_other_scheme_is_told_and_the_right_one_named() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "p3", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH);
    refused(shop, sanding(shop), "P3 on half mask is no class of the scheme osha", "--class P100");
  }

  @Test
  void class_n_is_good_for_eight_hours_of_dust_and_a_change_mends_it() {
    Workshop shop = new Workshop().halfMask().tasted("half mask", "me", LAST_MONTH);
    shop.element("half mask", "n95", DAY.minusDays(3));
    for (int back = 3; back >= 1; back--) {
      shop.wore(DAY.minusDays(back), "08:00", 160, "half mask", "orbital-sanding of oak");
    }
    Session after = sanding(shop);
    refused(
        shop,
        after,
        "n95 0 was used up on 2026-03-01",
        "motebook gear change \"n95 0\" --on 2026-03-02");
    shop.change(0, DAY);
    assertThat(shop.credit(after).apf()).isEqualTo(10);
  }

  @Test
  void the_session_in_which_a_clock_runs_out_is_still_credited() {
    Workshop shop = new Workshop().halfMask().tasted("half mask", "me", LAST_MONTH);
    shop.element("half mask", "p100", DAY, false, OptionalDouble.of(1.5), OptionalDouble.empty());
    Session first = shop.wore(DAY, "08:00", 60, "half mask", "orbital-sanding of oak");
    Session over = shop.wore(DAY, "09:30", 60, "half mask", "orbital-sanding of oak");
    Session later = shop.wore(DAY, "11:00", 60, "half mask", "orbital-sanding of oak");
    assertThat(shop.credit(first).apf()).isEqualTo(10);
    assertThat(shop.credit(over).apf()).isEqualTo(10);
    refused(shop, later, "p100 0 was used up on 2026-03-02: hours worn (3.00 of 1.5 h)");
  }

  @Test
  void gas_elements_end_six_months_after_opening_and_were_never_good_past_their_shelf_life() {
    Workshop old =
        inOrder().element("half mask", "organic-vapour", DAY.minusMonths(6).minusDays(1));
    Credit late = old.credit(old.wore(DAY, "09:00", 30, "half mask", "finishing of oak"));
    assertThat(late.vapour().orElseThrow().apf()).isEqualTo(1);
    assertThat(late.apf()).isEqualTo(10);

    Workshop stale = inOrder();
    stale.add(
        new Element(
            7,
            "stale",
            "half mask",
            "organic-vapour",
            true,
            LAST_MONTH,
            Optional.of(LAST_MONTH),
            Optional.of(LAST_MONTH.minusDays(1)),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty()));
    Credit credit = stale.credit(stale.wore(DAY, "09:00", 30, "half mask", "finishing of oak"));
    assertThat(Workshop.refused(credit)).contains("stale was used up on 2026-02-02: shelf life");
  }

  @Test
  void vapour_thicker_than_its_elements_are_made_for_counts_and_is_not_enough() {
    // 42 CFR 84.190, read: organic vapour 1000 ppm; NIOSH IDLH of MEK: 3000 ppm.
    Workshop shop = inOrder().element("half mask", "organic-vapour", LAST_MONTH);
    Session session = shop.wore(DAY, "09:00", 5, "half mask", "finishing of oak");
    shop.vapour(session, "methyl ethyl ketone", 1200, 2900);
    Credit credit = shop.credit(session);
    assertThat(credit.vapourApf()).isEqualTo(10);
    assertThat(credit.notes())
        .anyMatch(note -> note.startsWith("This mask is not enough: elements for solvent vapour"));
  }

  @Test
  void in_air_that_may_be_immediately_dangerous_no_mask_counts_and_nothing_is_to_be_added() {
    // NIOSH IDLH of toluene, read: 500 ppm.
    Workshop shop = inOrder();
    Session below = shop.wore(DAY, "09:00", 5, "half mask", "finishing of oak");
    shop.vapour(below, "toluene", 200, 500);
    assertThat(Workshop.refused(shop.credit(below))).contains("organic-vapour element");
    Session above = shop.wore(DAY, "10:00", 5, "half mask", "finishing of oak");
    shop.vapour(above, "toluene", 200, 501);
    Credit credit = shop.credit(above);
    assertThat(credit.apf()).isEqualTo(1);
    assertThat(credit.vapourApf()).isEqualTo(1);
    assertThat(credit.remedy()).isEmpty();
    assertThat(credit.objections()).singleElement().matches(one -> one.ways().isEmpty());
    assertThat(Workshop.refused(credit))
        .contains("leave the area and ventilate", "licensed work")
        .doesNotContain("gear add");
  }

  @Test
  void a_missing_medical_evaluation_is_told_and_does_not_refuse() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "p100", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH);
    Credit credit = shop.credit(sanding(shop));
    assertThat(credit.apf()).isEqualTo(10);
    assertThat(credit.notes()).anySatisfy(n -> assertThat(n).contains("No medical evaluation"));
  }

  @Test
  void of_several_reasons_the_first_is_said_and_all_are_listed() {
    Workshop shop = new Workshop().halfMask();
    Session session =
        shop.session(
            "me",
            DAY,
            "09:00",
            60,
            "orbital-sanding of oak",
            Optional.of(new MaskUse("half mask", false, 100)));
    Credit credit = shop.credit(session);
    assertThat(credit.objections()).hasSize(3);
    assertThat(Workshop.refused(credit))
        .contains("No element is on record")
        .contains("With that and 2 things more, tests and checks passed, it would count as 10.");
  }

  // NIOSH 96-101: N-series filters are for aerosols without oil.
  @ParameterizedTest
  @CsvSource({"n95,100 wiping-oil,true", "n95,100 lacquer,false", "p100,100 wiping-oil,false"})
  void class_n_beside_an_oil_finish_is_told(String elementClass, String used, boolean told) {
    Workshop shop = new Workshop().halfMask().element("half mask", elementClass, DAY);
    Session session = shop.used(DAY, "09:00", 30, "half mask", used);
    assertThat(shop.credit(session).notes().stream().anyMatch(note -> note.contains("class N")))
        .isEqualTo(told);
  }

  // 42 CFR 84 subpart K: filtering facepieces are certified for particles alone.
  @Test
  void a_filtering_facepiece_counts_for_nothing_against_vapour_whatever_a_book_says() {
    Workshop shop =
        new Workshop()
            .mask("cup", Scheme.OSHA, "air-purifying", "filtering facepiece")
            .element("cup", "organic-vapour-n95", LAST_MONTH)
            .tasted("cup", "me", LAST_MONTH);
    Credit credit = shop.credit(shop.wore(DAY, "09:00", 30, "cup", "finishing of oak"));
    assertThat(credit.apf()).isEqualTo(10);
    assertThat(credit.vapourApf()).isEqualTo(1);
    assertThat(Workshop.refused(credit))
        .contains("cup is a filtering facepiece and holds particles only, not solvent vapour")
        .contains("whatever is printed on organic-vapour-n95 0");
    assertThat(credit.remedy()).isEmpty();
  }

  @Test
  void against_vapour_a_filtering_facepiece_is_mended_by_another_mask_and_never_by_a_cartridge() {
    Workshop shop =
        new Workshop()
            .mask("cup", Scheme.OSHA, "air-purifying", "filtering facepiece")
            .element("cup", "n95", LAST_MONTH)
            .tasted("cup", "me", LAST_MONTH)
            .halfMask()
            .element("half mask", "organic-vapour-p100", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH);
    Session session = shop.wore(DAY, "09:00", 30, "cup", "finishing of oak");
    assertThat(shop.credit(session).remedy().orElseThrow().steps())
        .extracting(Remedy.Step::action)
        .containsExactly(new WearInSession(session.id(), "half mask"));
  }

  // Of a cartridge with a filter in one, vapour uses up the sorbent and leaves the filter.
  @Test
  void a_cartridge_that_is_used_up_keeps_the_credit_of_its_filter_against_dust() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "organic-vapour-p100", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH);
    Session first = shop.wore(DAY, "09:00", 60, "half mask", "finishing of oak");
    shop.vapour(first, "toluene", 900, 990);
    Session later = shop.wore(DAY, "12:00", 60, "half mask", "finishing of oak");
    shop.vapour(later, "toluene", 20, 60);
    shop.vapour(shop.wore(DAY, "11:00", 60, "half mask", "finishing of oak"), "toluene", 900, 990);
    shop.vapour(shop.wore(DAY, "10:00", 60, "half mask", "finishing of oak"), "toluene", 900, 990);
    Credit credit = shop.credit(later);
    assertThat(credit.apf()).isEqualTo(10);
    assertThat(credit.vapourApf()).isEqualTo(1);
    assertThat(Workshop.refused(credit))
        .startsWith("Against vapour: organic-vapour-p100 0 was used up on 2026-03-02");
  }

  @Test
  void a_cartridge_open_for_too_long_or_ended_by_its_shift_keeps_its_filter_too() {
    Workshop shop =
        new Workshop()
            .halfMask()
            .element("half mask", "organic-vapour-p100", DAY.minusYears(2))
            .tasted("half mask", "me", LAST_MONTH);
    Credit old = shop.credit(shop.wore(DAY, "09:00", 60, "half mask", "finishing of oak"));
    assertThat(old.apf()).isEqualTo(10);
    assertThat(old.vapourApf()).isEqualTo(1);

    Workshop shift =
        new Workshop()
            .halfMask()
            .element("half mask", "formaldehyde-p100", LAST_MONTH)
            .tasted("half mask", "me", LAST_MONTH);
    shift.vapour(
        shift.wore(DAY.minusDays(1), "09:00", 60, "half mask", "finishing of oak"),
        "formaldehyde",
        1,
        2);
    Session next = shift.wore(DAY, "09:00", 60, "half mask", "finishing of oak");
    shift.vapour(next, "formaldehyde", 1, 2);
    assertThat(shift.credit(next).apf()).isEqualTo(10);
    assertThat(shift.credit(next).vapourApf()).isEqualTo(1);
    assertThat(shift.credit(next).remedy().orElseThrow().then().vapourApf()).isEqualTo(10);
  }

  // A disposable mask for one shift is a filter that the shift ends: its dust credit ends with it.
  @Test
  void a_filter_for_one_shift_still_ends_with_the_shift() {
    Workshop shop =
        new Workshop()
            .mask("cup", Scheme.UK, "air-purifying", "filtering facepiece")
            .element("cup", "ffp3", LAST_MONTH)
            .tasted("cup", "me", LAST_MONTH);
    shop.wore(DAY.minusDays(1), "09:00", 60, "cup", "orbital-sanding of oak");
    Credit credit = shop.credit(shop.wore(DAY, "09:00", 60, "cup", "orbital-sanding of oak"));
    assertThat(credit.apf()).isEqualTo(1);
  }

  @Test
  void a_remedy_takes_everything_in_the_air_together() {
    Workshop shop =
        inOrder().mask("air line", Scheme.OSHA, "supplied air, continuous flow", "helmet or hood");
    Session session = shop.wore(DAY, "09:00", 30, "half mask", "finishing of oak");
    shop.vapour(session, "formaldehyde", 1, 2).vapour(session, "methylene chloride", 20, 60);
    Remedy remedy = shop.credit(session).remedy().orElseThrow();
    assertThat(remedy.steps())
        .extracting(Remedy.Step::action)
        .containsExactly(new WearInSession(session.id(), "air line"));
    assertThat(remedy.then().apf()).isEqualTo(25);
    assertThat(remedy.then().vapourApf()).isEqualTo(25);
    assertThat(CreditText.done(Invocation.USUAL).others(shop.credit(session)))
        .noneMatch(line -> line.contains("gear add element"));
  }

  @Test
  void an_air_line_that_was_never_fit_tested_is_not_promised_as_it_stands() {
    Workshop shop = inOrder().mask("airline", Scheme.OSHA, "supplied air, demand", "half mask");
    Session session =
        shop.session(
            "me",
            DAY,
            "09:00",
            30,
            "finishing of oak",
            Optional.of(new MaskUse("half mask", false, 100)));
    shop.vapour(session, "methylene chloride", 20, 60);
    Remedy remedy = shop.credit(session).remedy().orElseThrow();
    assertThat(remedy.steps())
        .extracting(Remedy.Step::action)
        .containsExactly(
            new WearInSession(session.id(), "airline"),
            new RecordFitTest("airline", "me", DAY, false),
            new RecordSealCheck(session.id()));
    assertThat(remedy.then().vapourApf()).isEqualTo(10);
  }

  // 29 CFR 1910.134(f)(6) and (f)(8); HSG53: qualitative at full factor for half masks and
  // filtering facepieces, none for full masks. Demand-mode supplied air is a negative-pressure
  // mask.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "OSHA | air-purifying                  | half mask           | p100 | 10",
        "OSHA | air-purifying                  | full facepiece      | p100 | 10",
        "OSHA | powered air-purifying          | half mask           | he   | 50",
        "OSHA | powered air-purifying          | full facepiece      | he   | 1000",
        "OSHA | supplied air, demand           | full facepiece      |      | 10",
        "OSHA | supplied air, pressure-demand  | full facepiece      |      | 1000",
        "UK   | air-purifying                  | half mask           | p3   | 20",
        "UK   | air-purifying                  | filtering facepiece | ffp3 | 20",
        "UK   | air-purifying                  | full facepiece      | p3   | 1",
        "UK   | powered air-purifying          | full facepiece      | tm3  | 1",
      })
  void a_test_by_taste_is_worth_what_the_rule_of_the_device_says(
      Scheme scheme, String kind, String facepiece, String element, double factor) {
    Workshop shop = new Workshop().mask("mask", scheme, kind, facepiece);
    if (element != null) {
      shop.element("mask", element, LAST_MONTH);
    }
    shop.tasted("mask", "me", LAST_MONTH);
    Session session = shop.wore(DAY, "09:00", 60, "mask", "orbital-sanding of oak");
    assertThat(shop.credit(session).apf()).isEqualTo(factor);
  }
}
