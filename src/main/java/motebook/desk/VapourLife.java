package motebook.desk;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Element;
import motebook.science.CartridgeUse;

/**
 * How much of a gas element's life some stretches of wear have used.
 *
 * <p>Each stretch uses {@code minutes/(life·safety fraction)}, and they add up. The life is that of
 * {@link CartridgeLife}. In a mixture it is the shortest of the lives that each vapour would have
 * alone at the concentration of all together: OSHA's inspection rule for vapours that break through
 * in times of the same order (CPL 2-0.120, 1998, from memory), which for others is the cautious
 * side. Methanol, alone or in a mixture, leaves no time at all.
 *
 * @param usedShare share of the life used, 1 at its end; empty where there is no time to be told
 * @param oneShift whether the element must go at the end of the shift, however much is left
 * @param shortest which vapour and which estimate gave the shortest life, at the worst stretch
 * @param refused why there is no time, a sentence for each reason; empty where there is one
 * @param notes what must be said with it
 */
public record VapourLife(
    OptionalDouble usedShare,
    boolean oneShift,
    Optional<String> shortest,
    List<String> refused,
    List<String> notes) {
  /** What is taken of an estimated life where the owner chooses nothing else (judgement). */
  public static final double SAFETY_FRACTION = 0.75;

  private static final double ONE_SHIFT_BELOW_C = 65;
  private static final double MOST_AMMONIA_PPM = 300;

  /** Whether the element must not be breathed through any more. */
  public boolean spent() {
    return usedShare.isEmpty() || usedShare.getAsDouble() >= 1;
  }

  /**
   * Adds up the wear of one element since it was opened.
   *
   * @param worn in order of time
   * @param holds what the element is approved for
   * @param safetyFraction the share of an estimated life that is counted on, above 0 to 1
   */
  public static VapourLife of(List<Worn> worn, Set<Element> holds, double safetyFraction) {
    if (!(safetyFraction > 0 && safetyFraction <= 1)) {
      throw new IllegalArgumentException("no safety fraction: " + safetyFraction);
    }
    Sum sum = new Sum(holds, safetyFraction);
    worn.stream().filter(stretch -> stretch.minutes() > 0).forEach(sum::add);
    return sum.life();
  }

  /** A vapour of a mixture and how long the element would last against it. */
  private record Candidate(Solvent solvent, CartridgeLife.Estimate estimate) {
    String told() {
      return solvent.name() + " (" + estimate.basis() + ")";
    }
  }

  private static final class Sum {
    private final Set<Element> holds;
    private final double safetyFraction;
    private final Set<String> refused = new LinkedHashSet<>();
    private final Set<String> notes = new LinkedHashSet<>();
    private double used;
    private boolean oneShift;
    private Optional<Candidate> worst = Optional.empty();

    Sum(Set<Element> holds, double safetyFraction) {
      this.holds = holds;
      this.safetyFraction = safetyFraction;
    }

    void add(Worn stretch) {
      Map<Solvent, Double> organic = new LinkedHashMap<>();
      stretch
          .ppm()
          .forEach(
              (solvent, ppm) -> {
                if (ppm > 0) {
                  meet(solvent, ppm, organic);
                }
              });
      stretch.unmeasured().forEach(solvent -> meet(solvent, 0, organic));
      if (!organic.isEmpty()) {
        breathe(stretch, organic);
      }
    }

    private void meet(Solvent solvent, double ppm, Map<Solvent, Double> organic) {
      if (!holds.contains(solvent.element())) {
        refused.add(notHeld(solvent));
        return;
      }
      switch (solvent.element()) {
        case ORGANIC_VAPOUR -> organic.put(solvent, ppm);
        case FORMALDEHYDE -> formaldehyde();
        case AMMONIA -> ammonia(ppm);
        // What only supplied air protects from, no element holds, whatever is printed on it.
        default -> refused.add(solvent.advice());
      }
    }

    private static String notHeld(Solvent solvent) {
      return solvent.element() == Element.ORGANIC_VAPOUR
          ? "Against " + solvent.name() + " an organic-vapour element is needed; this is none."
          : solvent.advice();
    }

    private void formaldehyde() {
      oneShift = true;
      notes.add(
          "An element that has met formaldehyde goes at the end of the shift at the latest (29 CFR"
              + " 1910.1048).");
    }

    private void ammonia(double ppm) {
      if (ppm > MOST_AMMONIA_PPM) {
        refused.add("Ammonia elements end at 300 ppm (42 CFR 84.190): supplied air is called for.");
      }
      notes.add("For ammonia no life is estimated: change after the maker's figures.");
    }

    private void breathe(Worn stretch, Map<Solvent, Double> organic) {
      double ppm = organic.values().stream().mapToDouble(Double::doubleValue).sum();
      if (ppm == 0) {
        return;
      }
      CartridgeUse use =
          new CartridgeUse(
              ppm,
              stretch.litresPerMin(),
              stretch.humidityPercent(),
              CartridgeUse.TABLE_CARBON_GRAMS);
      if (!use.allowed()) {
        refused.add(CartridgeLife.ABOVE_THE_ELEMENTS);
      }
      shortest(organic.keySet(), use).ifPresent(candidate -> use(stretch, candidate));
      organic.keySet().stream().filter(Sum::boilsEarly).forEach(this::light);
    }

    private static Optional<Candidate> shortest(Set<Solvent> solvents, CartridgeUse use) {
      return solvents.stream().flatMap(s -> candidate(s, use)).min(BY_MINUTES);
    }

    private static Stream<Candidate> candidate(Solvent solvent, CartridgeUse use) {
      return CartridgeLife.of(solvent, use).shortest().stream()
          .map(estimate -> new Candidate(solvent, estimate));
    }

    private void use(Worn stretch, Candidate candidate) {
      used += stretch.minutes() / (candidate.estimate().minutes() * safetyFraction);
      worst = Stream.concat(worst.stream(), Stream.of(candidate)).min(BY_MINUTES);
    }

    private static boolean boilsEarly(Solvent solvent) {
      return solvent.boilingC().orElse(ONE_SHIFT_BELOW_C) < ONE_SHIFT_BELOW_C;
    }

    private void light(Solvent solvent) {
      oneShift = true;
      notes.add(
          "It has met "
              + solvent.name()
              + ", which boils below 65 °C: for one shift at most, never stored and used again.");
    }

    VapourLife life() {
      return new VapourLife(
          refused.isEmpty() ? OptionalDouble.of(used) : OptionalDouble.empty(),
          oneShift,
          worst.map(Candidate::told),
          List.copyOf(refused),
          List.copyOf(notes));
    }

    private static final Comparator<Candidate> BY_MINUTES =
        Comparator.comparingDouble(candidate -> candidate.estimate().minutes());
  }
}
