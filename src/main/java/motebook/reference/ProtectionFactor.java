package motebook.reference;

import java.util.List;

/**
 * What a kind of respirator is assigned, and the one place that says whether it seals on the face.
 *
 * @param scheme whose figures: "osha" or "uk"
 * @param kind how the air is made clean: "air-purifying", "powered air-purifying", "supplied air,
 *     …"
 * @param facepiece the part on the face
 * @param also what else that part is called
 * @param rating class of the elements that the figure is for; empty where it stands for all
 * @param seal how it meets the face
 * @param apf assigned protection factor, above 1
 * @param fitRule which fit tests give it
 * @param source where it is printed
 */
public record ProtectionFactor(
    String scheme,
    String kind,
    String facepiece,
    List<String> also,
    String rating,
    Seal seal,
    double apf,
    FitRule fitRule,
    String source) {

  /** How a facepiece meets the face, and so what a fit test asks of it. */
  public enum Seal {
    /** Seals below the eyes. */
    HALF,
    /** Seals round the whole face. */
    FULL,
    /** Needs no seal and no fit test. */
    LOOSE;

    /** Whether a fit test, a seal check and a shaven face count. */
    public boolean tight() {
      return this != LOOSE;
    }
  }

  /** Which fit tests give a respirator its factor. */
  public enum FitRule {
    /** None is needed. */
    NONE,
    /** A quantitative one; a qualitative one for a factor of 10 at most: 29 CFR 1910.134(f)(6). */
    QUALITATIVE_TO_10,
    /** Either, in negative-pressure mode, at the full factor: 29 CFR 1910.134(f)(8). */
    EITHER,
    /** A quantitative one whose every exercise passes by itself. */
    EACH_EXERCISE,
    /** The same, or a qualitative one at the full factor. */
    EACH_EXERCISE_OR_QUALITATIVE
  }

  /** Whether the mask is a filter itself: it holds particles only, no gas and no vapour. */
  public boolean filteringFacepiece() {
    return facepiece.equals("filtering facepiece");
  }

  /** Whether the air comes from elsewhere, so that no element is needed. */
  public boolean suppliedAir() {
    return kind.startsWith("supplied air");
  }
}
