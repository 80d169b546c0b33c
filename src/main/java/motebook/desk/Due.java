package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.DueItem.Kind;
import motebook.model.Gear;
import motebook.model.Scheme;
import motebook.reference.Caution;
import motebook.reference.Masks;
import motebook.reference.Reference;

/** The question "what is due": everything with a date or a clock in one list. */
public final class Due {
  private static final List<Kind> DUSTY = List.of(Kind.CLEANING, Kind.EMPTYING, Kind.GAUGE);
  private static final String UK_LIMITS = "great-britain";

  private Due() {}

  /** What is due at the end of a care's log. */
  static DueReport report(Gear gear, Masks masks, Care care) {
    List<DueItem> items = new ArrayList<>();
    items.addAll(new DueFit(gear, masks, care).items());
    items.addAll(new DueElements(gear, masks, care).items());
    items.addAll(new DueFilters(gear, care).items());
    items.sort(DueItem.BY_URGENCY);
    return new DueReport(care.today(), items, cautions(items).stream().toList());
  }

  // A full bag or a dusty duct is fuel.
  private static Optional<Caution> cautions(List<DueItem> items) {
    return items.stream().anyMatch(item -> item.pressing() && DUSTY.contains(item.kind()))
        ? Optional.of(Reference.shipped().caution("combustible-dust"))
        : Optional.empty();
  }

  /** Whether the shop is kept by UK rules, which ask for examinations of its exhaust. */
  static boolean inUk(Gear gear, Shop shop) {
    return shop.settings().limitSet().equals(UK_LIMITS)
        || gear.respirators().stream()
            .anyMatch(mask -> mask.scheme() == Scheme.UK && mask.retired().isEmpty());
  }
}
