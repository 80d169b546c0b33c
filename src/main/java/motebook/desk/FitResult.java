package motebook.desk;

import java.util.List;
import java.util.OptionalDouble;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Scheme;
import motebook.reference.ProtectionFactor.FitRule;
import motebook.reference.ProtectionFactor.Seal;
import motebook.science.FitFactor;

/**
 * What a fit test came to: the one home of the rules of passing and of what a test is worth.
 *
 * @param overall the overall fit factor, of a test that measured
 * @param asked the fit factor that it must reach: overall under OSHA's rules, in every exercise in
 *     UK practice
 * @param everyExercise whether it is asked of every exercise by itself
 * @param passed whether it did
 * @param most the most that it lets a respirator be credited; empty where it sets no bound
 */
public record FitResult(
    OptionalDouble overall,
    double asked,
    boolean everyExercise,
    boolean passed,
    OptionalDouble most) {
  /** What every exercise must reach with a full facepiece in UK practice. */
  public static final double PASS_FULL_UK = 2000;

  /** The most that a test by taste or smell is worth: a fit factor of 100 over ten, (f)(6). */
  private static final double QUALITATIVE_MOST = 10;

  /**
   * The result of a test of a facepiece that seals so, by the rules of a scheme and of the
   * respirator.
   */
  public static FitResult of(FitTest test, Scheme scheme, Seal seal, FitRule rule) {
    double asked = asked(scheme, seal);
    if (test.method() instanceof Quantitative measured) {
      double overall = overall(measured.factors());
      boolean everyExercise = scheme == Scheme.UK;
      boolean passed =
          everyExercise
              ? measured.factors().stream().allMatch(factor -> factor >= asked)
              : overall >= asked;
      return new FitResult(
          OptionalDouble.of(overall), asked, everyExercise, passed, OptionalDouble.empty());
    }
    return new FitResult(
        OptionalDouble.empty(),
        asked,
        false,
        rule != FitRule.EACH_EXERCISE && ((Qualitative) test.method()).passed(),
        rule == FitRule.QUALITATIVE_TO_10
            ? OptionalDouble.of(QUALITATIVE_MOST)
            : OptionalDouble.empty());
  }

  /** What it leaves of an assigned factor. */
  double credited(double apf) {
    return most.isPresent() ? Math.min(apf, most.getAsDouble()) : apf;
  }

  private static double overall(List<Double> factors) {
    return FitFactor.overall(factors.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double asked(Scheme scheme, Seal seal) {
    if (seal != Seal.FULL) {
      return FitFactor.PASS_HALF;
    }
    return scheme == Scheme.UK ? PASS_FULL_UK : FitFactor.PASS_FULL;
  }
}
