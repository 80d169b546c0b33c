package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.MaskUse;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.science.Protection;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class ElementCareProperties {

  private static ElementStanding worn(double percent, int... lengths) {
    Workshop shop = new Workshop().halfMask();
    shop.element(
        "half mask", "p100", Workshop.DAY, true, OptionalDouble.empty(), OptionalDouble.of(200));
    LocalTime at = LocalTime.of(8, 0);
    for (int minutes : lengths) {
      shop.session(
          "me",
          Workshop.DAY,
          at.toString(),
          minutes,
          "orbital-sanding of oak",
          Optional.of(new MaskUse("half mask", true, percent)));
      at = at.plusMinutes(minutes);
    }
    return shop.standing(0, Workshop.DAY);
  }

  @Property(tries = 100)
  void the_load_adds_up_over_split_sessions(
      @ForAll @IntRange(min = 1, max = 200) int first,
      @ForAll @IntRange(min = 1, max = 200) int second,
      @ForAll @DoubleRange(min = 1, max = 100) double percent) {
    ElementStanding split = worn(percent, first, second);
    ElementStanding whole = worn(percent, first + second);
    assertThat(split.loadMg().typical())
        .isCloseTo(whole.loadMg().typical(), within(1e-9 * whole.loadMg().typical()));
    assertThat(split.loadMg().high90())
        .isCloseTo(whole.loadMg().high90(), within(1e-9 * whole.loadMg().high90()));
    assertThat(split.hoursWorn()).isCloseTo(whole.hoursWorn(), within(1e-9));
  }

  @Property
  void the_effective_factor_lies_between_one_and_what_the_unworn_time_allows(
      @ForAll @DoubleRange(min = 1, max = 10_000) double apf,
      @ForAll @DoubleRange(min = 0, max = 1) double worn) {
    double factor = Protection.effectiveFactor(apf, worn);
    assertThat(factor).isGreaterThanOrEqualTo(1 - 1e-12);
    if (worn < 1) {
      assertThat(factor).isLessThanOrEqualTo(1 / (1 - worn) * (1 + 1e-9));
    }
  }

  @Property(tries = 200)
  void the_life_against_a_mixture_never_rises_with_more_of_it_or_with_flow_or_humidity(
      @ForAll @DoubleRange(min = 1, max = 900) double toluene,
      @ForAll @DoubleRange(min = 1, max = 900) double other,
      @ForAll @DoubleRange(min = 1, max = 3) double more) {
    Solvent a = Solvents.shipped().find("toluene").orElseThrow();
    Solvent b = Solvents.shipped().find("ethanol").orElseThrow();
    double life = life(Map.of(a, toluene, b, other), 40, 50);
    assertThat(life(Map.of(a, toluene * more, b, other), 40, 50))
        .isLessThanOrEqualTo(life * (1 + 1e-9));
    assertThat(life(Map.of(a, toluene, b, other), 40 * more, 50))
        .isLessThanOrEqualTo(life * (1 + 1e-9));
    assertThat(life(Map.of(a, toluene, b, other), 40, 90)).isLessThanOrEqualTo(life);
    for (Map<Solvent, Double> alone : List.of(Map.of(a, toluene), Map.of(b, other))) {
      assertThat(life).isLessThanOrEqualTo(life(alone, 40, 50) * (1 + 1e-9));
    }
  }

  private static double life(Map<Solvent, Double> ppm, double flow, double humidity) {
    return CartridgeMixture.minutes(ppm, flow, humidity, 52).orElseThrow();
  }
}
