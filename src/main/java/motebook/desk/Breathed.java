package motebook.desk;

import motebook.science.Dose;

/** What a person breathed of each source of a day, in mg·min/m³. */
final class Breathed {
  private final double[] coarse;
  private final double[] fine;

  /** Nothing yet, of so many sources. */
  Breathed(int sources) {
    coarse = new double[sources];
    fine = new double[sources];
  }

  /** Adds some share of an amount of a source. */
  void add(int source, double moreCoarse, double moreFine, double share) {
    coarse[source] += moreCoarse * share;
    fine[source] += moreFine * share;
  }

  Portion of(int source) {
    return new Portion(coarse[source], fine[source]);
  }

  /**
   * What the sources add to the 8-hour TWA, mg/m³.
   *
   * @param ofCoarse how much of coarse dust counts
   * @param ofFine how much of fine dust counts
   */
  double[] twa(double ofCoarse, double ofFine) {
    double[] twa = new double[coarse.length];
    for (int i = 0; i < twa.length; i++) {
      twa[i] = (ofCoarse * coarse[i] + ofFine * fine[i]) / Dose.EIGHT_HOURS;
    }
    return twa;
  }
}
