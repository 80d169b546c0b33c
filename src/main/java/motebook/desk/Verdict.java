package motebook.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Figures;

/**
 * What a respirator counts for against one kind of thing in the air.
 *
 * @param assigned the factor that it would count for with nothing against it; empty where the table
 *     has none, or where that hangs on an element that is missing
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

  /** The first reason that a person can mend, what mends it and what the factor would then be. */
  public Optional<String> refused() {
    return objections.stream()
        .filter(one -> one.mend().isPresent())
        .findFirst()
        .or(() -> objections.stream().findFirst())
        .map(this::sentence);
  }

  private String sentence(Objection one) {
    return one.reason() + "." + one.mend().map(mend -> " " + mend + ".").orElse("") + then();
  }

  private String then() {
    if (assigned.isEmpty() || objections.stream().anyMatch(one -> one.mend().isEmpty())) {
      return "";
    }
    String factor = " it would count as " + Figures.plain(assigned.getAsDouble()) + ".";
    return objections.size() == 1
        ? " Then" + factor
        : " With that and " + others(objections.size() - 1) + " mended" + factor;
  }

  private static String others(int count) {
    return count == 1 ? "one thing more" : count + " things more";
  }
}
