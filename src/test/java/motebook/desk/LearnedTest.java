package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.reference.Reference;
import motebook.science.Estimate;
import org.junit.jupiter.api.Test;

class LearnedTest {
  private static final double CV = 0.15;
  // sigma of an hour of orbital sanding of oak: ln(26.7326/3.125)/1.645, the first check of
  // DayTest.
  private static final double VARIANCE = Math.pow(Math.log(26.7326 / 3.125) / 1.645, 2);
  // What a sampled session has of its own within the day: a factor of 1.6.
  private static final double SAMPLED = VARIANCE + Math.pow(Math.log(1.6), 2);
  private static final double ERROR = Math.log1p(CV * CV);

  private static Sample sample(int from, int to, double mgPerM3, String fraction, boolean below) {
    return new Sample(
        1,
        "me",
        Shops.DAY,
        from,
        to,
        fraction,
        Sample.Kind.GRAVIMETRIC,
        new Sample.Told(mgPerM3, below),
        CV,
        "");
  }

  private static Sample sample(int from, int to, double mgPerM3) {
    return sample(from, to, mgPerM3, "inhalable", false);
  }

  private static Learned learned(Shops shops, Sample... samples) {
    return Learned.from(List.of(samples), any -> shops.reckoning("me"));
  }

  private static Shops sanding() {
    return new Shops().me("09:00", 60, "orbital-sanding of oak");
  }

  @Test
  void a_result_of_10_on_an_estimate_of_25_gives_about_10_with_its_own_error() {
    // By hand: the middle goes V/(V+e) of the way, V with the session's own part, on the log scale,
    // the variance becomes Ve/(V+e).
    Shops shops = sanding();
    DayReport day = shops.report(learned(shops, sample(540, 600, 10)));
    double middle = 25 * Math.pow(10 / 25.0, SAMPLED / (SAMPLED + ERROR));
    assertThat(middle).isBetween(10.0, 10.2);
    assertThat(day.sessions().get(0).meanOutsideMgPerM3()).isCloseTo(middle, within(1e-4));
    Estimate outside = day.outside().estimate();
    assertThat(outside.central()).isCloseTo(middle / 8, within(1e-5));
    double sigma = Math.sqrt(SAMPLED * ERROR / (SAMPLED + ERROR));
    assertThat(outside.sigma()).isCloseTo(sigma, within(1e-5)).isBetween(0.14, 0.15);
    assertThat(day.learnedFrom()).isEqualTo(1);
  }

  @Test
  void without_samples_nothing_changes_at_all() {
    Shops shops = sanding();
    assertThat(learned(shops)).isSameAs(Learned.NOTHING);
    assertThat(shops.report(learned(shops)).outside()).isEqualTo(shops.report().outside());
    assertThat(shops.report().learnedFrom()).isZero();
  }

  @Test
  void a_sample_teaches_other_days_through_the_shared_parts_alone() {
    Shops sampled = sanding();
    Learned learned = learned(sampled, sample(540, 600, 10));
    Shops same = new Shops().did("Ana", "shop", "09:00", 60, "orbital-sanding of oak");
    Estimate other = Day.report(same.reckoning("Ana", learned)).outside().estimate();
    assertThat(other.central()).isBetween(1.4, 2.9);
    assertThat(other.sigma()).isLessThan(Math.sqrt(VARIANCE)).isGreaterThan(0.6);
    Shops sawing = new Shops().me("09:00", 60, "table-saw of oak");
    double before = sawing.report().outside().estimate().central();
    double after = sawing.report(learned).outside().estimate().central();
    assertThat(after).isLessThan(before).isGreaterThan(0.89 * before);
  }

  @Test
  void one_low_result_lowers_no_other_job_by_more_than_a_tenth_and_makes_none_surer() {
    Shops sampled = sanding();
    Learned learned = learned(sampled, sample(540, 600, 0.5));
    Shops sawing = new Shops().me("09:00", 60, "table-saw of oak");
    Estimate before = sawing.report().outside().estimate();
    Estimate after = sawing.report(learned).outside().estimate();
    assertThat(after.central() / before.central()).isCloseTo(0.9, within(1e-9));
    assertThat(after.sigma()).isCloseTo(before.sigma(), within(1e-9));
    Shops again = new Shops().did("Ana", "shop", "09:00", 60, "orbital-sanding of oak");
    Estimate same = Day.report(again.reckoning("Ana", learned)).outside().estimate();
    assertThat(same.central() / again.reckoning("Ana").outside(Limit.Fraction.INHALABLE).central())
        .isLessThan(0.4);
  }

