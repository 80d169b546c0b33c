package motebook.science;

import java.util.Arrays;

/** Quantitative fit tests after 29 CFR 1910.134. */
public final class FitFactor {
  /** What a half facepiece must reach, 1910.134(f)(7). */
  public static final double PASS_HALF = 100;

  /** What a full facepiece must reach, 1910.134(f)(7). */
  public static final double PASS_FULL = 500;

  private FitFactor() {}

  /**
   * Overall fit factor, the harmonic mean {@code n/Σ(1/FFᵢ)}; 1910.134 App. A I.C.2(b)(8).
   *
   * @param exercises fit factor of each exercise, grimace left out; one or more, each above 0
   * @throws IllegalArgumentException if there is none
   */
  public static double overall(double... exercises) {
    double least =
        Arrays.stream(exercises)
            .min()
            .orElseThrow(() -> new IllegalArgumentException("no exercises"));
    // Scaled by the least, so that equal factors give exactly that factor at the pass mark.
    return exercises.length / Arrays.stream(exercises).map(ff -> least / ff).sum() * least;
  }
}
