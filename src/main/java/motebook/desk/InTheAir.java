package motebook.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Hazard;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.reference.Solvent;

/** What a session puts into the air that a respirator is or is not for. */
final class InTheAir {
  private static final String FINISHING = "finish-vapour";
  private final Masks masks;
  private final ElementCare elements;
  private final Reference reference = Reference.shipped();

  InTheAir(Masks masks, ElementCare elements) {
    this.masks = masks;
    this.elements = elements;
  }

  /** The vapours against which a credit is judged; none where nothing gives off any. */
  List<Hazard> vapours(Session session) {
    Set<Hazard> hazards = new LinkedHashSet<>();
    for (Solvent solvent : elements.solvents(session)) {
      hazards.add(masks.hazardOf(solvent));
    }
    if (hazards.isEmpty() && cautions(session.work()).contains(FINISHING)) {
      hazards.add(masks.hazard("solvent-vapour"));
    }
    return List.copyOf(hazards);
  }

  /** Whether it is what organic-vapour elements are for. */
  boolean carbonHolds(Hazard hazard) {
    return hazard.solvents().contains(Solvent.Element.ORGANIC_VAPOUR);
  }

  /** What is warned of beside: the formaldehyde of boards, lead, arsenic. */
  List<Hazard> told(Session session) {
    Set<String> cautions = cautions(session.work());
    return masks.hazards().stream()
        .filter(hazard -> hazard.cautions().stream().anyMatch(cautions::contains))
        .filter(hazard -> !hazard.cautions().contains(FINISHING))
        .toList();
  }

  private Set<String> cautions(Work work) {
    Set<String> keys = new LinkedHashSet<>(reference.operation(work.operation()).cautions());
    if (reference.operation(work.operation()).dusty()) {
      keys.addAll(reference.material(work.material()).cautions());
    }
    return keys;
  }
}
