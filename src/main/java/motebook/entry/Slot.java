package motebook.entry;

import java.util.Arrays;
import java.util.Optional;

/** What a part of the line may say, and the joint that opens it. */
enum Slot {
  OPERATION("operation", "an operation", ""),
  MATERIAL("material", "a material", "of"),
  CONTROL("control", "a control", "with"),
  PLACE("place", "a place", "in"),
  PERSON("person", "a person", "by"),
  DAY("date", "a date", "on"),
  START("start", "a time of day", "at"),
  MASK("respirator", "a respirator", "wearing"),
  FINISH("finish", "a finish", "using");

  private final String label;
  private final String one;
  private final String joint;

  Slot(String label, String one, String joint) {
    this.label = label;
    this.one = one;
    this.joint = joint;
  }

  String label() {
    return label;
  }

  /** The label with its article. */
  String one() {
    return one;
  }

  String joint() {
    return joint;
  }

  /** The name with its joint, as a person says it; a finish with an amount. */
  String said(String name) {
    if (this == FINISH) {
      return joint + " " + Amounts.EXAMPLE + " " + name;
    }
    return joint.isEmpty() ? name : joint + " " + name;
  }

  /** Whether it may be said several times, joined by "and": controls and amounts of finishes. */
  boolean repeats() {
    return this == CONTROL || this == FINISH;
  }

  static Optional<Slot> openedBy(String joint) {
    if (joint.equals("and")) {
      return Optional.of(CONTROL);
    }
    return Arrays.stream(values())
        .filter(slot -> !joint.isEmpty() && slot.joint.equals(joint))
        .findFirst();
  }
}
