package motebook.desk;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import motebook.model.Action;
import motebook.model.Figures;
import motebook.model.Gear;
import motebook.model.MaskUse;
import motebook.model.Respirator;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Hazard;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.Solvent;

/**
 * Credits a respirator when its elements fit what is in the air and are in date, and when it fits
 * the face that wears it; each thing in the air apart.
 */
final class MaskRule implements CreditRule {
  private static final String NOT_FOR_OIL =
      "An oil finish was used: where it is sprayed, class N is not for its mist, but R or P.";

  private final Mending mending;
  private final Gear gear;
  private final Masks masks;
  private final ElementCare elements;
  private final InTheAir air;
  private final MaskDay.Known days;
  private final IdentityHashMap<Session, Credit> credits = new IdentityHashMap<>();
  private final IdentityHashMap<MaskDay, Verdict> dusts = new IdentityHashMap<>();

  /** Finds what would make a credit better; asked only for what is shown. */
  @FunctionalInterface
  interface Mending {
    Optional<Remedy> remedy(Situation now, Credit credit);
  }

  MaskRule(Gear gear, Masks masks, ElementCare elements, CareRules rules, Mending mending) {
    this.mending = mending;
    this.gear = gear;
    this.masks = masks;
    this.elements = elements;
    this.air = new InTheAir(masks, elements);
    this.days = new MaskDay.Known(gear, masks, elements, rules);
  }

  @Override
  public Credit credit(Session session) {
    Optional<MaskUse> mask = session.work().mask();
    return mask.isEmpty()
        ? Credit.NONE
        : credits.computeIfAbsent(session, any -> credit(session, mask.get()));
  }

  private Credit credit(Session session, MaskUse use) {
    Credit credit =
        days.at(session.work(), use.respirator())
            .map(day -> new Case(session, use, day).credit())
            .orElseGet(() -> unknown(use));
    return credit.objections().isEmpty()
        ? credit
        : credit.mendedBy(() -> mending.remedy(new Situation(gear, session), credit));
  }

  /** The credit of a mask that the book does not hold. */
  static Credit unknown(MaskUse use) {
    Objection why =
        Objection.mendable(
            "mask not on record",
            "There is no respirator \"" + use.respirator() + "\" in this book",
            Suggested.halfMask(use.respirator()));
    return new Credit(
        use.wornPercent() / 100,
        new Verdict(OptionalDouble.empty(), List.of(why)),
        Optional.empty(),
        List.of(),
        Optional::empty);
  }

  /** One session with one respirator of the book. */
  private final class Case {
    private final Session session;
    private final Work work;
    private final MaskUse use;
    private final MaskDay day;
    private final Respirator mask;
    private final List<ElementStanding> on;
    private final List<ProtectionFactor> rows;
    private final Optional<FitStanding> fit;
    private final VapourDemand demand;

    Case(Session session, MaskUse use, MaskDay day) {
      this.session = session;
      this.work = session.work();
      this.use = use;
      this.day = day;
      this.mask = day.mask();
      this.on = day.on();
      this.rows = day.rows();
      this.fit = day.fit();
      this.demand = elements.demand(session);
    }

    Credit credit() {
      return new Credit(use.wornPercent() / 100, dust(), vapour(), notes(), Optional::empty);
    }

    // What asks nothing never stands in the way; where the mask holds it all the same, it counts.
    private Optional<Verdict> vapour() {
      List<Hazard> there = air.vapours(session);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      Verdict all = verdict(there);
      List<Hazard> asking = air.asking(session);
      if (all.objections().isEmpty() || asking.containsAll(there)) {
        return Optional.of(all);
      }
      return asking.isEmpty() ? Optional.empty() : Optional.of(verdict(asking));
    }

    // What speaks against it names the session; where nothing does, one serves all of the day.
    private Verdict dust() {
      Verdict known = dusts.get(day);
      if (known != null && steady() && demand.aboveIdlh().isEmpty()) {
        return known;
      }
      Verdict dust = verdict(List.of(masks.hazard(Hazard.WOOD_DUST)));
      if (dust.objections().isEmpty()) {
        dusts.put(day, dust);
      }
      return dust;
    }

    /** Whether all sessions of the day fare alike: none unchecked, nothing at its end meanwhile. */
    private boolean steady() {
      return unchecked().isEmpty()
          && on.stream()
              .flatMap(one -> one.clocks().stream())
              .flatMap(clock -> clock.ranOut().stream())
              .noneMatch(end -> end.date().equals(work.date()));
    }

