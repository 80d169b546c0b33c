package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import motebook.model.Action;
import motebook.model.Action.RecordFitTest;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Qualitative;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor.Seal;

/**
 * Whether a respirator that seals on the face fits a person on a day; 29 CFR 1910.134(f) and (g),
 * and UK practice.
 *
 * @param latest the latest test up to that day
 * @param result what that test came to
 * @param until the last day on which it is in date
 * @param untested why the test does not count, if it does not
 * @param objections why the fit is not counted on, hair under the seal among the reasons
 */
record FitStanding(
    Optional<FitTest> latest,
    Optional<FitResult> result,
    Optional<LocalDate> until,
    Optional<String> untested,
    List<Objection> objections) {
  static FitStanding of(
      Gear gear, Respirator mask, Seal seal, String person, LocalDate day, CareRules rules) {
    Optional<FitTest> latest =
        gear.fitTests(person, mask.name()).stream()
            .filter(test -> !test.date().isAfter(day))
            .max(Comparator.comparing(FitTest::date).thenComparing(FitTest::id));
    Optional<LocalDate> until =
        latest.map(test -> test.date().plusMonths(rules.fitMonths(mask.scheme())));
    List<Objection> objections = new ArrayList<>();
    Optional<String> untested = against(gear, mask, seal, person, day, latest, until);
    String brief = latest.isEmpty() ? "no fit test" : "no valid fit test";
    untested.map(why -> untested(brief, why, mask, seal, person, day)).ifPresent(objections::add);
    hair(gear, person, day).ifPresent(objections::add);
    return new FitStanding(latest, result(latest, mask, seal), until, untested, objections);
  }

  private static Optional<FitResult> result(Optional<FitTest> test, Respirator mask, Seal seal) {
    return test.map(one -> FitResult.of(one, mask.scheme(), seal, Masks.shipped().fitRule(mask)));
  }

  private static Optional<String> against(
      Gear gear,
      Respirator mask,
      Seal seal,
      String person,
      LocalDate day,
      Optional<FitTest> latest,
      Optional<LocalDate> until) {
    String whom = person + " with " + mask.name();
    if (latest.isEmpty()) {
      return Optional.of("No fit test of " + whom + " is on record");
    }
    FitTest test = latest.get();
    if (!result(latest, mask, seal).orElseThrow().passed()) {
      boolean tasted = test.method() instanceof Qualitative tasting && tasting.passed();
      return Optional.of(
          "The fit test of "
              + whom
              + " on "
              + test.date()
              + (tasted
                  ? " was by taste or smell; a mask of this kind needs one that measures"
                  : " was not passed"));
    }
    if (day.isAfter(until.orElseThrow())) {
      return Optional.of("The fit test of " + whom + " ended on " + until.get());
    }
    return changed(gear, person, test.date(), day)
        .map(
            change ->
                person
                    + "'s face changed on "
                    + change.date()
                    + " ("
                    + change.what().key()
                    + "), after the fit test of "
                    + test.date());
  }

  /** The latest change of a face between a test and a day. */
  static Optional<FaceChange> changed(Gear gear, String person, LocalDate tested, LocalDate day) {
    return gear.fit(FaceChange.class, person).stream()
        .filter(change -> change.date().isAfter(tested) && !change.date().isAfter(day))
        .reduce((earlier, later) -> later);
  }

  private static Objection untested(
      String brief, String why, Respirator mask, Seal seal, String person, LocalDate day) {
    Action usual = test(mask, seal, person, day);
    Action other = new RecordFitTest(mask.name(), person, day, seal != Seal.FULL);
    return Objection.mendable(brief, why, usual, other);
  }

  /** The test to record: one that measures where a full facepiece asks for it. */
  static Action test(Respirator mask, Seal seal, String person, LocalDate day) {
    return new RecordFitTest(mask.name(), person, day, seal == Seal.FULL);
  }

  private static Optional<Objection> hair(Gear gear, String person, LocalDate day) {
    return gear.fit(Hair.class, person).stream()
        .filter(hair -> hair.on(day))
        .findFirst()
        .map(hair -> underSeal(hair, day));
  }

  private static Objection underSeal(Hair hair, LocalDate day) {
    String reason =
        "Hair under the seal of "
            + hair.person()
            + " is on record from "
            + hair.date()
            + hair.to().map(last -> " to " + last).orElse("");
    return hair.to().isEmpty() && hair.date().isBefore(day)
        ? Objection.mendable(
            "hair under the seal",
            reason,
            new Action.EndHair(hair.person(), Optional.of(day.minusDays(1))))
        : Objection.mendable("hair under the seal", reason, new Action.RemoveFitRecord(hair.id()));
  }

  /** What the test that counts leaves of an assigned factor. */
  double most(double apf) {
    return result.map(test -> test.credited(apf)).orElse(apf);
  }
}