  @Test
  void a_high_result_raises_every_job() {
    Learned learned = learned(sanding(), sample(540, 600, 200));
    Shops sawing = new Shops().me("09:00", 60, "table-saw of oak");
    double before = sawing.report().outside().estimate().central();
    assertThat(sawing.report(learned).outside().estimate().central()).isGreaterThan(1.3 * before);
  }

  @Test
  void three_low_results_of_two_operations_on_two_days_lower_every_job() {
    Shops work =
        new Shops().me("09:00", 60, "orbital-sanding of oak").me("14:00", 60, "planer of oak");
    double planing = work.report().sessions().get(1).meanOutsideMgPerM3();
    Sample low = sample(540, 600, 5);
    Sample other = sample(840, 900, planing / 4);
    Sample third = onDay(1, sample(540, 600, 7));
    Shops sawing = new Shops().me("09:00", 60, "table-saw of oak");
    double before = sawing.report().outside().estimate().central();
    double two = central(sawing, learned(work, low, other));
    assertThat(two / before).isCloseTo(0.9, within(1e-9));
    assertThat(central(sawing, learned(work, low, other, third)) / before).isLessThan(0.7);
    // one operation that lies above its figure, and nothing is lowered
    Sample high = sample(840, 900, 2 * planing);
    assertThat(central(sawing, learned(work, low, high, third)) / before).isGreaterThan(0.899);
  }

  private static Sample onDay(int day, Sample s) {
    return new Sample(
        2,
        s.person(),
        s.date().plusDays(day),
        s.fromMinute(),
        s.toMinute(),
        s.fraction(),
        s.kind(),
        s.result(),
        s.cv(),
        s.note());
  }

  private static double central(Shops shops, Learned learned) {
    return shops.report(learned).outside().estimate().central();
  }

  @Test
  void two_results_of_one_day_may_differ() {
    Shops shops =
        new Shops()
            .me("09:00", 60, "orbital-sanding of oak")
            .me("14:00", 60, "orbital-sanding of oak");
    DayReport day = shops.report(learned(shops, sample(540, 600, 12), sample(840, 900, 24)));
    assertThat(day.sessions().get(0).meanOutsideMgPerM3()).isCloseTo(12, within(1.0));
    assertThat(day.sessions().get(1).meanOutsideMgPerM3()).isCloseTo(24, within(2.0));
    // By hand: two stretches whose own parts are independent differ by the factor of 2 with a
    // deviation of sqrt(2 (ln 1.6^2 + error)).
    Evidence evidence =
        Evidence.of(
            List.of(sample(540, 600, 12), sample(840, 900, 24)),
            learned(shops, sample(540, 600, 12), sample(840, 900, 24)),
            Reference.shipped(),
            shops.shop().settings(),
            any -> shops.reckoning("me"));
    assertThat(Math.abs(evidence.samples().get(1).agreement().orElseThrow().z())).isLessThan(1.3);
  }

  @Test
  void an_area_sample_is_held_against_the_room_alone() {
    Shops shops = sanding();
    Sample.Use area = new Sample.Use(Optional.of("shop"), OptionalDouble.empty(), false, false);
    Sample hung =
        new Sample(
            1,
            "me",
            Shops.DAY,
            540,
            600,
            "inhalable",
            Sample.Kind.GRAVIMETRIC,
            new Sample.Told(2, false),
            CV,
            "",
            area);
    Evidence.Agreement agreement = agreement(evidence(shops, hung));
    // 25 at the face less the near field's G/beta: 141.5 mg/min over pi 0.8^2 6 m3/min.
    assertThat(agreement.estimatedMgPerM3())
        .isCloseTo(25 - 141.5 / (Math.PI * 0.64 * 6), within(0.05));
  }

  @Test
  void a_sample_over_several_sessions_leaves_their_mean_close_to_it() {
    Shops shops =
        new Shops()
            .me("09:00", 60, "orbital-sanding of oak")
            .me("10:00", 60, "table-saw of oak")
            .did("Ana", "shop", "09:30", 60, "hand-router of plywood");
    DayReport before = shops.report();
    DayReport after = shops.report(learned(shops, sample(540, 660, 4)));
    assertThat(before.outside().estimate().central()).isGreaterThan(3);
    assertThat(after.outside().estimate().central()).isCloseTo(4 * 120 / 480.0, within(0.06));
    assertThat(after.outside().estimate().sigma()).isBetween(0.12, 0.16);
  }

