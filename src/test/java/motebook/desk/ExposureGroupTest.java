package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import motebook.model.Sample;
import motebook.reference.Limit.Fraction;
import motebook.reference.Reference;
import org.junit.jupiter.api.Test;

/** The statistics of the samples of one kind of work. */
class ExposureGroupTest {
  private final Shops shops =
      new Shops()
          .me("08:00", 240, "orbital-sanding of oak")
          .me("12:00", 120, "assembly of oak")
          .me("14:00", 120, "orbital-sanding of pine");
  private final List<Sample> samples = new ArrayList<>();

  private ExposureGroupTest measured(int from, double mgPerM3, String fraction, boolean below) {
    samples.add(
        new Sample(
            samples.size() + 1,
            "me",
            Shops.DAY,
            from,
            from + 15,
            fraction,
            Sample.Kind.GRAVIMETRIC,
            new Sample.Told(mgPerM3, below),
            0.15,
            ""));
    return this;
  }

  private ExposureGroupTest measured(double... values) {
    for (int i = 0; i < values.length; i++) {
      measured(480 + 15 * i, values[i], "inhalable", false);
    }
    return this;
  }

  private List<ExposureGroup> groups(String set) {
    shops.limits(set);
    Learned learned = Learned.from(samples, any -> shops.reckoning("me"));
    return ExposureGroup.of(samples, learned, Reference.shipped(), shops.shop().settings());
  }

  // Mulhausen and Damiano 1998, Table V.2, read in an open R package: GM 2.479, GSD 1.502, P95
  // 4.84,
  // UTL95,95 7.046; the mean and the limit at 70 % derived, lognormal.py.
  @Test
  void fifteen_published_results_of_sanding_give_their_published_figures() {
    ExposureGroup group =
        measured(1.3, 1.8, 1.2, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9)
            .groups("great-britain")
            .get(0);
    assertThat(group.operation().key()).isEqualTo("orbital-sanding");
    assertThat(group.material()).isEmpty();
    Statistics stats = group.statistics();
    assertThat(stats.results()).isEqualTo(15);
    assertThat(stats.sample().gm()).isCloseTo(2.479, within(5e-4));
    assertThat(stats.sample().gsd()).isCloseTo(1.502, within(5e-4));
    assertThat(stats.mean().orElseThrow()).isCloseTo(2.68, within(1e-9));
    assertThat(stats.sample().p95()).isCloseTo(4.84, within(5e-3));
    assertThat(stats.upper95()).isCloseTo(7.046, within(5e-4));
    assertThat(stats.upper70()).isCloseTo(5.409, within(5e-4));
  }

  @Test
  void they_are_held_against_the_lowest_limit_of_the_chosen_set() {
    ExposureGroup group = measured(0.84, 0.98, 0.42).groups("acgih").get(0);
    assertThat(group.limit().orElseThrow().mgPerM3()).isEqualTo(1);
    assertThat(group.converted()).isFalse();
    assertThat(group.statistics().held().orElseThrow().limit()).isEqualTo(1);
  }

  @Test
  void a_limit_of_total_dust_is_converted_by_the_owners_factor() {
    ExposureGroup group = measured(0.84, 0.98, 0.42).groups("niosh").get(0);
    assertThat(group.limit().orElseThrow().fraction()).isEqualTo(Fraction.TOTAL);
    assertThat(group.converted()).isTrue();
    assertThat(group.statistics().held().orElseThrow().limit())
        .isCloseTo(1.5 * group.limit().orElseThrow().mgPerM3(), within(1e-12));
  }

  @Test
  void two_results_are_no_group_and_a_third_of_another_fraction_makes_none() {
    assertThat(measured(0.84, 0.98).measured(600, 0.2, "respirable", false).groups("acgih"))
        .isEmpty();
  }

  @Test
  void an_operation_on_two_materials_is_told_whole_and_by_the_material_with_enough() {
    measured(0.84, 0.98, 0.42).measured(840, 1.5, "inhalable", false);
    List<ExposureGroup> groups = groups("acgih");
    assertThat(groups).hasSize(2);
    assertThat(groups.get(0).statistics().results()).isEqualTo(4);
    assertThat(groups.get(1).material().orElseThrow().key()).isEqualTo("oak");
    assertThat(groups.get(1).statistics().results()).isEqualTo(3);
  }

  @Test
  void a_result_below_detection_is_counted_as_such() {
    measured(0.84, 0.98, 0.42).measured(600, 0.3, "inhalable", true);
    Statistics stats = groups("acgih").get(0).statistics();
    assertThat(stats.results()).isEqualTo(4);
    assertThat(stats.censored()).isEqualTo(1);
    assertThat(stats.mean()).isEmpty();
  }
}
