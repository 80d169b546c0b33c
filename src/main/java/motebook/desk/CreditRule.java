package motebook.desk;

import motebook.model.Session;

/** Decides what the respirator of a session counts for. */
@FunctionalInterface
public interface CreditRule {
  /** The credit of a session. */
  Credit credit(Session session);

  /** No mask counts: the air outside alone is asked for. */
  CreditRule OUTSIDE_ONLY = session -> Credit.NONE;
}
