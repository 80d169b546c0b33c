package motebook.reference;

import java.util.List;

/**
 * What is worked on.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param woodClass the class that limits see in it
 * @param sandingFactor factor on the emission of the sanding family, with its range
 * @param cuttingFactor factor on the emission of every other operation
 * @param coveredByLimit whether a wood-dust limit says enough about its dust
 * @param grade how sure the sanding factor is
 * @param cautions keys of the cautions it raises
 * @param basis source
 */
public record Material(
    String key,
    String name,
    List<String> also,
    WoodClass woodClass,
    Figure sandingFactor,
    double cuttingFactor,
    boolean coveredByLimit,
    Grade grade,
    List<String> cautions,
    String basis)
    implements Named {

  /** The row that counts where no material was named. */
  public static final String UNKNOWN = "unknown";
}
