package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import motebook.desk.CareClock.Kind;
import motebook.model.Element;
import motebook.model.Session;
import motebook.reference.ElementClass;
import motebook.reference.Reference;
import motebook.reference.Solvent;
import motebook.science.CartridgeUse;

/** What vapour uses up of a gas element. */
final class VapourCare {
  private static final String ORGANIC = "organic-vapour";
  private static final String FORMALDEHYDE = "formaldehyde";
  private static final double ONE_SHIFT_BELOW_C = 65;

  private final VapourAir air;
  private final CareRules rules;
  private final Reference reference = Reference.shipped();

  VapourCare(VapourAir air, CareRules rules) {
    this.air = air;
    this.rules = rules;
  }

  Set<Solvent> solvents(Session session) {
    return air.during(session).keySet();
  }

  VapourDemand demand(Session session) {
    return air.demand(session);
  }

  double typicalShare(Element element, List<Wear> worn) {
    return share(element, worn, VapourAir.Ppm::typical);
  }

  List<CareClock> clocks(Element element, ElementClass kind, Tally tally) {
    List<CareClock> clocks = new ArrayList<>();
    if (kind.holds().contains(ORGANIC)) {
      CareClock clock = tally.clock(Kind.VAPOUR, 1, worn -> highShare(element, worn));
      List<Wear> last = lastInVapour(element, tally.worn());
      clocks.add(
          last.isEmpty() ? clock : clock.likeLast(Wear.hours(last), highShare(element, last)));
    }
    shiftBegun(kind, tally.worn())
        .ifPresent(day -> clocks.add(CareClock.date(Kind.SHIFT, day, day, tally.today())));
    return clocks;
  }

  private double highShare(Element element, List<Wear> worn) {
    return share(element, worn, VapourAir.Ppm::high);
  }

  /** What was worn in vapour on the last day of such work. */
  private List<Wear> lastInVapour(Element element, List<Wear> worn) {
    int last = worn.size() - 1;
    while (last >= 0 && highShare(element, worn.subList(last, last + 1)) == 0) {
      last--;
    }
    int lastWorn = last;
    return worn.stream()
        .filter(wear -> lastWorn >= 0 && date(wear).equals(date(worn.get(lastWorn))))
        .filter(wear -> highShare(element, List.of(wear)) > 0)
        .toList();
  }

  private static LocalDate date(Wear wear) {
    return wear.session().work().date();
  }

  private double share(Element element, List<Wear> worn, ToDoubleFunction<VapourAir.Ppm> end) {
    return worn.stream().mapToDouble(wear -> share(element, wear, end)).sum();
  }

  private double share(Element element, Wear wear, ToDoubleFunction<VapourAir.Ppm> end) {
    Map<Solvent, Double> ppm = new HashMap<>();
    air.during(wear.session())
        .forEach(
            (solvent, range) -> {
              if (forCarbon(solvent) && end.applyAsDouble(range) > 0) {
                ppm.put(solvent, end.applyAsDouble(range));
              }
            });
    return ppm.isEmpty()
        ? 0
        : CartridgeMixture.share(
            CartridgeMixture.minutes(
                ppm, wear.litresPerMin(), rules.humidityPercent(), carbonGrams(element)),
            wear.minutes(),
            rules.safetyFraction());
  }

  // What carbon holds, and methanol, which it does not: any mixture with it has no time at all.
  private static boolean forCarbon(Solvent solvent) {
    return solvent.element() == Solvent.Element.ORGANIC_VAPOUR
        || solvent.element() == Solvent.Element.NONE;
  }

  private static double carbonGrams(Element element) {
    double pair = CartridgeUse.TABLE_CARBON_GRAMS;
    return element.carbonGrams().orElse(element.pair() ? pair : pair / 2);
  }

  /** The first day on which it was worn against what ends it with the shift. */
  private Optional<LocalDate> shiftBegun(ElementClass kind, List<Wear> worn) {
    return worn.stream()
        .map(Wear::session)
        .filter(session -> endsWithShift(kind, session))
        .map(session -> session.work().date())
        .findFirst();
  }

  private boolean endsWithShift(ElementClass kind, Session session) {
    boolean formaldehyde =
        reference.material(session.work().material()).cautions().contains(FORMALDEHYDE)
            || solvents(session).stream()
                .anyMatch(s -> s.element() == Solvent.Element.FORMALDEHYDE);
    boolean low =
        solvents(session).stream()
            .anyMatch(s -> s.boilingC().orElse(ONE_SHIFT_BELOW_C) < ONE_SHIFT_BELOW_C);
    return (kind.holds().contains(FORMALDEHYDE) && (formaldehyde || low))
        || (kind.holds().contains(ORGANIC) && low);
  }
}