    private Verdict verdict(List<Hazard> hazards) {
      Set<Objection> objections = new LinkedHashSet<>();
      Elements judged = new Elements(gear, mask, session, on, masks);
      if (!demand.aboveIdlh().isEmpty()) {
        return new Verdict(figure(judged.row(rows)), List.of(leave()));
      }
      retired(judged).ifPresent(objections::add);
      if (rows.isEmpty()) {
        objections.add(judged.notAllowed());
      } else if (!rows.get(0).suppliedAir()) {
        hazards.forEach(hazard -> objections.addAll(judged.against(hazard, demand.finishes())));
      }
      Optional<ProtectionFactor> row = judged.row(rows);
      if (!rows.isEmpty() && row.isEmpty() && objections.isEmpty()) {
        objections.add(judged.notRated(rows));
      }
      fit.ifPresent(standing -> objections.addAll(standing.objections()));
      unchecked().ifPresent(objections::add);
      return new Verdict(figure(row), new ArrayList<>(objections));
    }

    // 29 CFR 1910.134(d)(2): there only a pressure-demand SCBA, or such an airline with its own
    // cylinder for escape, may be worn, and no book of this program records either.
    private Objection leave() {
      Solvent first = demand.aboveIdlh().get(0);
      return Objection.lasting(
          "leave the area",
          "No mask in this book counts from "
              + Figures.plain(first.limits().idlhPpm().orElseThrow())
              + " ppm of "
              + first.name()
              + " on, which is immediately dangerous to life or health: leave the area and ventilate;"
              + " entering such air is licensed work");
    }

    // 42 CFR 84.190: the factor counts, and is not enough.
    private List<String> tooThick() {
      if (!demand.aboveIdlh().isEmpty() || rows.isEmpty() || rows.get(0).suppliedAir()) {
        return List.of();
      }
      return air.asking(session).stream()
          .filter(hazard -> hazard.mostPpm().isPresent())
          .flatMap(hazard -> tooThick(hazard).stream())
          .toList();
    }

    private Optional<String> tooThick(Hazard hazard) {
      double ppm =
          demand.worstPpm().applyAsDouble(one -> hazard.solvents().contains(one.element()));
      double most = hazard.mostPpm().getAsDouble();
      return ppm <= most
          ? Optional.empty()
          : Optional.of(
              "This mask is not enough: elements for %s are made for at most %s ppm, and the worst"
                      .formatted(hazard.name(), Figures.plain(most))
                  + " 15 minutes held "
                  + Figures.about(ppm)
                  + " ppm.");
    }

    private OptionalDouble figure(Optional<ProtectionFactor> row) {
      return row.map(one -> OptionalDouble.of(most(one.apf()))).orElse(OptionalDouble.empty());
    }

    private double most(double apf) {
      return fit.map(standing -> standing.most(apf)).orElse(apf);
    }

    private Optional<Objection> retired(Elements judged) {
      return mask.inUseOn(work.date())
          ? Optional.empty()
          : mask.retired()
              .map(
                  end ->
                      new Objection(
                          "mask retired",
                          mask.name() + " was retired on " + end.on(),
                          judged.others()));
    }

    private Optional<Objection> unchecked() {
      return fit.isEmpty() || use.checked()
          ? Optional.empty()
          : Optional.of(
              Objection.mendable(
                  "no seal check",
                  "No seal check is recorded for this session",
                  new Action.RecordSealCheck(session.id())));
    }

    private List<String> notes() {
      List<String> notes = new ArrayList<>();
      if (!day.cleared()) {
        notes.add(
            "No medical evaluation of "
                + work.person()
                + " is on record; it comes before a fit test and before wearing a respirator.");
      }
      notes.addAll(unheld());
      notes.addAll(tooThick());
      if (on.stream().anyMatch(one -> one.elementClass().classN()) && elements.oil(session)) {
        notes.add(NOT_FOR_OIL);
      }
      return notes;
    }

    // What is in the air beside that for which a credit is judged: told, never credited.
    private List<String> unheld() {
      if (!rows.isEmpty() && rows.get(0).suppliedAir()) {
        return List.of();
      }
      return air.told(session).stream()
          .filter(hazard -> on.stream().noneMatch(e -> hazard.heldBy(e.elementClass())))
          .map(Hazard::advice)
          .toList();
    }
  }
}
