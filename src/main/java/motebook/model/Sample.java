package motebook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A measured air result: what a sampler held over a time, on one person outside any mask or, an
 * area sample, in a place.
 *
 * @param id the book's number; 0 before it is written
 * @param person who wore the sampler, or set it up
 * @param date the local date
 * @param fromMinute first minute of the day sampled, 0 to 1439
 * @param toMinute the minute after the last, up to 1440
 * @param fraction of the dust: inhalable, respirable or total; a meter's channel where the result
 *     is relative
 * @param kind how it was measured
 * @param result what was found
 * @param cv coefficient of variation of the result about the truth, 0.01 to 2
 * @param note free text, cleaned, possibly empty
 * @param use what the result may be used for
 */
public record Sample(
    long id,
    String person,
    LocalDate date,
    int fromMinute,
    int toMinute,
    String fraction,
    Kind kind,
    Result result,
    double cv,
    String note,
    Use use) {
  /** The fractions that a sampler may hold. */
  public static final Set<String> FRACTIONS = Set.of("inhalable", "respirable", "total");

  /** Channels of meters that are called by a particle size and are none of the fractions. */
  public static final Set<String> CHANNELS = Set.of("PM1", "PM2.5", "PM4", "PM10");

  /** The shortest sample that may stand for a shift, min. */
  public static final int SHORTEST_FOR_SHIFT = 120;

  private static final double MOST_MG_M3 = 1e6;
  private static final int DAY = 24 * 60;

  public Sample {
    note = Text.note(note);
    if (date.getYear() < 1900 || date.getYear() > 2199) {
      throw new Refusal("The date " + date + " is outside 1900 to 2199.");
    }
    if (fromMinute < 0 || toMinute > DAY || fromMinute >= toMinute) {
      throw new Refusal(
          "A sample ends after it begins, on the same day; give one that runs past midnight as"
              + " two.");
    }
    requireFraction(fraction, use.relative());
    if (use.factor().isPresent() && kind != Kind.DIRECT_READING) {
      throw new Refusal(
          "A correction factor is for a meter. The result of a weighed filter needs none.");
    }
    if (use.wholeShift() && toMinute - fromMinute < SHORTEST_FOR_SHIFT) {
      throw new Refusal(
          "A sample that stands for the shift takes "
              + SHORTEST_FOR_SHIFT
              + " minutes or more; this one takes "
              + (toMinute - fromMinute)
              + ".");
    }
    Checks.within("error of a sample", cv, 0.01, 2, "as a share of the result");
  }

  /** A personal sample that teaches, with no correction factor. */
  public Sample(
      long id,
      String person,
      LocalDate date,
      int fromMinute,
      int toMinute,
      String fraction,
      Kind kind,
      Result result,
      double cv,
      String note) {
    this(id, person, date, fromMinute, toMinute, fraction, kind, result, cv, note, Use.PERSONAL);
  }

  /**
   * The fraction that a word names.
   *
   * @throws Refusal if it names none, or a meter's channel where the result is not relative
   */
  public static String fraction(String word, boolean relative) {
    String clean = Text.clean(word);
    String named =
        CHANNELS.stream()
            .filter(channel -> Text.folded(channel).equals(Text.folded(clean).replace(" ", "")))
            .findFirst()
            .orElse(Text.folded(clean));
    requireFraction(named, relative);
    return named;
  }

  private static void requireFraction(String fraction, boolean relative) {
    if (CHANNELS.contains(fraction) && !relative) {
      throw new Refusal(
          fraction
              + " is a meter's channel, not a health fraction: it is neither inhalable, respirable"
              + " nor total dust, so no limit and no estimate can be held against it. Keep it with"
              + " --relative to compare days within this shop; it teaches nothing.");
    }
    if (!CHANNELS.contains(fraction) && !FRACTIONS.contains(fraction)) {
      throw new Refusal(
          "A sample is of inhalable, respirable or total dust: got \"" + fraction + "\".");
    }
  }

  /**
   * What a result may be used for.
   *
   * @param area the place whose air an area sample is of; empty for a personal sample
   * @param factor what a meter's reading is multiplied by, from a weighed filter beside it
   * @param relative whether it is for comparison within the shop alone and teaches nothing
   * @param wholeShift whether it stands for the whole shift
   */
  public record Use(
      Optional<String> area, OptionalDouble factor, boolean relative, boolean wholeShift) {
    /** A personal sample that teaches, with no correction factor. */
    public static final Use PERSONAL =
        new Use(Optional.empty(), OptionalDouble.empty(), false, false);

    public Use {
      if (factor.isPresent()) {
        Checks.within("correction factor", factor.getAsDouble(), 0.01, 100, "times");
      }
      if (wholeShift && (area.isPresent() || relative)) {
        throw new Refusal(
            "Only a personal sample that is not relative can stand for somebody's shift.");
      }
    }
  }

  /** How a result was measured, with its error where the owner says nothing else. */
  public enum Kind {
    /** A weighed filter. NIOSH 0501: ±15.5 % (read). */
    GRAVIMETRIC("gravimetric", 0.15),
    /** An instrument that shows a figure at once, without a correction factor. A judgement. */
    DIRECT_READING("direct-reading", 0.50);

    private static final double CORRECTED_CV = 0.30;

    private final String key;
    private final double cv;

    Kind(String key, double cv) {
      this.key = key;
      this.cv = cv;
    }

    /** The word for it. */
    public String key() {
      return key;
    }

    /**
     * Coefficient of variation unless another is given. A judgement for instruments: 0.30 with a
     * factor against a weighed filter, 0.50 without.
     */
    public double cv(boolean corrected) {
      return corrected && this == DIRECT_READING ? CORRECTED_CV : cv;
    }
  }

  /** What was found. */
  public sealed interface Result {}

  /**
   * A filter that was weighed.
   *
   * @param mg what it gained; a damp day can make it lighter
   * @param blankMg what the field blank gained
   * @param litresPerMin flow of the pump
   * @param detectionLimitMg least mass that can be told
   */
  public record Weighed(double mg, double blankMg, double litresPerMin, double detectionLimitMg)
      implements Result {
    public Weighed {
      Checks.within("mass on the filter", mg, -1000, 1e5, "mg");
      Checks.within("mass on the blank", blankMg, -1000, 1e5, "mg");
      Checks.within("flow of the pump", litresPerMin, 0.01, 1000, "L/min");
      Checks.within("limit of detection", detectionLimitMg, 0, 1000, "mg");
      if (mg - blankMg <= 0 && detectionLimitMg == 0) {
        throw new Refusal(
            "The mass less the blank leaves nothing, and a result is never zero: give the"
                + " laboratory's limit of detection, and it is kept as below that.");
      }
    }
  }

  /**
   * A concentration that was told.
   *
   * @param mgPerM3 above 0
   * @param below whether the result is only known to lie below it
   */
  public record Told(double mgPerM3, boolean below) implements Result {
    public Told {
      if (!(mgPerM3 > 0 && mgPerM3 <= MOST_MG_M3)) {
        throw new Refusal(
            "A result must be above 0 mg/m³ and no more than a million: got "
                + Figures.exact(mgPerM3)
                + ". One below detection is not zero; give the limit of detection.");
      }
    }
  }

  /** The time sampled, min. */
  public int minutes() {
    return toMinute - fromMinute;
  }
}