  @Test
  void what_was_breathed_in_the_interval_counts_whatever_the_sessions() {
    // The first half of the hour is thinner than the whole: the room still fills.
    Shops shops = sanding();
    Evidence half = evidence(shops, sample(540, 570, 10));
    Evidence whole = evidence(shops, sample(540, 600, 10));
    assertThat(estimated(whole)).isCloseTo(25, within(1e-6));
    assertThat(estimated(half)).isLessThan(25).isGreaterThan(20);
    // An hour of sanding and an hour away: half the mean.
    assertThat(estimated(evidence(shops, sample(540, 660, 10)))).isCloseTo(12.5, within(1e-6));
  }

  @Test
  void each_fraction_is_held_against_its_own_part_of_the_air() {
    Shops shops = sanding();
    assertThat(estimated(evidence(shops, sample(540, 600, 9, "respirable", false))))
        .isCloseTo(0.167 * 25, within(1e-6));
    assertThat(estimated(evidence(shops, sample(540, 600, 9, "total", false))))
        .isCloseTo(25 / 1.5, within(1e-6));
  }

  @Test
  void a_result_below_detection_draws_the_estimate_down_and_never_to_nothing() {
    Shops shops = sanding();
    DayReport day = shops.report(learned(shops, sample(540, 600, 5, "inhalable", true)));
    double mean = day.sessions().get(0).meanOutsideMgPerM3();
    assertThat(mean).isLessThan(5).isGreaterThan(0.5);
    assertThat(day.outside().estimate().sigma()).isGreaterThan(0.4);
  }

  @Test
  void a_sample_of_an_idle_time_teaches_nothing_and_says_so() {
    Shops shops = sanding();
    Sample idle = sample(900, 960, 3);
    assertThat(learned(shops, idle)).isSameAs(Learned.NOTHING);
    assertThat(evidence(shops, idle).samples().get(0).agreement()).isEmpty();
  }

  @Test
  void a_sample_far_from_all_else_is_pointed_at() {
    Shops shops = sanding();
    assertThat(agreement(evidence(shops, sample(540, 600, 30))).disagrees()).isFalse();
    Evidence.Agreement far = agreement(evidence(shops, sample(540, 600, 2500)));
    assertThat(far.disagrees()).isTrue();
    assertThat(far.ratio()).isCloseTo(100, within(1e-6));
    // By hand: ln(100) over the deviation of estimate and error together.
    assertThat(far.z()).isCloseTo(Math.log(100) / Math.sqrt(SAMPLED + ERROR), within(1e-4));
  }

  @Test
  void every_day_says_that_a_sample_contradicts_all_else() {
    Shops shops = sanding();
    DayReport quiet = shops.report(learned(shops, sample(540, 600, 30)));
    assertThat(quiet.remarks()).isEmpty();
    DayReport far = shops.report(learned(shops, sample(540, 600, 2500)));
    assertThat(far.remarks())
        .singleElement()
        .asString()
        .startsWith("Measured and estimated contradict each other by more than three deviations")
        .contains("sample 1 of 2026-03-02");
  }

  @Test
  void the_lesson_of_an_operation_begins_at_its_published_figure() {
    Evidence evidence = evidence(sanding(), sample(540, 600, 10));
    assertThat(evidence.operations()).hasSize(1);
    Evidence.Lesson lesson = evidence.operations().get(0);
    assertThat(lesson.operation().key()).isEqualTo("orbital-sanding");
    assertThat(lesson.before().central()).isCloseTo(25, within(1e-9));
    assertThat(lesson.after().central()).isLessThan(25).isGreaterThan(10);
    assertThat(lesson.after().sigma()).isLessThan(lesson.before().sigma());
  }

  private static Evidence evidence(Shops shops, Sample sample) {
    return Evidence.of(
        List.of(sample),
        learned(shops, sample),
        Reference.shipped(),
        shops.shop().settings(),
        any -> shops.reckoning("me"));
  }

  private static Evidence.Agreement agreement(Evidence evidence) {
    return evidence.samples().get(0).agreement().orElseThrow();
  }

  private static double estimated(Evidence evidence) {
    return agreement(evidence).estimatedMgPerM3();
  }
}
