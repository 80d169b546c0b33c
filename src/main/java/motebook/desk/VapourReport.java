package motebook.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import motebook.model.Session;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.science.Estimate;

/**
 * The vapour that somebody breathed on a day.
 *
 * @param limits whose figures it is held against
 * @param solvents what it is made of, the one nearest its limit first, those without one last
 * @param indexOutside index of the mixture over 8 h outside the mask, over the limit above 1
 * @param indexInside the same inside it
 * @param sessions the person's own sessions in which there was vapour, in order of time
 * @param acute each short-term limit that the worst 15 minutes come near to, the nearest first
 * @param epa each solvent that EPA judges over 8 h
 * @param aboveIdlh what may be immediately dangerous to life or health over its worst 15 minutes
 * @param fire how near the air within arm's length comes to burning; empty where that is low
 * @param shortfalls credited masks that are not enough for this vapour
 * @param notEstimated what was given off that no figure here holds
 * @param remarks what a reader must know beside the figures
 */
public record VapourReport(
    VapourLimits limits,
    List<OfSolvent> solvents,
    Estimate indexOutside,
    Estimate indexInside,
    List<OfSession> sessions,
    List<OfShortTerm> acute,
    List<OfEpa> epa,
    List<AboveIdlh> aboveIdlh,
    Optional<Fire> fire,
    List<Shortfall> shortfalls,
    List<String> notEstimated,
    List<String> remarks) {

  /**
   * One solvent over the day.
   *
   * @param solvent which
   * @param outsidePpm typical 8-hour TWA outside the mask
   * @param insidePpm typical 8-hour TWA inside it
   * @param limit what it is held against; empty where there is none
   */
  public record OfSolvent(
      Solvent solvent, double outsidePpm, double insidePpm, Optional<VapourLimit> limit) {}

  /**
   * One solvent over its worst 15 minutes, held against one short-term limit.
   *
   * @param solvent which
   * @param limit which limit
   * @param outside mean over the worst 15 minutes outside the mask, ppm
   * @param inside the same inside it, at its own worst 15 minutes
   * @param mostPpm what air of 25 °C holds of it; the estimates end there
   */
  public record OfShortTerm(
      Solvent solvent, ShortTermLimit limit, Estimate outside, Estimate inside, double mostPpm) {
    private static final double ROUNDING = 1e-9;

    /** The best estimate outside as a multiple of the limit, above 1 over it. */
    public double ratio() {
      return outside.central() / limit.ppm();
    }

    /** How much protection it calls for; empty where there was nothing of it. */
    public Optional<RequiredProtection> required() {
      return RequiredProtection.of(outside.times(1 / limit.ppm()), inside.times(1 / limit.ppm()));
    }

    /** Whether the range ends at what air of 25 °C can hold. */
    public boolean saturated() {
      return outside.high90() > mostPpm * (1 - ROUNDING);
    }
  }

  /**
   * One solvent over 8 hours against EPA's figure for places where its use may go on.
   *
   * @param solvent which
   * @param ppm EPA's figure, above 0
   * @param outside 8-hour TWA outside the mask, ppm
   * @param inside the same inside it
   */
  public record OfEpa(Solvent solvent, double ppm, Estimate outside, Estimate inside) {
    /** How much protection it calls for; empty where there was nothing of it. */
    public Optional<RequiredProtection> required() {
      return RequiredProtection.of(outside.times(1 / ppm), inside.times(1 / ppm));
    }
  }

  /**
   * A solvent that may be immediately dangerous to life or health.
   *
   * @param solvent which
   * @param outside mean over its worst 15 minutes outside the mask, ppm
   */
  public record AboveIdlh(Solvent solvent, Estimate outside) {}

  /**
   * One session of the person.
   *
   * @param source the session
   * @param credit what its respirator counts for
   * @param meanPpm typical mean concentration of each solvent outside the mask while it lasted
   * @param upper what that is multiplied with to reach the upper end of its 90 % range
   * @param unmeasured what was in the air besides and has no figure
   */
  public record OfSession(
      Source source,
      Credit credit,
      Map<Solvent, Double> meanPpm,
      double upper,
      Set<Solvent> unmeasured) {}

  /** A session of the person; empty where no vapour was present in it. */
  public Optional<OfSession> during(Session session) {
    return sessions.stream().filter(one -> one.source().session().equals(session)).findFirst();
  }

  /** Whether work must end: air that may be dangerous to life, or near to burning. */
  public boolean mustEnd() {
    return !aboveIdlh.isEmpty() || fire.filter(Fire::stop).isPresent();
  }

  /** The short-term limits that the best estimate passes, the most first. */
  public List<OfShortTerm> overShortTerm() {
    return acute.stream().filter(row -> row.ratio() > 1).toList();
  }

  /** The nearest limit, over 8 h or over 15 minutes, as a multiple: above 1 over it. */
  public double nearness() {
    return Math.max(
        indexOutside.central(), acute.stream().mapToDouble(OfShortTerm::ratio).max().orElse(0));
  }

  /** The credit of a session; empty where no vapour was present in it. */
  public Optional<Credit> credit(Source source) {
    return during(source.session()).map(OfSession::credit);
  }

  /** How much protection the vapours call for; empty where no limit judges any. */
  public Optional<RequiredProtection> required() {
    return RequiredProtection.of(indexOutside, indexInside);
  }

  /** The solvents that no limit judges. */
  public List<Solvent> notJudged() {
    return solvents.stream()
        .filter(line -> line.limit().isEmpty())
        .map(OfSolvent::solvent)
        .toList();
  }
}
