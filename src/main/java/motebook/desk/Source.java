package motebook.desk;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Figure;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Emission;
import motebook.science.LognormalSum;
import motebook.science.Spread;

/**
 * A session as a source of dust: how much it makes and how sure that is.
 *
 * @param session the session
 * @param operation its operation
 * @param material its material, or the row for an unnamed one
 * @param controls its controls, in the order said
 * @param atSource the row of its best control at the source, if it has one
 * @param mgPerMin typical emission of inhalable dust, mg/min
 * @param doubts log variances of the emission by the name of each part; equal names are shared
 * @param loadings of what was learned from samples, in place of the doubts that they bore on
 */
public record Source(
    Session session,
    Operation operation,
    Material material,
    List<Control> controls,
    Optional<Control.Row> atSource,
    double mgPerMin,
    Map<String, Double> doubts,
    Map<String, Double> loadings) {
  /** The name of the doubt about the air model, one for all sources. */
  static final String MODEL = "model";

  private static final String OWN = "own";

  /** The source that a session is. */
  public static Source of(Session session, Reference reference) {
    Work work = session.work();
    Operation operation = reference.operation(work.operation());
    Material material = reference.material(work.material());
    List<Control> controls = work.controls().stream().map(reference::control).toList();
    Optional<Control.Row> best = bestAtSource(work, operation, reference);
    double factor =
        operation.sands() ? material.sandingFactor().typical() : material.cuttingFactor();
    double pass = best.map(row -> row.passFactor().typical()).orElse(1.0);
    return new Source(
        session,
        operation,
        material,
        controls,
        best,
        Emission.mgPerMin(operation.referenceMgPerM3().typical(), factor, pass),
        doubts(work, operation, material, best),
        Map.of());
  }

  // Controls at one source are not multiplied: the one that lets least through counts; of equals
  // the
  // first in the table, whatever order they were said in.
  private static Optional<Control.Row> bestAtSource(
      Work work, Operation operation, Reference reference) {
    return reference.controls().stream()
        .filter(control -> work.controls().contains(control.key()))
        .filter(control -> control.actsOn() == Control.ActsOn.SOURCE)
        .flatMap(control -> control.rowFor(operation.key()).stream())
        .min(Comparator.comparingDouble(row -> row.passFactor().typical()));
  }

  private static Map<String, Double> doubts(
      Work work, Operation operation, Material material, Optional<Control.Row> best) {
    if (!operation.dusty()) {
      return Map.of();
    }
    Map<String, Double> parts = new HashMap<>();
    double ofOperation = variance(operation.referenceMgPerM3());
    parts.put(part(operation), ofOperation);
    if (operation.sands()) {
      parts.put("material " + material.key(), variance(material.sandingFactor()));
    }
    best.ifPresent(row -> parts.put("control " + row.id(), variance(row.passFactor())));
    parts.put(MODEL, Spread.MODEL);
    parts.put(own(work, material, best), Spread.own(operation.gsd(), ofOperation));
    return Map.copyOf(parts);
  }

  private static double variance(Figure figure) {
    return Spread.ofRange(figure.low(), figure.high());
  }

  // One for each person, day, operation, material and control: splitting a session changes nothing.
  private static String own(Work work, Material material, Optional<Control.Row> best) {
    return String.join(
        "|",
        OWN,
        work.person(),
        work.date().toString(),
        work.operation(),
        material.key(),
        best.map(Control.Row::id).orElse(""));
  }

  /** The name of the doubt about an operation's figure. */
  static String part(Operation operation) {
    return "operation " + operation.key();
  }

  /** Whether a part is one of a single day. */
  static boolean isOwn(String part) {
    return part.startsWith(OWN + "|");
  }

  /** The same source with another emission, mg/min. */
  Source emitting(double otherMgPerMin) {
    return learned(term(otherMgPerMin));
  }

  /** The same source by what was learned of its emission. */
  Source learned(LognormalSum.Term emission) {
    return new Source(
        session,
        operation,
        material,
        controls,
        atSource,
        emission.typical(),
        emission.variances(),
        emission.loadings());
  }

  /** Something that goes with the emission, and is as sure. */
  LognormalSum.Term term(double typical) {
    return new LognormalSum.Term(typical, doubts, loadings);
  }

  /** Whether any row used is graded C or D. */
  public boolean rough() {
    return operation.grade().rough()
        || (operation.sands() && material.grade().rough())
        || atSource.map(row -> row.grade().rough()).orElse(false)
        || controls.stream()
            .filter(control -> control.actsOn() == Control.ActsOn.ROOM)
            .flatMap(control -> control.rows().stream())
            .anyMatch(row -> row.grade().rough());
  }

  /** By the session's number alone: hashing all that a source holds costs more than its air. */
  @Override
  public int hashCode() {
    return Long.hashCode(session.id());
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof Source that && session.equals(that.session));
  }

  /** Whether one of its controls has the key. */
  boolean uses(String control) {
    return session.work().controls().contains(control);
  }

  int from() {
    return session.work().startMinute();
  }

  int to() {
    return session.work().endMinute();
  }
}
