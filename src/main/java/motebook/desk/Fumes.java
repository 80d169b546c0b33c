package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.desk.VapourReport.OfSession;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.science.Estimate;
import motebook.science.LognormalSum;
import motebook.science.Vapour;

/** The question "what vapour did this person breathe on this day". */
final class Fumes {
  // Where NIOSH ends the concentrations that are dangerous for their vapour's fire alone.
  private static final double HIGH_FLAMMABLE_SHARE = 0.1;

  private final VapourReckoning vapour;
  private final VapourLimits limits;

  private Fumes(VapourReckoning vapour, VapourLimits limits) {
    this.vapour = vapour;
    this.limits = limits;
  }

  /** Answers for a day already reckoned; empty where no vapour was breathed. */
  static Optional<VapourReport> of(DayReckoning day) {
    return of(day, Fumes::report);
  }

  private static <T> Optional<T> of(DayReckoning day, Function<Fumes, T> answer) {
    if (day.sources().stream().allMatch(s -> s.session().work().amounts().isEmpty())) {
      return Optional.empty();
    }
    VapourReckoning vapour = new VapourReckoning(day);
    return vapour.breathed().isEmpty()
        ? Optional.empty()
        : Optional.of(answer.apply(new Fumes(vapour, day.shop().settings().vapourLimits())));
  }

  /** The sessions of a person's day in which there was vapour, without all that is told of it. */
  static List<OfSession> sessions(DayReckoning day) {
    return of(day, Fumes::sessions).orElse(List.of());
  }

  private VapourReport report() {
    List<OfSession> sessions = sessions();
    return new VapourReport(
        limits,
        solvents(),
        LognormalSum.of(vapour.outsideTerms(this::index)),
        LognormalSum.of(vapour.insideTerms(this::index)),
        sessions,
        flammableShare(),
        notEstimated(),
        FumeRemarks.of(sessions));
  }

  private List<OfSolvent> solvents() {
    Map<Solvent, Double> inside = vapour.insidePpm();
    return vapour.outsidePpm().entrySet().stream()
        .map(
            e ->
                new OfSolvent(
                    e.getKey(),
                    e.getValue(),
                    inside.getOrDefault(e.getKey(), 0.0),
                    VapourLimit.of(e.getKey(), limits)))
        .sorted(Comparator.comparingDouble(Fumes::nearness).reversed())
        .toList();
  }

  private static double nearness(OfSolvent line) {
    return line.limit().map(figure -> line.outsidePpm() / figure.ppm()).orElse(-1.0);
  }

  /** What a finish at a concentration, mg/m³, adds to the index of 29 CFR 1910.1000(d)(2). */
  private double index(Drying finish, double mgPerM3) {
    return VapourReckoning.parts(finish, mgPerM3).entrySet().stream()
        .mapToDouble(
            e -> VapourLimit.of(e.getKey(), limits).map(f -> e.getValue() / f.ppm()).orElse(0.0))
        .sum();
  }

  private List<OfSession> sessions() {
    List<OfSession> sessions = new ArrayList<>();
    for (Breath breath : vapour.day().breaths()) {
      Map<Solvent, Double> mean = vapour.meanPpm(breath);
      if (breath.own().isPresent() && !mean.isEmpty()) {
        Credit credit = vapour.day().credit(breath);
        Source source = breath.own().get();
        sessions.add(new OfSession(source, credit, mean, upper(breath), unmeasured(breath)));
      }
    }
    return sessions;
  }

  private Set<Solvent> unmeasured(Breath breath) {
    Set<Solvent> unmeasured = new LinkedHashSet<>();
    vapour.breathed().stream()
        .filter(finish -> vapour.mgMinPerM3(breath, finish) > 0)
        .forEach(finish -> unmeasured.addAll(finish.unmeasured()));
    return unmeasured;
  }

  /** From the typical vapour of a stretch to the upper end of its 90 % range. */
  private double upper(Breath breath) {
    Estimate all =
        LognormalSum.of(vapour.terms(f -> vapour.mgMinPerM3(breath, f), (f, mgMin) -> mgMin));
    return all.high90() / all.typical();
  }

  /** A minute of a stretch and the typical flammable share at the person's hand in it. */
  private record Moment(Breath breath, int minute, double share) {}

  /** At the worst minute at the person's hand, upper end of the range. */
  private OptionalDouble flammableShare() {
    Map<Drying, Double> perMgPerM3 = new HashMap<>();
    vapour.breathed().forEach(finish -> perMgPerM3.put(finish, flammableShare(finish, 1)));
    Moment worst =
        vapour.day().breaths().stream()
            .flatMap(breath -> moments(breath, perMgPerM3))
            .max(Comparator.comparingDouble(Moment::share))
            .orElseThrow();
    double share =
        LognormalSum.of(
                vapour.terms(
                    f -> vapour.mgPerM3(worst.breath(), f, worst.minute()), Fumes::flammableShare))
            .high90();
    return share < HIGH_FLAMMABLE_SHARE ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  private Stream<Moment> moments(Breath breath, Map<Drying, Double> perMgPerM3) {
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

  private static double flammableShare(Drying finish, double mgPerM3) {
    return Vapour.flammableShare(
        VapourReckoning.parts(finish, mgPerM3).entrySet().stream()
            .filter(e -> e.getKey().limits().lelPercent().isPresent())
            .map(
                e ->
                    new Vapour.Flammable(
                        e.getValue(), e.getKey().limits().lelPercent().getAsDouble()))
            .toList());
  }

  private List<String> notEstimated() {
    return vapour.breathed().stream()
        .flatMap(finish -> finish.unmeasured().stream())
        .map(Solvent::key)
        .distinct()
        .toList();
  }
}
