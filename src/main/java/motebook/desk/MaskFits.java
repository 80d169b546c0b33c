package motebook.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import motebook.model.FitRecord.FitTest;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.ProtectionFactor.Seal;

/** How a respirator fits those that it is for, that wear it, or that were tested with it. */
final class MaskFits {
  private MaskFits() {}

  /** A sentence for each of them, or one for all where it asks for no test. */
  static List<String> told(Respirator mask, Gear gear, Masks masks, Care care) {
    Seal seal =
        masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece()).stream()
            .map(ProtectionFactor::seal)
            .findFirst()
            .orElse(Seal.LOOSE);
    if (!seal.tight()) {
      return List.of("It needs no seal on the face, so no fit test is asked for.");
    }
    Set<String> people = new LinkedHashSet<>(mask.people());
    people.addAll(care.wearers(mask.name()));
    gear.fitTestsOf(mask.name()).stream().map(FitTest::person).forEach(people::add);
    return people.isEmpty()
        ? List.of("Nobody was fit-tested with it.")
        : people.stream().map(person -> told(mask, seal, person, gear, care)).toList();
  }

  private static String told(Respirator mask, Seal seal, String person, Gear gear, Care care) {
    FitStanding fit = FitStanding.of(gear, mask, seal, person, care.today(), care.rules());
    return fit.untested()
        .map(why -> why + ".")
        .orElseGet(
            () ->
                "%s was fit-tested with it on %s; that holds until %s."
                    .formatted(
                        person, fit.latest().orElseThrow().date(), fit.until().orElseThrow()));
  }
}
