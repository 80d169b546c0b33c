package motebook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import motebook.reference.Solvent;
import motebook.science.BreathedAir;
import motebook.science.Estimate;
import motebook.science.LognormalSum;
import motebook.science.WorstWindow;

/**
 * The worst 15 minutes of a person's day, of one solvent or of several together. Where the air is
 * clean or the person away, a window holds less; so a job of five minutes counts a third.
 *
 * <p>The window is the one with the highest typical mean; the estimate is the sum of the finishes
 * over it, and no more than air of 25 °C holds of the solvents.
 */
final class ShortTermExposure {
  static final int MINUTES = 15;

  private final VapourReckoning vapour;
  private final ToDoubleFunction<Breath> share;
  private final Optional<ShortTermExposure> outside;
  private final Map<Drying, BreathedAir> airs = new HashMap<>();
  private final Map<Alone, WorstWindow> alone = new HashMap<>();

  private record Alone(Drying finish, Span starts) {}

  private record Span(int first, int last) {}

  private ShortTermExposure(
      VapourReckoning vapour, ToDoubleFunction<Breath> share, Optional<ShortTermExposure> outside) {
    this.vapour = vapour;
    this.share = share;
    this.outside = outside;
  }

  /** Outside the mask. */
  static ShortTermExposure outside(VapourReckoning vapour) {
    return new ShortTermExposure(vapour, breath -> 1, Optional.empty());
  }

  /**
   * What of this reaches a person.
   *
   * @param part of what is outside in a stretch, 0 to 1
   */
  ShortTermExposure inside(ToDoubleFunction<Breath> part) {
    return new ShortTermExposure(vapour, part, Optional.of(this));
  }

  /**
   * The most of some solvents that air of 25 °C holds. Each is held by its own pressure, not by its
   * share of the finish: the heavy part of a drying film becomes nearly all of it.
   */
  double mostPpm(List<Solvent> solvents) {
    return solvents.stream().mapToDouble(Solvent::saturatedPpm).sum();
  }

  /** Over the whole day, ppm. */
  Estimate overDay(List<Solvent> solvents) {
    return worst(vapour.breathed(), solvents, new Span(-MINUTES, RoomDay.DAY_ENDS));
  }

  /** In the windows that touch a stretch, of what is in the air of its place alone, ppm. */
  Estimate during(Breath breath, List<Solvent> solvents) {
    return worst(
        vapour.breathed().stream().filter(finish -> finish.source().in(breath.place())).toList(),
        solvents,
        new Span(breath.from() - MINUTES, breath.to()));
  }

  private Estimate worst(List<Drying> finishes, List<Solvent> solvents, Span starts) {
    Map<Drying, Double> weights = new HashMap<>();
    for (Drying finish : finishes) {
      Map<Solvent, Double> parts = VapourReckoning.parts(finish, 1);
      double ppm = solvents.stream().mapToDouble(one -> parts.getOrDefault(one, 0.0)).sum();
      if (ppm > 0) {
        weights.put(finish, ppm);
      }
    }
    if (weights.isEmpty()) {
      return Estimate.ZERO;
    }
    double from = window(weights, starts).fromMinute();
    Estimate unbounded = unbounded(finishes, weights, from);
    double passed =
        outside
            .map(air -> unbounded.typical() / air.unbounded(finishes, weights, from).typical())
            .orElse(1.0);
    return passed > 0 ? unbounded.atMost(passed * mostPpm(solvents)) : unbounded;
  }

  private Estimate unbounded(List<Drying> finishes, Map<Drying, Double> weights, double from) {
    return LognormalSum.of(
        finishes.stream()
            .filter(weights::containsKey)
            .map(
                finish ->
                    new LognormalSum.Term(
                        weights.get(finish)
                            * air(finish).mgMinPerM3(from, from + MINUTES)
                            / MINUTES,
                        finish.doubts()))
            .toList());
  }

  // All solvents of one finish rise and fall together, so its window is looked for once.
  private WorstWindow window(Map<Drying, Double> weights, Span starts) {
    if (weights.size() == 1) {
      Drying finish = weights.keySet().iterator().next();
      return alone.computeIfAbsent(
          new Alone(finish, starts), any -> window(Map.of(finish, 1.0).entrySet(), starts));
    }
    return window(weights.entrySet(), starts);
  }

  private WorstWindow window(Iterable<Map.Entry<Drying, Double>> weights, Span starts) {
    List<WorstWindow.Weighted> weighted = new ArrayList<>();
    weights.forEach(e -> weighted.add(new WorstWindow.Weighted(air(e.getKey()), e.getValue())));
    return WorstWindow.of(weighted, MINUTES, starts.first, starts.last);
  }

  private BreathedAir air(Drying finish) {
    return airs.computeIfAbsent(finish, one -> vapour.air(one, share));
  }
}
