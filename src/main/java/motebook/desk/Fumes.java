package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import motebook.desk.VapourReport.OfEpa;
import motebook.desk.VapourReport.OfSession;
import motebook.desk.VapourReport.OfShortTerm;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.Session;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Authority;
import motebook.science.Estimate;
import motebook.science.LognormalSum;

/** The question "what vapour did this person breathe on this day". */
final class Fumes {
  // A row is shown from this part of its limit on, at the upper end.
  private static final double SHOWN_FROM = 0.1;

  private final VapourReckoning vapour;
  private final VapourLimits limits;
  private final ShortTermExposure outside;
  private final VapourNeeds needs;

  private Fumes(VapourReckoning vapour, VapourLimits limits) {
    this.vapour = vapour;
    this.limits = limits;
    this.outside = ShortTermExposure.outside(vapour);
    this.needs = new VapourNeeds(vapour, limits, outside);
  }

  /** Of a day already estimated; empty where no vapour was breathed. */
  static Optional<Fumes> of(DayReckoning day) {
    if (day.sources().stream().allMatch(s -> s.session().work().amounts().isEmpty())) {
      return Optional.empty();
    }
    VapourReckoning vapour = new VapourReckoning(day);
    return vapour.breathed().isEmpty()
        ? Optional.empty()
        : Optional.of(new Fumes(vapour, day.shop().settings().vapourLimits()));
  }

  /** What a session of the person asks of a mask. */
  VapourDemand demand(Session session) {
    return needs.in(vapour.day().breathOf(vapour.day().sourceOf(session)));
  }

  /** All that is shown of the day. */
  VapourReport report() {
    List<OfSession> sessions = sessions();
    Estimate index = LognormalSum.of(vapour.outsideTerms(this::index));
    return new VapourReport(
        limits,
        solvents(),
        index,
        LognormalSum.of(vapour.insideTerms(this::index)),
        sessions,
        acute(),
        epa(),
        needs.aboveIdlh(),
        Fire.of(vapour),
        new VapourShortfalls(vapour, outside).of(sessions, index.central()),
        notEstimated(),
        FumeRemarks.of(sessions));
  }

  private List<OfShortTerm> acute() {
    DayReckoning day = vapour.day();
    ShortTermExposure inside =
        day.breaths().stream().allMatch(breath -> day.vapourShare(breath) == 1)
            ? outside
            : outside.inside(day::vapourShare);
    List<OfShortTerm> rows = new ArrayList<>();
    for (Solvent solvent : vapour.outsidePpm().keySet()) {
      for (ShortTermLimit limit : ShortTermLimit.of(solvent)) {
        Estimate worst = outside.overDay(List.of(solvent));
        if (worst.high90() > SHOWN_FROM * limit.ppm()) {
          rows.add(
              new OfShortTerm(
                  solvent,
                  limit,
                  worst,
                  inside.overDay(List.of(solvent)),
                  outside.mostPpm(List.of(solvent))));
        }
      }
    }
    rows.sort(Comparator.comparingDouble(OfShortTerm::ratio).reversed());
    return rows;
  }

  private List<OfEpa> epa() {
    List<OfEpa> rows = new ArrayList<>();
    for (Solvent solvent : vapour.outsidePpm().keySet()) {
      VapourReckoning.Weight ppm =
          (finish, mg) -> VapourReckoning.parts(finish, mg).getOrDefault(solvent, 0.0);
      solvent
          .limits()
          .of(Authority.EPA)
          .eightHour()
          .ifPresent(
              limit ->
                  rows.add(
                      new OfEpa(
                          solvent,
                          limit,
                          LognormalSum.of(vapour.outsideTerms(ppm)),
                          LognormalSum.of(vapour.insideTerms(ppm)))));
    }
    return rows;
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

  /** The person's sessions in which there was vapour. */
  List<OfSession> sessions() {
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

  private List<String> notEstimated() {
    return vapour.breathed().stream()
        .flatMap(finish -> finish.unmeasured().stream())
        .map(Solvent::key)
        .distinct()
        .toList();
  }
}
