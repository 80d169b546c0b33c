package motebook.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.desk.VapourReport.AboveIdlh;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Element;
import motebook.science.Estimate;
import motebook.science.LognormalSum;

/** What the vapour of a person's day asks of the masks that are worn in it. */
final class VapourNeeds {
  // Below this part of every limit, at the upper end, nothing about elements is asked.
  private static final double ASKED_FROM = 0.1;

  private static final double AIR_CHANGES_AFTER = 3;

  private static final Set<Element> ASKED_BY_LAW =
      Set.of(Element.SUPPLIED_AIR_ONLY, Element.FORMALDEHYDE);

  private final VapourReckoning vapour;
  private final VapourLimits limits;
  private final ShortTermExposure outside;

  VapourNeeds(VapourReckoning vapour, VapourLimits limits, ShortTermExposure outside) {
    this.vapour = vapour;
    this.limits = limits;
    this.outside = outside;
  }

  /** In a stretch of the day. */
  VapourDemand in(Breath breath) {
    return new VapourDemand(
        asking(breath),
        solvents(breath).filter(one -> deadly(one, outside.during(breath, List.of(one)))).toList(),
        present(breath).map(Drying::finish).distinct().toList(),
        counted -> outside.during(breath, solvents(breath).filter(counted).toList()).central());
  }

  /** What may be immediately dangerous to life or health on the day. */
  List<AboveIdlh> aboveIdlh() {
    return vapour.outsidePpm().keySet().stream()
        .map(solvent -> new AboveIdlh(solvent, outside.overDay(List.of(solvent))))
        .filter(one -> deadly(one.solvent(), one.outside()))
        .toList();
  }

  private Stream<Drying> present(Breath breath) {
    return vapour.breathed().stream().filter(f -> vapour.mgMinPerM3(breath, f) > 0);
  }

  private Stream<Solvent> solvents(Breath breath) {
    return present(breath)
        .flatMap(finish -> VapourReckoning.parts(finish, 1).keySet().stream())
        .distinct();
  }

  private static boolean deadly(Solvent solvent, Estimate worst) {
    return solvent.aboveIdlh(worst.high90());
  }

  private Set<Solvent> asking(Breath breath) {
    Set<Solvent> asking = new LinkedHashSet<>();
    present(breath)
        .forEach(
            finish -> {
              finish.unmeasured().stream()
                  .filter(one -> byLaw(one) || lingers(finish, finish.source().to(), breath))
                  .forEach(asking::add);
              VapourReckoning.parts(finish, 1).keySet().stream()
                  .filter(one -> byLaw(one) || unlimited(one, finish, breath))
                  .forEach(asking::add);
            });
    Set<Solvent> limited =
        solvents(breath).filter(one -> smallest(one).isPresent()).collect(Collectors.toSet());
    limited.stream()
        .collect(Collectors.groupingBy(Solvent::element))
        .values()
        .forEach(
            alike -> {
              if (worthAsking(alike)) {
                asking.addAll(alike);
              }
            });
    return asking;
  }

  private static boolean byLaw(Solvent solvent) {
    return ASKED_BY_LAW.contains(solvent.element());
  }

  private boolean unlimited(Solvent solvent, Drying finish, Breath breath) {
    return VapourLimit.of(solvent, limits).isEmpty()
        && lingers(finish, finish.mostlyGivenOff(), breath);
  }

  /** Whether a stretch begins before the air has changed three times after a release ended. */
  private boolean lingers(Drying finish, double ended, Breath breath) {
    return breath.from() < vapour.afterAirChanges(finish, ended, AIR_CHANGES_AFTER);
  }

  /**
   * Whether what one kind of element holds comes to a tenth of its limits over the day, all of it
   * taken together, or any of it over its worst 15 minutes.
   */
  private boolean worthAsking(List<Solvent> alike) {
    double index =
        LognormalSum.of(
                vapour.outsideTerms(
                    (finish, mg) ->
                        VapourReckoning.parts(finish, mg).entrySet().stream()
                            .filter(part -> alike.contains(part.getKey()))
                            .mapToDouble(
                                part ->
                                    part.getValue()
                                        / smallest(part.getKey()).orElse(Double.POSITIVE_INFINITY))
                            .sum()))
            .high90();
    return index >= ASKED_FROM || alike.stream().anyMatch(this::shortTerm);
  }

  private boolean shortTerm(Solvent solvent) {
    OptionalDouble least =
        ShortTermLimit.of(solvent).stream().mapToDouble(ShortTermLimit::ppm).min();
    return least.isPresent()
        && outside.overDay(List.of(solvent)).high90() >= ASKED_FROM * least.getAsDouble();
  }

  private static OptionalDouble smallest(Solvent solvent) {
    return ShortTermLimit.AUTHORITIES.stream()
        .map(authority -> solvent.limits().of(authority).eightHour())
        .flatMapToDouble(OptionalDouble::stream)
        .min();
  }
}
