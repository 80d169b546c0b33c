package motebook.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final Map<Done, List<Hazard>> told = new HashMap<>();

  private record Done(String operation, Optional<String> material) {}

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
    if (hazards.isEmpty() && finishing(session.work())) {
      hazards.add(masks.hazard("solvent-vapour"));
    }
    return List.copyOf(hazards);
  }

  /** Those of them that ask something of a mask. */
  List<Hazard> asking(Session session) {
    return elements.solvents(session).isEmpty()
        ? vapours(session)
        : elements.demand(session).asking().stream().map(masks::hazardOf).distinct().toList();
  }

  private boolean finishing(Work work) {
    return cautions(new Done(work.operation(), work.material())).contains(FINISHING);
  }

  /** What is warned of beside: the formaldehyde of boards, lead, arsenic. */
  List<Hazard> told(Session session) {
    Work work = session.work();
    return told.computeIfAbsent(new Done(work.operation(), work.material()), this::told);
  }

  private List<Hazard> told(Done done) {
    Set<String> cautions = cautions(done);
    return masks.hazards().stream()
        .filter(hazard -> hazard.cautions().stream().anyMatch(cautions::contains))
        .filter(hazard -> !hazard.cautions().contains(FINISHING))
        .toList();
  }

  private Set<String> cautions(Done done) {
    Set<String> keys = new LinkedHashSet<>(reference.operation(done.operation).cautions());
    if (reference.operation(done.operation).dusty()) {
      keys.addAll(reference.material(done.material).cautions());
    }
    return keys;
  }
}
