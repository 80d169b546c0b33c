package motebook.desk;

import java.util.Optional;
import motebook.model.Session;

/** Decides what the respirator of a session counts for. */
@FunctionalInterface
public interface CreditRule {
  /** The credit of a session. */
  Credit credit(Session session);

  /** The rule while the book holds no respirators: a mask on record is shown, never counted. */
  CreditRule NO_RESPIRATORS =
      session ->
          session
              .work()
              .mask()
              .map(
                  mask ->
                      new Credit(
                          1,
                          mask.wornPercent() / 100,
                          Optional.of(
                              "the book holds no respirator \"" + mask.respirator() + "\"")))
              .orElse(Credit.NONE);
}
