package motebook.desk;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.reference.Solvent;
import motebook.science.LognormalSum;
import motebook.science.Vapour;

/**
 * How near the air within arm's length comes to burning, as a mean over that space. At the wet film
 * and at the can it is always nearer.
 *
 * @param share share of the lower flammable limit at the worst minute, upper end of the 90 % range
 * @param saturated whether the model gave more than air at 25 °C can hold, and the share is that of
 *     air that is full of vapour
 */
public record Fire(double share, boolean saturated) {
  /** Where NIOSH ends the concentrations that are dangerous for their vapour's fire alone. */
  private static final double WORTH_SAYING = 0.1;

  /** Where 29 CFR 1910.107 ends the vapour of a spray area. */
  private static final double STOP = 0.25;

  private record Moment(Breath breath, int minute, double share) {}

  /** Of a day's vapour; empty below a tenth, since a low share of a mean reassures nobody. */
  static Optional<Fire> of(VapourReckoning vapour) {
    Map<Drying, Double> perMgPerM3 = new HashMap<>();
    vapour.breathed().forEach(finish -> perMgPerM3.put(finish, share(finish, 1)));
    Moment worst =
        vapour.day().breaths().stream()
            .flatMap(breath -> moments(breath, vapour, perMgPerM3))
            .max(Comparator.comparingDouble(Moment::share))
            .orElseThrow();
    Fire fire = at(worst, vapour);
    return fire.share < WORTH_SAYING ? Optional.empty() : Optional.of(fire);
  }

  private static Stream<Moment> moments(
      Breath breath, VapourReckoning vapour, Map<Drying, Double> perMgPerM3) {
    return IntStream.rangeClosed(breath.from(), breath.to())
        .mapToObj(
            minute ->
                new Moment(
                    breath,
                    minute,
                    perMgPerM3.entrySet().stream()
                        .mapToDouble(e -> e.getValue() * vapour.mgPerM3(breath, e.getKey(), minute))
                        .sum()));
  }

  private static Fire at(Moment worst, VapourReckoning vapour) {
    double share =
        LognormalSum.of(
                vapour.terms(f -> vapour.mgPerM3(worst.breath, f, worst.minute), Fire::share))
            .high90();
    double full = saturated(vapour.breathed());
    return new Fire(Math.min(share, full), full < share);
  }

  /** The share of air at 25 °C that is full of all that the finishes give off. */
  private static double saturated(List<Drying> finishes) {
    return VapourReckoning.saturatedPpm(finishes).entrySet().stream()
        .filter(e -> e.getKey().limits().lelPercent().isPresent())
        .mapToDouble(e -> share(e.getKey(), e.getValue()))
        .sum();
  }

  private static double share(Solvent solvent, double ppm) {
    return Vapour.flammableShare(
        List.of(new Vapour.Flammable(ppm, solvent.limits().lelPercent().getAsDouble())));
  }

  private static double share(Drying finish, double mgPerM3) {
    return VapourReckoning.parts(finish, mgPerM3).entrySet().stream()
        .filter(e -> e.getKey().limits().lelPercent().isPresent())
        .mapToDouble(e -> share(e.getKey(), e.getValue()))
        .sum();
  }

  /** Whether work must stop. */
  public boolean stop() {
    return share >= STOP;
  }
}
