package motebook.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.MaskUse;
import motebook.model.Session;

/** Decides what the respirator of a session counts for. */
@FunctionalInterface
public interface CreditRule {
  /** The credit of a session. */
  Credit credit(Session session);

  /** No mask counts: the air outside alone is asked for. */
  CreditRule OUTSIDE_ONLY = session -> Credit.NONE;

  /** The credit of a mask that the book does not hold. */
  static Credit unknown(MaskUse mask) {
    Objection why =
        Objection.mendable(
            "mask not on record",
            "The book holds no respirator \"" + mask.respirator() + "\"",
            "Say what it is: " + Settle.addRespirator(mask.respirator()));
    return new Credit(
        mask.wornPercent() / 100,
        new Verdict(OptionalDouble.empty(), List.of(why)),
        Optional.empty(),
        List.of());
  }
}
