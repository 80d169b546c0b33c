package motebook.desk;

import java.util.List;
import java.util.function.Supplier;
import motebook.model.Session;
import motebook.science.Estimate;
import motebook.science.LognormalSum;
import motebook.science.LognormalSum.Term;

/**
 * One session with a respirator on the face, and what that put onto its elements. The load is
 * reckoned when it is first asked for: hours alone need no air.
 */
public final class Wear {
  private final Session session;
  private final double minutes;
  private final double litresPerMin;
  private final Supplier<Load> reckon;
  private Load load;

  /**
   * Dust drawn onto the elements.
   *
   * @param mg source by source, with the doubts of each
   * @param typicalMg the same in its two kinds, typical
   */
  record Load(List<Term> mg, Portion typicalMg) {}

  /**
   * @param minutes on the face
   * @param litresPerMin what the work made its wearer breathe
   */
  Wear(Session session, double minutes, double litresPerMin, Supplier<Load> reckon) {
    this.session = session;
    this.minutes = minutes;
    this.litresPerMin = litresPerMin;
    this.reckon = reckon;
  }

  Session session() {
    return session;
  }

  double minutes() {
    return minutes;
  }

  double litresPerMin() {
    return litresPerMin;
  }

  private Load load() {
    if (load == null) {
      load = reckon.get();
    }
    return load;
  }

  /** Dust of several sessions in its two kinds, typical, mg. */
  static Portion typicalMg(List<Wear> wears) {
    Portion sum = Portion.NONE;
    for (Wear wear : wears) {
      sum = sum.plus(wear.load().typicalMg());
    }
    return sum;
  }

  /** Dust of several sessions together, mg. */
  static Estimate mg(List<Wear> wears) {
    return LognormalSum.of(wears.stream().flatMap(wear -> wear.load().mg().stream()).toList());
  }

  /** The same at the upper end of its 90 % range. */
  static double highMg(List<Wear> wears) {
    return mg(wears).high90();
  }

  /** Hours on the face. */
  static double hours(List<Wear> wears) {
    return wears.stream().mapToDouble(wear -> wear.minutes / 60).sum();
  }
}
