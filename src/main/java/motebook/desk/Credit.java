package motebook.desk;

import java.util.Optional;
import motebook.science.Protection;

/**
 * What a respirator counts for against one hazard during one session.
 *
 * @param apf the factor credited, 1 where there is none
 * @param wornShare share of the session that it was worn, 0 to 1
 * @param refused why the mask's own factor is not credited and what would mend it, if it is not
 */
public record Credit(double apf, double wornShare, Optional<String> refused) {
  /** No mask on the face. */
  public static final Credit NONE = new Credit(1, 0, Optional.empty());

  /** The share of what is outside that reaches the wearer. */
  public double insideShare() {
    return Protection.insideShare(apf, wornShare);
  }
}
