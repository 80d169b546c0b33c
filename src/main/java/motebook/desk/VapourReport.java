package motebook.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param flammableShare share of the lower flammable limit at the hand at the worst minute, upper
 *     end of its 90 % range; empty where it is low, since a low share of a mean reassures nobody
 * @param notEstimated what was given off that no figure here holds
 * @param remarks what a reader must know beside the figures
 */
public record VapourReport(
    VapourLimits limits,
    List<OfSolvent> solvents,
    Estimate indexOutside,
    Estimate indexInside,
    List<OfSession> sessions,
    OptionalDouble flammableShare,
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

  /** The credit of a session; empty where no vapour was present in it. */
  public Optional<Credit> credit(Source source) {
    return during(source.session()).map(OfSession::credit);
  }

  /** The solvents that no limit judges. */
  public List<Solvent> notJudged() {
    return solvents.stream()
        .filter(line -> line.limit().isEmpty())
        .map(OfSolvent::solvent)
        .toList();
  }
}
