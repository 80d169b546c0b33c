package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Element;
import motebook.reference.Solvents;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VapourLifeTest {
  private static final Set<Element> ORGANIC = Set.of(Element.ORGANIC_VAPOUR);
  private static final Set<Element> ALL = EnumSet.allOf(Element.class);

  private static Solvent solvent(String key) {
    return Solvents.shipped().withKey(key).orElseThrow();
  }

  private static Worn worn(String key, double ppm, double minutes) {
    return new Worn(Map.of(solvent(key), ppm), Set.of(), minutes, 53.3, 50);
  }

  private static VapourLife of(Worn... worn) {
    return VapourLife.of(List.of(worn), ORGANIC, 0.75);
  }

  @Test
  void a_stretch_uses_its_time_over_the_shortest_life_and_the_safety_fraction() {
    // OSHA's table (read): cumene at 1000 ppm 64 min, the only estimate there is for it but the
    // rule of thumb, which is longer.
    VapourLife life = of(worn("cumene", 1000, 24));
    assertThat(life.usedShare().orElseThrow()).isCloseTo(24 / (64 * 0.75), within(1e-12));
    assertThat(life.shortest()).contains("cumene (table)");
    assertThat(life.spent()).isFalse();
    assertThat(of(worn("cumene", 1000, 48)).spent()).isTrue();
    assertThat(VapourLife.of(List.of(worn("cumene", 1000, 48)), ORGANIC, 1).spent()).isFalse();
  }

  @Test
  void stretches_add_up_and_an_unworn_one_uses_nothing() {
    double one = of(worn("toluene", 200, 30)).usedShare().orElseThrow();
    double other = of(worn("ethanol", 100, 10)).usedShare().orElseThrow();
    assertThat(
            of(worn("toluene", 200, 30), worn("methanol", 50, 0), worn("ethanol", 100, 10))
                .usedShare()
                .orElseThrow())
        .isCloseTo(one + other, within(1e-12));
  }

  @Test
  void a_mixture_lasts_as_long_as_its_worst_vapour_at_the_concentration_of_all() {
    Map<Solvent, Double> ppm = Map.of(solvent("toluene"), 150.0, solvent("ethanol"), 50.0);
    VapourLife mixture = of(new Worn(ppm, Set.of(), 20, 53.3, 50));
    assertThat(mixture.usedShare()).isEqualTo(of(worn("ethanol", 200, 20)).usedShare());
    assertThat(mixture.shortest().orElseThrow()).startsWith("ethanol");
  }

  @Test
  void methanol_alone_or_in_a_mixture_leaves_no_time_whatever_else_is_printed_on_the_element() {
    Map<Solvent, Double> ppm = new HashMap<>(Map.of(solvent("toluene"), 150.0));
    ppm.put(solvent("methanol"), 0.5);
    for (Set<Element> holds : List.of(ORGANIC, ALL)) {
      VapourLife life = VapourLife.of(List.of(new Worn(ppm, Set.of(), 1, 53.3, 50)), holds, 0.75);
      assertThat(life.usedShare()).isEmpty();
      assertThat(life.spent()).isTrue();
      assertThat(life.refused()).singleElement().asString().contains("Methanol breaks through");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "methylene-chloride,supplied air",
    "isocyanates,supplied air",
    "methanol,Supplied air"
  })
  void what_only_supplied_air_protects_from_is_refused_by_every_element(String key, String why) {
    Worn mist = new Worn(Map.of(), Set.of(solvent(key)), 5, 53.3, 50);
    assertThat(VapourLife.of(List.of(mist), ALL, 0.75).refused())
        .singleElement()
        .asString()
        .contains(why);
  }

  @Test
  void formaldehyde_wants_its_own_element_and_ends_it_with_the_shift() {
    Worn curing =
        new Worn(Map.of(solvent("butanol"), 20.0), Set.of(solvent("formaldehyde")), 30, 20, 50);
    assertThat(VapourLife.of(List.of(curing), ORGANIC, 0.75).refused())
        .singleElement()
        .asString()
        .contains("its own cartridge");
    Set<Element> both = Set.of(Element.ORGANIC_VAPOUR, Element.FORMALDEHYDE);
    VapourLife held = VapourLife.of(List.of(curing), both, 0.75);
    assertThat(held.refused()).isEmpty();
    assertThat(held.oneShift()).isTrue();
    assertThat(held.notes()).singleElement().asString().contains("end of the shift");
    assertThat(held.usedShare().orElseThrow()).isPositive();
  }

  @Test
  void what_boils_below_65_degrees_ends_the_element_with_the_shift() {
    VapourLife acetone = of(worn("acetone", 100, 1));
    assertThat(acetone.oneShift()).isTrue();
    assertThat(acetone.notes()).singleElement().asString().contains("never stored and used again");
    assertThat(of(worn("toluene", 100, 1)).oneShift()).isFalse();
  }

  @Test
  void ammonia_wants_its_own_element_up_to_300_ppm() {
    Set<Element> ammonia = Set.of(Element.AMMONIA);
    assertThat(of(worn("ammonia", 20, 5)).refused()).hasSize(1);
    VapourLife held = VapourLife.of(List.of(worn("ammonia", 300, 5)), ammonia, 0.75);
    assertThat(held.usedShare()).hasValue(0);
    assertThat(held.notes()).singleElement().asString().contains("maker's figures");
    assertThat(VapourLife.of(List.of(worn("ammonia", 301, 5)), ammonia, 0.75).refused())
        .singleElement()
        .asString()
        .contains("300 ppm");
    assertThat(VapourLife.of(List.of(worn("toluene", 20, 5)), ammonia, 0.75).refused())
        .singleElement()
        .asString()
        .contains("organic-vapour element is needed");
  }

  @Test
  void above_1000_ppm_taken_together_there_is_no_time() {
    Map<Solvent, Double> ppm = Map.of(solvent("toluene"), 600.0, solvent("xylenes"), 401.0);
    VapourLife life = of(new Worn(ppm, Set.of(), 1, 53.3, 50));
    assertThat(life.usedShare()).isEmpty();
    assertThat(life.refused()).singleElement().asString().contains("1000 ppm");
  }

  @Test
  void an_element_that_was_never_worn_has_used_nothing() {
    VapourLife life = of();
    assertThat(life.usedShare()).hasValue(0);
    assertThat(life.shortest()).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> VapourLife.of(List.of(), ORGANIC, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Worn(Map.of(), Set.of(), -1, 20, 50));
  }

  @Provide
  Arbitrary<Map<Solvent, Double>> mixtures() {
    List<Solvent> held =
        Solvents.shipped().all().stream()
            .filter(solvent -> solvent.element() == Element.ORGANIC_VAPOUR)
            .toList();
    return Arbitraries.maps(Arbitraries.of(held), Arbitraries.doubles().between(0.01, 60))
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  private static double used(Map<Solvent, Double> ppm, double flow, double humidity) {
    Worn worn = new Worn(ppm, Set.of(), 10, flow, humidity);
    return VapourLife.of(List.of(worn), ORGANIC, 0.75).usedShare().orElseThrow();
  }

  @Property(tries = 300)
  void more_of_anything_never_uses_less(
      @ForAll("mixtures") Map<Solvent, Double> ppm,
      @ForAll @DoubleRange(min = 1, max = 3) double more,
      @ForAll @DoubleRange(min = 10, max = 100) double flow,
      @ForAll @DoubleRange(min = 0, max = 100) double humidity) {
    double once = used(ppm, flow, humidity);
    Map<Solvent, Double> denser = new HashMap<>(ppm);
    denser.replaceAll((solvent, each) -> each * more);
    Map<Solvent, Double> wider = new HashMap<>(ppm);
    wider.merge(solvent("ethanol"), more, Double::sum);
    double least = once * (1 - 1e-12);
    assertThat(used(denser, flow, humidity)).isGreaterThanOrEqualTo(least);
    assertThat(used(wider, flow, humidity)).isGreaterThanOrEqualTo(least);
    assertThat(used(ppm, flow * more, humidity)).isGreaterThanOrEqualTo(least);
    assertThat(used(ppm, flow, Math.min(100, humidity * more))).isGreaterThanOrEqualTo(least);
  }

  @Property(tries = 200)
  void a_split_stretch_uses_as_much_as_a_whole_one(
      @ForAll("mixtures") Map<Solvent, Double> ppm,
      @ForAll @DoubleRange(min = 0.1, max = 59) double cut) {
    Worn whole = new Worn(ppm, Set.of(), 60, 20, 50);
    Worn first = new Worn(ppm, Set.of(), cut, 20, 50);
    Worn second = new Worn(ppm, Set.of(), 60 - cut, 20, 50);
    double once = of(whole).usedShare().orElseThrow();
    assertThat(of(second, first).usedShare().orElseThrow()).isCloseTo(once, within(1e-12 * once));
  }
}
