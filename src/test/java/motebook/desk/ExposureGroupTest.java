package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Sample;
import motebook.reference.Limit.Fraction;
import motebook.reference.Reference;
import motebook.science.LimitVerdict;
import motebook.science.LognormalSample;
import org.junit.jupiter.api.Test;

/** The sampled days of one person at one job. */
class ExposureGroupTest {
  private static final Sample.Use SHIFT =
      new Sample.Use(Optional.empty(), OptionalDouble.empty(), false, true);

  private final Shops shops =
      new Shops()
          .me("08:00", 240, "orbital-sanding of oak")
          .me("12:00", 120, "assembly of oak")
          .me("14:00", 120, "orbital-sanding of oak", "tool-vacuum");
  private final List<Sample> samples = new ArrayList<>();

  private ExposureGroupTest measured(
      int day, int from, int minutes, double mgPerM3, boolean below, Sample.Use use) {
    samples.add(
        new Sample(
            samples.size() + 1,
            "me",
            Shops.DAY.plusDays(day),
            from,
            from + minutes,
            "inhalable",
            Sample.Kind.GRAVIMETRIC,
            new Sample.Told(mgPerM3, below),
            0.15,
            "",
            use));
    return this;
  }

  private ExposureGroupTest measured(int day, int from, int minutes, double mgPerM3) {
    return measured(day, from, minutes, mgPerM3, false, Sample.Use.PERSONAL);
  }

  /** Two hours of the first session on as many days, each standing for its shift. */
  private ExposureGroupTest shifts(double... values) {
    for (int i = 0; i < values.length; i++) {
      measured(i, 480, 120, values[i], false, SHIFT);
    }
    return this;
  }

  private List<ExposureGroup> groups(String set) {
    shops.limits(set);
    Learned learned = Learned.from(samples, any -> shops.reckoning("me"));
    return ExposureGroup.of(
        samples,
        learned,
        Reference.shipped(),
        shops.shop().settings(),
        any -> shops.reckoning("me", learned));
  }

  // Mulhausen and Damiano 1998, Table V.2, read in an open R package: GM 2.479, GSD 1.502, P95
  // 4.84, UTL95,95 7.046.
  @Test
  void fifteen_published_shifts_give_their_published_figures() {
    ExposureGroup group =
        shifts(1.3, 1.8, 1.2, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9)
            .groups("great-britain")
            .get(0);
    assertThat(group.operation().key()).isEqualTo("orbital-sanding");
    Statistics stats = group.statistics();
    assertThat(stats.results()).isEqualTo(15);
    LognormalSample sample = stats.sample().orElseThrow();
    assertThat(sample.gm()).isCloseTo(2.479, within(5e-4));
    assertThat(sample.gsd()).isCloseTo(1.502, within(5e-4));
    assertThat(sample.p95()).isCloseTo(4.84, within(5e-3));
    assertThat(stats.upper95().orElseThrow()).isCloseTo(7.046, within(5e-4));
  }

  @Test
  void a_short_result_is_brought_to_the_8_hour_mean_of_its_day_before_it_meets_a_limit() {
    for (int day = 0; day < 3; day++) {
      measured(day, 480, 480, 2 + day);
    }
    // All the work was sampled: 2, 3 and 4 over eight hours.
    ExposureGroup whole = groups("acgih").get(0);
    assertThat(whole.days()).extracting(SampledDay::mgPerM3).containsExactly(2.0, 3.0, 4.0);
    assertThat(whole.days()).extracting(SampledDay::restMgPerM3).containsOnly(0.0);
    samples.clear();
    for (int day = 0; day < 3; day++) {
      measured(day, 480, 240, 8);
    }
    SampledDay half = groups("acgih").get(0).days().get(0);
    assertThat(half.measuredMgPerM3()).isEqualTo(8);
    assertThat(half.restMgPerM3()).isPositive();
    assertThat(half.mgPerM3()).isCloseTo(8 / 2.0 + half.restMgPerM3(), within(1e-12));
  }

