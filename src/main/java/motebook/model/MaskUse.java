package motebook.model;

/**
 * How a respirator was worn during a session.
 *
 * @param respirator its name in the book
 * @param checked whether a seal check was done when it was put on
 * @param wornPercent share of the session it was on the face, above 0 to 100
 */
public record MaskUse(String respirator, boolean checked, double wornPercent) {
  public MaskUse {
    respirator = Names.check("respirator", respirator);
    Checks.within("time worn", wornPercent, 1, 100, "% of the session");
  }

  /** The same with another respirator. */
  public MaskUse of(String other) {
    return new MaskUse(other, checked, wornPercent);
  }

  /** The same with another word on its seal check. */
  public MaskUse checked(boolean done) {
    return new MaskUse(respirator, done, wornPercent);
  }
}
