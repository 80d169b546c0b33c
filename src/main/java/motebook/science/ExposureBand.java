package motebook.science;

/**
 * The five bands that a 95th percentile is sorted into by its share of the limit: below 1, 10, 50,
 * 100 %, and over (AIHA strategy book, 2015, from memory).
 */
public final class ExposureBand {
  private static final double[] ENDS = {0.01, 0.10, 0.50, 1.00};

  private ExposureBand() {}

  /** The band, 0 to 4; only what lies over the limit itself is in the last. */
  public static int of(double p95, double limit) {
    int band = 0;
    while (band < ENDS.length && p95 > ENDS[band] * limit) {
      band++;
    }
    return band;
  }
}
