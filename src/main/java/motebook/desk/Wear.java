package motebook.desk;

import java.util.List;
import motebook.model.Session;
import motebook.science.LognormalSum;
import motebook.science.LognormalSum.Term;

/**
 * One session with a respirator on the face, and what that put onto its elements.
 *
 * @param session the session
 * @param minutes on the face
 * @param litresPerMin what the work made its wearer breathe
 * @param mg dust drawn onto the elements, source by source, mg with the doubts of each source
 * @param typicalMg the same in its two kinds, typical
 */
public record Wear(
    Session session, double minutes, double litresPerMin, List<Term> mg, Portion typicalMg) {
  public Wear {
    mg = List.copyOf(mg);
  }

  /** Hours on the face. */
  public double hours() {
    return minutes / 60;
  }

  /** Dust of several sessions at the upper end of its 90 % range, mg. */
  static double highMg(List<Wear> wears) {
    return LognormalSum.of(wears.stream().flatMap(wear -> wear.mg().stream()).toList()).high90();
  }

  static double hours(List<Wear> wears) {
    return wears.stream().mapToDouble(Wear::hours).sum();
  }
}
