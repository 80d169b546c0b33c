package motebook.desk;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Figure;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Doubts;
import motebook.science.Emission;
import motebook.science.Spread;

/**
 * A kind of work: all that an operation on a material with some controls gives off by the tables,
 * whoever does it and when, indoors or outdoors.
 *
 * @param operation what is done
 * @param material to what, or the row for an unnamed one
 * @param controls in the order said
 * @param outdoors whether it is done outdoors
 * @param atSource the row of the best control at the source, if there is one
 * @param mgPerMin typical emission of inhalable dust, mg/min
 * @param doubts of the emission, but for the own one of each session
 * @param own log variance of the own doubt of a session; empty where no dust is made
 */
public record Kind(
    Operation operation,
    Material material,
    List<Control> controls,
    boolean outdoors,
    Optional<Control.Row> atSource,
    double mgPerMin,
    Doubts doubts,
    OptionalDouble own) {
  // A book of many years has few kinds of work. The tables are not compared but taken as the same.
  // A list is compared without the method handles that a record's comparison would spin at a start.
  private static final Map<List<Object>, Kind> KNOWN = new ConcurrentHashMap<>();

  /** An operation on a wood of factor 1 without a control: its own figure and doubts alone. */
  static Kind of(Operation operation, Reference reference) {
    double ofOperation = variance(operation.referenceMgPerM3());
    return new Kind(
        operation,
        reference.material(Optional.empty()),
        List.of(),
        false,
        Optional.empty(),
        Emission.mgPerMin(operation.referenceMgPerM3().typical(), 1, 1),
        new Doubts(Map.of(Source.part(operation), ofOperation, Source.MODEL, Spread.MODEL)),
        OptionalDouble.of(Spread.own(operation.gsd(), ofOperation)));
  }

  /** The kind that some work is, outdoors or in a room. */
  static Kind of(Work work, boolean outdoors, Reference reference) {
    List<Object> key =
        List.of(reference, work.operation(), work.material(), work.controls(), outdoors);
    Kind known = KNOWN.get(key);
    return known == null
        ? KNOWN.computeIfAbsent(key, any -> estimated(work, outdoors, reference))
        : known;
  }

  private static Kind estimated(Work work, boolean outdoors, Reference reference) {
    Operation operation = reference.operation(work.operation());
    Material material = reference.material(work.material());
    Optional<Control.Row> best = bestAtSource(work, operation, reference);
    double factor =
        operation.sands() ? material.sandingFactor().typical() : material.cuttingFactor();
    double pass = best.map(row -> row.passFactor().typical()).orElse(1.0);
    double ofOperation = variance(operation.referenceMgPerM3());
    return new Kind(
        operation,
        material,
        work.controls().stream().map(reference::control).toList(),
        outdoors,
        best,
        Emission.mgPerMin(operation.referenceMgPerM3().typical(), factor, pass),
        operation.dusty() ? doubts(operation, ofOperation, material, best, outdoors) : Doubts.NONE,
        operation.dusty()
            ? OptionalDouble.of(Spread.own(operation.gsd(), ofOperation))
            : OptionalDouble.empty());
  }

  // Controls at one source are not multiplied: the one that lets least through counts; of equals
  // the first in the table, whatever order they were said in.
  private static Optional<Control.Row> bestAtSource(
      Work work, Operation operation, Reference reference) {
    return reference.controls().stream()
        .filter(control -> work.controls().contains(control.key()))
        .filter(control -> control.actsOn() == Control.ActsOn.SOURCE)
        .flatMap(control -> control.rowFor(operation.key()).stream())
        .min(Comparator.comparingDouble(row -> row.passFactor().typical()));
  }

  private static Doubts doubts(
      Operation operation,
      double ofOperation,
      Material material,
      Optional<Control.Row> best,
      boolean outdoors) {
    Map<String, Double> parts = new HashMap<>();
    parts.put(Source.part(operation), ofOperation);
    if (operation.sands()) {
      parts.put("material " + material.key(), variance(material.sandingFactor()));
    }
    best.ifPresent(row -> parts.put("control " + row.id(), variance(row.passFactor())));
    parts.put(Source.MODEL, Spread.MODEL);
    if (outdoors) {
      parts.put(Source.OUTDOORS, Spread.OUTDOORS);
    }
    return new Doubts(parts);
  }

  /** Its typical inhalable concentration at the face over the first hour, mg/m³. */
  double inDefaultShopMgPerM3() {
    return mgPerMin * Emission.MIN_PER_M3;
  }

  private static double variance(Figure figure) {
    return Spread.ofRange(figure.low(), figure.high());
  }

  /** Its controls that do not serve the operation and so count for nothing. */
  List<Control> notServing() {
    return controls.stream().filter(control -> control.rowFor(operation.key()).isEmpty()).toList();
  }

  /** Whether any row used is graded C or D. */
  boolean rough() {
    return operation.grade().rough()
        || (operation.sands() && material.grade().rough())
        || atSource.map(row -> row.grade().rough()).orElse(false)
        || controls.stream()
            .filter(control -> control.actsOn() == Control.ActsOn.ROOM)
            .flatMap(control -> control.rows().stream())
            .anyMatch(row -> row.grade().rough());
  }
}
