package motebook.desk;

import java.time.LocalDate;
import java.util.Optional;
import motebook.model.Action.AddElement;
import motebook.model.Action.AddRespirator;
import motebook.model.Gear;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.Text;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;

/** Respirators and elements that a book does not hold yet, under names that are free. */
final class Suggested {
  private static final int NUMBER_LENGTH = 4;
  private static final String GAS = "gas";

  private Suggested() {}

  /** A mask of the commonest kind for a name that a session has. */
  static AddRespirator halfMask(String name) {
    return new AddRespirator(name, Scheme.OSHA, "air-purifying", "half mask");
  }

  /** One that brings its own air and needs no fit test, by a scheme where that has one. */
  static AddRespirator airLine(Gear gear, Scheme scheme, Masks masks) {
    return loose(scheme, masks)
        .or(() -> loose(Scheme.OSHA, masks))
        .map(
            row ->
                new AddRespirator(
                    fresh("air line", gear),
                    Scheme.of(row.scheme()).orElseThrow(),
                    row.kind(),
                    row.facepiece()))
        .orElseThrow();
  }

  private static Optional<ProtectionFactor> loose(Scheme scheme, Masks masks) {
    return masks.factors().stream()
        .filter(row -> row.scheme().equals(scheme.key()))
        .filter(row -> row.kind().equals("supplied air, continuous flow") && !row.seal().tight())
        .findFirst();
  }

  /**
   * An element of a class for a respirator.
   *
   * @param elementClass the listed name of the class
   * @param until when the next one took its place, if one did
   */
  static AddElement element(
      Gear gear,
      String respirator,
      String elementClass,
      LocalDate opened,
      Optional<LocalDate> until) {
    return new AddElement(
        fresh(named(respirator, elementClass), gear), respirator, elementClass, opened, until);
  }

  // A name must differ from the respirator's own and fit into one column.
  private static String named(String respirator, String elementClass) {
    String whole = elementClass + " " + respirator;
    return whole.length() <= Text.NAME_LENGTH - NUMBER_LENGTH ? whole : elementClass + " element";
  }

  private static String fresh(String name, Gear gear) {
    String free = name;
    for (int number = 2; gear.holds(free); number++) {
      free = name + " " + number;
    }
    return free;
  }

  /** The class that a mask is usually worn with against dust. */
  static String dustClass(Respirator mask, Masks masks) {
    if (mask.scheme() == Scheme.OSHA) {
      return "P100";
    }
    // the rated ones stand from the coarsest to the finest, those with a gas element last
    return masks.factors(mask.scheme().key(), mask.kind(), mask.facepiece()).stream()
        .map(ProtectionFactor::rating)
        .filter(rating -> !rating.startsWith(GAS))
        .reduce((coarser, finer) -> finer)
        .orElse("P3");
  }
}
