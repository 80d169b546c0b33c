package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.reference.Solvent;
import motebook.science.CartridgeUse;
import motebook.science.RuleOfThumb;
import motebook.science.WheelerJonas;

/**
 * How long an organic-vapour cartridge lasts against one solvent, before any safety fraction.
 *
 * @param table from the printed breakthrough times, min
 * @param wheelerJonas from the carbon-bed estimate, min
 * @param ruleOfThumb from the rule of thumb, min; only beside one of the others
 * @param notes what must be said with it
 */
public record CartridgeLife(
    OptionalDouble table,
    OptionalDouble wheelerJonas,
    OptionalDouble ruleOfThumb,
    List<String> notes) {
  static final String ABOVE_THE_ELEMENTS =
      "Organic-vapour elements end at 1000 ppm (42 CFR 84.190): above that there is no time,"
          + " supplied air is called for.";

  private static final double ONE_SHIFT_BELOW_C = 65;
  private static final double SHIFT = 480;

  /**
   * An estimate that applies.
   *
   * @param basis "table", "wheeler-jonas" or "rule-of-thumb"
   * @param minutes its figure
   */
  public record Estimate(String basis, double minutes) {}

  /** The estimates for a solvent; none where an organic-vapour element does not hold it. */
  public static CartridgeLife of(Solvent solvent, CartridgeUse use) {
    if (!solvent.advice().isEmpty()) {
      return none(solvent.advice());
    }
    if (!use.allowed()) {
      return none(ABOVE_THE_ELEMENTS);
    }
    OptionalDouble table = figure(solvent.breakthrough().map(times -> times.life(use)));
    OptionalDouble bed = figure(solvent.vapour().map(vapour -> WheelerJonas.life(vapour, use)));
    boolean second = table.isPresent() || bed.isPresent();
    OptionalDouble rule =
        second && ruled(solvent)
            ? OptionalDouble.of(RuleOfThumb.life(use))
            : OptionalDouble.empty();
    return new CartridgeLife(table, bed, rule, List.of()).noted(solvent, use);
  }

  private static CartridgeLife none(String note) {
    OptionalDouble no = OptionalDouble.empty();
    return new CartridgeLife(no, no, no, List.of(note));
  }

  private static OptionalDouble figure(Optional<Double> minutes) {
    return minutes.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static boolean ruled(Solvent solvent) {
    return !solvent.lightAlcohol()
        && solvent.boilingC().isPresent()
        && solvent.boilingC().getAsDouble() > RuleOfThumb.BOILING_ABOVE_C;
  }

  private CartridgeLife noted(Solvent solvent, CartridgeUse use) {
    List<String> said = new ArrayList<>();
    if (solvent.boilingC().orElse(ONE_SHIFT_BELOW_C) < ONE_SHIFT_BELOW_C) {
      said.add("Boils below 65 °C: for one shift at most, never stored and used again.");
    }
    if (solvent.vapour().map(WheelerJonas.Vapour::saturationPpm).orElse(use.ppm()) < use.ppm()) {
      said.add("Air of 22 °C cannot hold that much of it: check the concentration.");
    }
    if (shortest().orElseThrow().minutes() > SHIFT) {
      said.add(
          "Longer than a shift is no licence for several days: what is held moves in storage.");
    }
    return new CartridgeLife(table, wheelerJonas, ruleOfThumb, List.copyOf(said));
  }

  /** The shortest estimate that applies, if any does. */
  public Optional<Estimate> shortest() {
    Estimate least = null;
    for (Estimate estimate : estimates()) {
      if (least == null || estimate.minutes() < least.minutes()) {
        least = estimate;
      }
    }
    return Optional.ofNullable(least);
  }

  /** The estimates that apply. */
  public List<Estimate> estimates() {
    List<Estimate> all = new ArrayList<>();
    table.ifPresent(minutes -> all.add(new Estimate("table", minutes)));
    wheelerJonas.ifPresent(minutes -> all.add(new Estimate("wheeler-jonas", minutes)));
    ruleOfThumb.ifPresent(minutes -> all.add(new Estimate("rule-of-thumb", minutes)));
    return List.copyOf(all);
  }
}
