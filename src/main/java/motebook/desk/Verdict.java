package motebook.desk;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a respirator counts for against one kind of thing in the air.
 *
 * @param assigned the factor that it counts for with nothing against it; empty where the table has
 *     none for what is on it
 * @param objections why it is not credited, in the order to mend them; none where it is
 */
public record Verdict(OptionalDouble assigned, List<Objection> objections) {
  public Verdict {
    objections = List.copyOf(objections);
    if (objections.isEmpty() && assigned.isEmpty()) {
      throw new IllegalArgumentException("a credit needs a factor");
    }
  }

  /** A factor with nothing against it. */
  static Verdict of(double apf) {
    return new Verdict(OptionalDouble.of(apf), List.of());
  }

  /** The factor credited, 1 where there is none. */
  public double apf() {
    return objections.isEmpty() ? assigned.orElseThrow() : 1;
  }

  /** Whether something speaks against it that nothing in the book could end. */
  boolean lost() {
    return objections.stream().anyMatch(Objection::lasting);
  }
}