  @Test
  void slices_of_one_session_count_as_one() {
    for (int day = 0; day < 3; day++) {
      measured(day, 480, 60, 6).measured(day, 540, 180, 10);
    }
    ExposureGroup group = groups("acgih").get(0);
    assertThat(group.statistics().results()).isEqualTo(3);
    assertThat(group.days().get(0).measuredMgPerM3()).isCloseTo(9, within(1e-12));
    assertThat(group.days().get(0).minutes()).isEqualTo(240);
  }

  @Test
  void many_results_of_two_days_are_no_group() {
    for (int slice = 0; slice < 4; slice++) {
      measured(0, 480 + 60 * slice, 60, 5).measured(1, 480 + 60 * slice, 60, 4);
    }
    assertThat(groups("acgih")).isEmpty();
  }

  @Test
  void another_set_of_controls_is_another_group() {
    measured(0, 480, 240, 8).measured(1, 480, 240, 9).measured(2, 840, 120, 1);
    assertThat(groups("acgih")).isEmpty();
    measured(3, 480, 240, 7);
    List<ExposureGroup> groups = groups("acgih");
    assertThat(groups).hasSize(1);
    assertThat(groups.get(0).controls()).isEmpty();
    assertThat(groups.get(0).days()).hasSize(3);
  }

  @Test
  void area_and_relative_results_are_nobodys_exposure() {
    Sample.Use area = new Sample.Use(Optional.of("shop"), OptionalDouble.empty(), false, false);
    Sample.Use relative = new Sample.Use(Optional.empty(), OptionalDouble.empty(), true, false);
    for (int day = 0; day < 3; day++) {
      measured(day, 480, 240, 2, false, area).measured(day, 480, 240, 3, false, relative);
    }
    assertThat(groups("acgih")).isEmpty();
  }

  @Test
  void they_are_held_against_the_lowest_limit_of_the_chosen_set() {
    ExposureGroup group = shifts(0.84, 0.98, 0.42).groups("acgih").get(0);
    assertThat(group.limit().orElseThrow().mgPerM3()).isEqualTo(1);
    assertThat(group.converted()).isFalse();
    assertThat(group.statistics().held().orElseThrow().limit()).isEqualTo(1);
  }

  @Test
  void a_limit_of_total_dust_is_converted_by_the_owners_factor() {
    ExposureGroup group = shifts(0.84, 0.98, 0.42).groups("niosh").get(0);
    assertThat(group.limit().orElseThrow().fraction()).isEqualTo(Fraction.TOTAL);
    assertThat(group.converted()).isTrue();
    assertThat(group.statistics().held().orElseThrow().limit())
        .isCloseTo(1.5 * group.limit().orElseThrow().mgPerM3(), within(1e-12));
  }

  @Test
  void three_shifts_below_detection_under_a_tenth_of_the_limit_pass_the_first_test() {
    for (int day = 0; day < 3; day++) {
      measured(day, 480, 120, 0.05 + day / 100.0, true, SHIFT);
    }
    Statistics stats = groups("acgih").get(0).statistics();
    assertThat(stats.sample()).isEmpty();
    assertThat(stats.censored()).isEqualTo(3);
    assertThat(stats.held().orElseThrow().verdict()).isEqualTo(LimitVerdict.KEPT);
  }

  @Test
  void equal_results_give_no_certainty() {
    Statistics stats = shifts(0.5, 0.5, 0.5, 0.5, 0.5, 0.5).groups("acgih").get(0).statistics();
    assertThat(stats.upper95()).isEmpty();
    assertThat(stats.held().orElseThrow().over()).isEmpty();
    assertThat(stats.held().orElseThrow().verdict()).isEqualTo(LimitVerdict.MORE_RESULTS_NEEDED);
  }
}
