package motebook.reference;

import java.util.List;

/**
 * What can be done to wood.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param cautions keys of the cautions it raises
 * @param family the group that decides which factor of a material counts
 * @param referenceMgPerM3 mean near-field inhalable concentration over the first 60 min of
 *     continuous work in the default shop from clean air without any control, mg/m³
 * @param gsd geometric standard deviation among workers and days
 * @param grade how sure
 * @param where where it can be done
 * @param workRate how hard the work makes one breathe
 * @param finishes whether finishes are used at it, so that amounts of them can be said
 * @param basis source
 */
public record Operation(
    String key,
    String name,
    List<String> also,
    List<String> cautions,
    Family family,
    Figure referenceMgPerM3,
    double gsd,
    Grade grade,
    Where where,
    WorkRate workRate,
    boolean finishes,
    String basis)
    implements Named {

  /** The groups of operations. */
  public enum Family {
    SANDING,
    CUTTING,
    HAND,
    CLEANING,
    BENCH,
    PRESENCE
  }

  /** Where an operation can be done. */
  public enum Where {
    /** In a room or outdoors. */
    ANY,
    /** In no room: its figure is what it would be there, for the sake of the same sum. */
    OUTDOORS
  }

  /** How hard the work makes one breathe. */
  public enum WorkRate {
    LIGHT,
    MODERATE,
    HEAVY
  }

  /** Whether the sanding factor of a material applies rather than its cutting factor. */
  public boolean sands() {
    return family == Family.SANDING;
  }

  /** Whether it makes any dust at all. */
  public boolean dusty() {
    return referenceMgPerM3.typical() > 0;
  }
}
