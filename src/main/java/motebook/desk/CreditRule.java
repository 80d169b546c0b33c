package motebook.desk;

import java.util.Optional;
import motebook.model.Session;

/** Decides what the respirator of a session counts for. */
@FunctionalInterface
public interface CreditRule {
  /** The credit of a session. */
  Credit credit(Session session);

  /**
   * What it counts for against vapour. As long as no rule knows of elements for vapour, a mask on
   * record is shown and never counted against it.
   */
  default Credit vapour(Session session) {
    return session
        .work()
        .mask()
        .map(
            mask ->
                new Credit(
                    1,
                    mask.wornPercent() / 100,
                    Optional.of(
                        "the book knows of no element for vapour in \""
                            + mask.respirator()
                            + "\"")))
        .orElse(Credit.NONE);
  }

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
