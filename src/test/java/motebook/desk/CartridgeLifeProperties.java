package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.science.CartridgeUse;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** More of anything that wears a cartridge never lets it last longer, by no estimator. */
class CartridgeLifeProperties {
  private static final List<Function<CartridgeLife, OptionalDouble>> ESTIMATORS =
      List.of(
          CartridgeLife::table,
          CartridgeLife::wheelerJonas,
          CartridgeLife::ruleOfThumb,
          life ->
              life.shortest()
                  .map(best -> OptionalDouble.of(best.minutes()))
                  .orElse(OptionalDouble.empty()));

  @Provide
  Arbitrary<Solvent> solvents() {
    return Arbitraries.of(Solvents.shipped().all());
  }

  @Provide
  Arbitrary<Double> concentrations() {
    return Arbitraries.doubles().between(-9, 3.2).map(exponent -> Math.pow(10, exponent));
  }

  @Property(tries = 4000)
  void life_never_rises_with_concentration(
      @ForAll("solvents") Solvent solvent,
      @ForAll("concentrations") double one,
      @ForAll("concentrations") double other,
      @ForAll @DoubleRange(min = 5, max = 200) double flow,
      @ForAll @DoubleRange(min = 0, max = 100) double humidity) {
    neverRises(
        solvent,
        new CartridgeUse(Math.min(one, other), flow, humidity, 52),
        new CartridgeUse(Math.max(one, other), flow, humidity, 52));
  }

  @Property(tries = 4000)
  void life_never_rises_with_flow(
      @ForAll("solvents") Solvent solvent,
      @ForAll("concentrations") double ppm,
      @ForAll @DoubleRange(min = 1, max = 500) double one,
      @ForAll @DoubleRange(min = 1, max = 500) double other) {
    neverRises(
        solvent,
        new CartridgeUse(ppm, Math.min(one, other), 50, 52),
        new CartridgeUse(ppm, Math.max(one, other), 50, 52));
  }

  @Property(tries = 4000)
  void life_never_rises_with_humidity(
      @ForAll("solvents") Solvent solvent,
      @ForAll("concentrations") double ppm,
      @ForAll @DoubleRange(min = 0, max = 100) double one,
      @ForAll @DoubleRange(min = 0, max = 100) double other) {
    neverRises(
        solvent,
        new CartridgeUse(ppm, 53.3, Math.min(one, other), 52),
        new CartridgeUse(ppm, 53.3, Math.max(one, other), 52));
  }

  private static void neverRises(Solvent solvent, CartridgeUse less, CartridgeUse more) {
    CartridgeLife easy = CartridgeLife.of(solvent, less);
    CartridgeLife hard = CartridgeLife.of(solvent, more);
    for (Function<CartridgeLife, OptionalDouble> estimator : ESTIMATORS) {
      OptionalDouble harder = estimator.apply(hard);
      if (harder.isPresent()) {
        // Where the harder use has an estimate, the easier one has it too.
        double easier = estimator.apply(easy).orElseThrow();
        assertThat(harder.getAsDouble()).isBetween(0.0, easier * (1 + 1e-12));
      }
    }
  }
}
