package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import motebook.reference.Finish;
import motebook.reference.Finishes;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of a day's vapour, whatever was used and however long. */
class FumesProperties {
  @Provide
  Arbitrary<String> finishes() {
    return Arbitraries.of(Finishes.shipped().all().stream().map(Finish::key).toList());
  }

  private static double index(Shops shops, String person) {
    return Day.report(shops.reckoning(person))
        .vapour()
        .map(vapour -> vapour.indexOutside().typical())
        .orElse(0.0);
  }

  @Property(tries = 100)
  void twice_as_much_is_twice_the_index(
      @ForAll("finishes") String key,
      @ForAll @DoubleRange(min = 1, max = 5000) double millilitres,
      @ForAll @IntRange(min = 1, max = 300) int minutes) {
    double once =
        index(new Shops().used("me", "shop", "09:00", minutes, millilitres + " " + key), "me");
    double twice =
        index(new Shops().used("me", "shop", "09:00", minutes, 2 * millilitres + " " + key), "me");
    assertThat(twice).isCloseTo(2 * once, within(1e-9 * twice));
  }

  @Property(tries = 100)
  void two_finishes_together_are_the_sum_of_each_alone(
      @ForAll("finishes") String one,
      @ForAll("finishes") String other,
      @ForAll @IntRange(min = 1, max = 120) int minutes,
      @ForAll @IntRange(min = 0, max = 200) int later) {
    String start = String.format("%02d:%02d", 11 + later / 60, later % 60);
    Shops both =
        new Shops()
            .used("me", "shop", "09:00", minutes, "100 " + one)
            .used("Ana", "shop", "10:00", 30, "50 " + other)
            .did("Ben", "shop", start, 60, "in-shop");
    Shops first =
        new Shops()
            .used("me", "shop", "09:00", minutes, "100 " + one)
            .did("Ana", "shop", "10:00", 30, "finishing")
            .did("Ben", "shop", start, 60, "in-shop");
    Shops second =
        new Shops()
            .did("me", "shop", "09:00", minutes, "finishing")
            .used("Ana", "shop", "10:00", 30, "50 " + other)
            .did("Ben", "shop", start, 60, "in-shop");
    double sum = index(first, "Ben") + index(second, "Ben");
    assertThat(index(both, "Ben")).isPositive().isCloseTo(sum, within(1e-9 * sum));
  }

  @Property(tries = 100)
  void the_range_holds_the_middle_and_the_inside_is_never_worse(
      @ForAll("finishes") String key,
      @ForAll @DoubleRange(min = 1, max = 2000) double millilitres) {
    VapourReport vapour =
        new Shops()
            .used("me", "shop", "09:00", 45, millilitres + " " + key)
            .report()
            .vapour()
            .orElseThrow();
    assertThat(vapour.indexOutside().low90()).isLessThan(vapour.indexOutside().central());
    assertThat(vapour.indexOutside().high90()).isGreaterThan(vapour.indexOutside().central());
    assertThat(vapour.indexInside().typical()).isLessThanOrEqualTo(vapour.indexOutside().typical());
    vapour.fire().ifPresent(fire -> assertThat(fire.share()).isGreaterThanOrEqualTo(0.1));
  }
}
