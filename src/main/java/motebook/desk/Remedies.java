package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.desk.Remedy.Step;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.reference.Masks;
import motebook.reference.Solvent;

/**
 * Finds what would make a respirator count, by trying it: every action is applied to the gear and
 * the session in memory, and the credit decided anew by the same rules. So what is promised is what
 * doing it gives, against everything in the air.
 */
final class Remedies {
  /** More steps than any mask has ever wanted; what needs more is not proposed. */
  private static final int MOST_STEPS = 9;

  // The lower of the two factors first: a mask that holds the dust and not the vapour helps little.
  private static final Comparator<Remedy> BEST =
      Comparator.comparingDouble((Remedy one) -> Math.min(one.then().apf(), vapour(one.then())))
          .thenComparing(one -> one.then().apf())
          .thenComparing(one -> -one.steps().size());

  private final WearLog log;
  private final VapourAir vapours;
  private final CareRules rules;
  private final Masks masks;

  Remedies(WearLog log, VapourAir vapours, CareRules rules, Masks masks) {
    this.log = log;
    this.vapours = vapours;
    this.rules = rules;
    this.masks = masks;
  }

  /** The best remedy of a session; empty where nothing that could be entered gains anything. */
  Optional<Remedy> of(Situation now, Credit credit) {
    return best(now, credit, now.session(), List.of())
        .filter(remedy -> gains(remedy.then(), credit));
  }

  private static boolean gains(Credit then, Credit now) {
    return then.apf() > now.apf() || vapour(then) > vapour(now);
  }

  // Where there is no vapour, nothing is to be held back: it bounds no factor.
  private static double vapour(Credit credit) {
    return credit.vapour().map(Verdict::apf).orElse(Double.MAX_VALUE);
  }

  private Optional<Remedy> best(Situation now, Credit credit, Session recorded, List<Step> done) {
    Optional<Objection> first = done.size() < MOST_STEPS ? first(credit) : Optional.empty();
    if (first.isEmpty()) {
      return done.isEmpty() ? Optional.empty() : Optional.of(new Remedy(done, credit));
    }
    // of equals the one that was named first
    return first.get().ways().stream()
        .filter(way -> done.stream().noneMatch(step -> step.action().equals(way)))
        .flatMap(way -> after(now, recorded, done, new Step(first.get(), way)).stream())
        .reduce((one, other) -> BEST.compare(other, one) > 0 ? other : one);
  }

  private Optional<Remedy> after(Situation now, Session recorded, List<Step> done, Step step) {
    List<Step> steps = new ArrayList<>(done);
    steps.add(step);
    try {
      Situation then = now.after(step.action(), masks);
      return best(then, credit(then, recorded), recorded, steps);
    } catch (Refusal notPossible) {
      return Optional.empty();
    }
  }

  // What needs another mask comes first: it may make all else needless.
  private static Optional<Objection> first(Credit credit) {
    return credit.objections().stream()
        .filter(Objection::ofTheMask)
        .findFirst()
        .or(
            () ->
                Stream.concat(Stream.of(credit.dust()), credit.vapour().stream())
                    .filter(verdict -> !verdict.lost())
                    .flatMap(verdict -> verdict.objections().stream())
                    .findFirst());
  }

  private Credit credit(Situation then, Session recorded) {
    boolean sameMask = mask(then.session()).equals(mask(recorded));
    WearLog worn =
        sameMask ? log : new WearLog(new Amended(recorded, then.session()), masks, log.last());
    ElementCare elements =
        new ElementCare(masks, worn, new Recorded(then.session(), recorded), rules);
    return new MaskRule(then.gear(), masks, elements, rules, (s, c) -> Optional.empty())
        .credit(then.session());
  }

  /** The vapour of a session whatever is worn in it. */
  private final class Recorded implements VapourAir {
    private final Session amended;
    private final Session recorded;

    Recorded(Session amended, Session recorded) {
      this.amended = amended;
      this.recorded = recorded;
    }

    private Session of(Session session) {
      return session.equals(amended) ? recorded : session;
    }

    @Override
    public Map<Solvent, Ppm> during(Session session) {
      return vapours.during(of(session));
    }

    @Override
    public VapourDemand demand(Session session) {
      return vapours.demand(of(session));
    }
  }

  private static Optional<String> mask(Session session) {
    return session.work().mask().map(MaskUse::respirator);
  }

  /** The past with one session as it would be. */
  private final class Amended implements History {
    private final Session recorded;
    private final Session amended;

    Amended(Session recorded, Session amended) {
      this.recorded = recorded;
      this.amended = amended;
    }

    @Override
    public List<Session> between(LocalDate first, LocalDate last) {
      return log.sessionsFrom(first).stream()
          .filter(session -> !session.work().date().isAfter(last))
          .map(session -> session.equals(recorded) ? amended : session)
          .toList();
    }

    @Override
    public Shop shop(LocalDate day) {
      return log.shop(day);
    }
  }
}
